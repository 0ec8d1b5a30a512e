import { solveLinear } from '../linear/solveLinear'
import { measureGap, newGap } from './contact'
import { evaluate } from './energy'
import { balanceGoal, minimise, norm, roundingFloor } from './minimise'
import type { Point } from './point'
import { copyPose, movePose, type Pose } from './pose'
import type { Scene, SceneWall } from './scene'

const MOST_ROUNDS = 40
/** Change of the wall's forces in a round, as a share of the weight, from which the last Newton steps take over. */
const SETTLED = 1e-8
const MOST_POLISHES = 12
/** A gap below this share of the legs' length is closed, and so much is no penetration. */
const CLOSED = 1e-12
const CLEAR = 1e-10
/** Weight of the proximal term that keeps the last steps solvable when contacts share their load arbitrarily. */
const PROXIMAL = 1e-8

/** How the pot leans on the wall; `slopes`: those of the gaps of the loaded contacts. */
export interface Lean {
  readonly converged: boolean
  readonly iterations: number
  readonly forces: readonly number[]
  readonly slopes: readonly Float64Array[]
}

const gap = newGap()
const step = new Float64Array(6)

/** Whether no contact reaches into the wall. */
export function clearOf({ ell, size }: Scene, wall: SceneWall, pose: Pose): boolean {
  return wall.contacts.every((contact) => {
    measureGap(wall, contact, ell, pose, gap)
    return gap.s <= CLEAR * size
  })
}

/**
 * Finds the rest of a pot that the wall holds off: augmented Lagrangian (forces of the wall raised by
 * penalty times penetration until they settle), then Newton's steps on the equations of balance and
 * touch together. `here` holds the place reached, with the wall's own stiffness and no penalty in its
 * Hessian: a penalty left there would spoil the eigenvalues.
 */
export function leanOn(scene: Scene, wall: SceneWall, from: Pose, here: Point): Lean {
  const { weight, ell, stiffness, legs } = scene
  scene.wall = wall
  wall.penalty = 10 * Math.min(stiffness / legs, (200 * weight) / ell)
  copyPose(from, here.pose)
  let iterations = 0
  let before = Infinity
  for (let round = 0; round < MOST_ROUNDS; round++) {
    evaluate(scene, here)
    iterations += minimise(scene, here, SETTLED * weight).iterations
    const change = raiseForces(scene, wall, here.pose)
    if (change <= SETTLED * weight) break
    if (change > before / 4) wall.penalty *= 4
    before = change
  }
  wall.penalty = 0
  const polished = polish(scene, wall, here)
  const touching = wall.contacts.filter((_, i) => wall.force[i]! > 0)
  const slopes = touching.map((contact) => {
    const own = newGap()
    measureGap(wall, contact, ell, here.pose, own)
    return own.slope
  })
  return { converged: polished.converged, iterations: iterations + polished.iterations, forces: [...wall.force], slopes }
}

/** Raises each force by penalty times penetration, not below zero; the largest change, N. */
function raiseForces({ ell }: Scene, wall: SceneWall, pose: Pose): number {
  let change = 0
  wall.contacts.forEach((contact, i) => {
    measureGap(wall, contact, ell, pose, gap)
    const force = Math.max(0, wall.force[i]! + wall.penalty * gap.s)
    change = Math.max(change, Math.abs(force - wall.force[i]!))
    wall.force[i] = force
  })
  return change
}

/**
 * Newton's steps on balance and touch of the loaded contacts: [H G; G' 0] [dx; dN] = -[g; s]. A contact
 * that would have to pull is let go, one that is entered is taken up. Converged: balanced, loaded gaps
 * closed, no force negative, no contact inside the wall.
 */
function polish(scene: Scene, wall: SceneWall, here: Point): { readonly converged: boolean; readonly iterations: number } {
  const { ell, size } = scene
  const { force, contacts } = wall
  const balanced = Math.max(balanceGoal(scene), roundingFloor(scene))
  const loaded = contacts.map((_, i) => force[i]! > 0)
  for (let iterations = 0; iterations < MOST_POLISHES; iterations++) {
    evaluate(scene, here)
    const gaps = contacts.map((contact) => {
      const own = newGap()
      measureGap(wall, contact, ell, here.pose, own)
      return own
    })
    gaps.forEach((own, i) => (loaded[i] ||= own.s > CLEAR * size))
    const closed = gaps.every((own, i) => !loaded[i] || Math.abs(own.s) <= CLOSED * size)
    if (closed && norm(here.gradient) <= balanced) return { converged: true, iterations }
    const active = gaps.flatMap((own, i) => (loaded[i] ? [{ own, i }] : []))
    const change = touchStep(scene, here, active.map(({ own }) => own))
    if (change === null) return { converged: false, iterations }
    active.forEach(({ i }, j) => {
      force[i]! += change[j]!
      if (force[i]! < 0) {
        force[i] = 0
        loaded[i] = false
      }
    })
    movePose(here.pose, step, ell, here.pose)
  }
  return { converged: false, iterations: MOST_POLISHES }
}

/** One such step into `step`; the changes of the forces, N, or null if the equations cannot be solved. Forces are counted in metres at the legs' stiffness. */
function touchStep({ stiffness }: Scene, { hessian: H, gradient: g }: Point, gaps: readonly { readonly s: number; readonly slope: Float64Array }[]): readonly number[] | null {
  const matrix: number[][] = []
  for (let a = 0; a < 6; a++) matrix.push([...H.subarray(6 * a, 6 * a + 6), ...gaps.map(({ slope }) => stiffness * slope[a]!)])
  gaps.forEach(({ slope }, i) => matrix.push([...Array.from(slope, (x) => stiffness * x), ...gaps.map((_, j) => (i === j ? -PROXIMAL * stiffness : 0))]))
  const solved = solveLinear(matrix, [...Array.from(g, (x) => -x), ...gaps.map(({ s }) => -stiffness * s)])
  if (!solved.ok) return null
  for (let a = 0; a < 6; a++) step[a] = solved.x[a]!
  return solved.x.slice(6).map((x) => stiffness * x)
}
