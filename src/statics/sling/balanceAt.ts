import { newtons, radians } from '../../quantity/si'
import { tensionsAt } from './energy'
import type { Point } from './point'
import type { Balance, Rotation } from './result'
import type { Scene } from './scene'
import { stabilityOf } from './stability'

/** A leg that pulls less than this share of the weight is slack. */
const SLACK_SHARE = 1e-9

/**
 * The plain record of a balance at a point whose Hessian holds no penalty.
 * @param wallN force of the wall on each contact, N
 * @param touching slopes of the gaps of the loaded contacts
 */
export function balanceAt(scene: Scene, point: Point, wallN: readonly number[], touching: readonly Float64Array[]): Balance {
  const { p, R } = point.pose
  const T = tensionsAt(scene, point.pose)
  const { eigenvalues, eigMinNonzero, negative, zeroIsSymmetry, stable } = stabilityOf(scene, point, touching)
  return {
    T: T.map(newtons),
    slack: T.map((t) => t <= SLACK_SHARE * scene.weight),
    tiltRadians: radians(Math.atan2(Math.sqrt(R[2]! ** 2 + R[5]! ** 2), R[8]!)),
    cg: [p[0]!, p[1]!, p[2]!],
    R: rotationOf(R),
    wallN: wallN.map(newtons),
    eigenvalues,
    eigMinNonzero,
    negative,
    zeroIsSymmetry,
    stable,
  }
}

const rotationOf = (R: Float64Array): Rotation => [
  [R[0]!, R[1]!, R[2]!],
  [R[3]!, R[4]!, R[5]!],
  [R[6]!, R[7]!, R[8]!],
]
