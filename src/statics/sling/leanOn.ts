import { solveLinear } from '../linear/solveLinear'
import { measureGap, newGap, type Gap } from './contact'
import { evaluate } from './energy'
import { balanceGoal, LEAST_SHIFT, minimise, norm, roundingFloor } from './minimise'
import type { Point } from './point'
import { copyPose, movePose, type Pose } from './pose'
import type { Scene, SceneContact, SceneWall } from './scene'
import { softened } from './softened'

const MOST_ROUNDS = 40
const MOST_FAILURES = 3
/** Change of the wall's forces in a round, as a share of the weight, from which the last Newton steps take over. */
const SETTLED = 1e-8
const MOST_POLISHES = 12
/** A gap below this share of the legs' length is closed, and so much is no penetration. */
const CLOSED = 1e-12
const CLEAR = 1e-10
/** Weight of the proximal term that keeps the last steps solvable when contacts share their load arbitrarily. */
const PROXIMAL = 1e-8

/** Share of the longest step with which a pot that found no rest is led to the wall again. */
const CAREFUL = 0.1

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
 * Finds the rest of a pot that the wall holds off, from where it would rest without the wall or, failing
 * that, from the start, in short steps at last, and with softened legs. `here` holds the place reached, with the wall's own stiffness and no penalty in
 * its Hessian: a penalty left there would spoil the eigenvalues.
 */
export function leanOn(scene: Scene, wall: SceneWall, from: readonly Pose[], here: Point): Lean {
  scene.wall = wall
  let iterations = 0
  let converged = false
  const attempt = (stride: number): boolean => {
    wall.force.fill(0)
    const settled = settle(scene, wall, here, stride)
    wall.penalty = 0
    const polished = polish(scene, wall, here)
    iterations += settled + polished.iterations
    return polished.converged
  }
  for (const [pose, stride] of [...from.map((pose) => [pose, 1] as const), [from.at(-1)!, CAREFUL] as const]) {
    copyPose(pose, here.pose)
    converged = attempt(stride)
    if (converged) break
  }
  if (!converged) {
    copyPose(from.at(-1)!, here.pose)
    softened(scene, () => {
      wall.force.fill(0)
      iterations += settle(scene, wall, here, 1)
    })
    converged = attempt(1)
  }
  return { converged, iterations, ...heldBy(scene, wall, here) }
}

/**
 * Like leanOn, from a pose with forces of the wall that are both nearly right: the last Newton steps at
 * once, and the whole way only if they fail. It may end on a saddle, or fail where leanOn would not.
 */
export function leanNear(scene: Scene, wall: SceneWall, near: Pose, forces: readonly number[], here: Point): Lean {
  scene.wall = wall
  const begin = (): void => {
    copyPose(near, here.pose)
    wall.force.forEach((_, i) => (wall.force[i] = Math.max(0, forces[i] ?? 0)))
  }
  begin()
  wall.penalty = 0
  let { converged, iterations } = polish(scene, wall, here)
  if (!converged) {
    begin()
    iterations += settle(scene, wall, here, 1)
    wall.penalty = 0
    const again = polish(scene, wall, here)
    iterations += again.iterations
    converged = again.converged
  }
  return { converged, iterations, ...heldBy(scene, wall, here) }
}

function heldBy(scene: Scene, wall: SceneWall, here: Point): Pick<Lean, 'forces' | 'slopes'> {
  const touching = wall.contacts.filter((_, i) => wall.force[i]! > 0)
  return { forces: [...wall.force], slopes: touching.map((contact) => gapAt(scene, wall, contact, here.pose).slope) }
}

/**
 * Augmented Lagrangian: the forces of the wall are raised by penalty times penetration, and the pot
 * slides to its rest under them, until they settle. Begins with the forces that the wall holds. The Newton
 * steps it took.
 */
function settle(scene: Scene, wall: SceneWall, here: Point, stride: number): number {
  const { weight, ell, stiffness, legs } = scene
  wall.penalty = 10 * Math.min(stiffness / legs, (200 * weight) / ell)
  let iterations = 0
  let before = Infinity
  for (let round = 0, failures = 0; round < MOST_ROUNDS && failures < MOST_FAILURES; round++) {
    evaluate(scene, here)
    const descent = minimise(scene, here, SETTLED * weight, stride)
    iterations += descent.iterations
    if (!descent.converged) failures++
    const change = raiseForces(scene, wall, here.pose)
    if (descent.converged && change <= SETTLED * weight) break
    if (change > before / 4) wall.penalty *= 4
    before = change
  }
  return iterations
}

function gapAt({ ell }: Scene, wall: SceneWall, contact: SceneContact, pose: Pose): Gap {
  const own = newGap()
  measureGap(wall, contact, ell, pose, own)
  return own
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
  const { ell, size: length } = scene
  const { force, contacts } = wall
  const goal = balanceGoal(scene)
  let before = Infinity
  const loaded = contacts.map((_, i) => force[i]! > 0)
  for (let iterations = 0; iterations < MOST_POLISHES; iterations++) {
    evaluate(scene, here)
    const gaps = contacts.map((contact) => gapAt(scene, wall, contact, here.pose))
    gaps.forEach((own, i) => (loaded[i] ||= own.s > CLEAR * length))
    const closed = gaps.every((own, i) => !loaded[i] || Math.abs(own.s) <= CLOSED * length)
    const size = norm(here.gradient)
    const stuck = size > before / 2 && size <= roundingFloor(scene)
    if (closed && (size <= goal || stuck)) return { converged: true, iterations }
    before = size
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
function touchStep({ stiffness }: Scene, { hessian: H, gradient: g }: Point, gaps: readonly Gap[]): readonly number[] | null {
  const matrix: number[][] = []
  for (let a = 0; a < 6; a++) {
    const row = [...H.subarray(6 * a, 6 * a + 6), ...gaps.map(({ slope }) => stiffness * slope[a]!)]
    row[a]! += LEAST_SHIFT * stiffness
    matrix.push(row)
  }
  gaps.forEach(({ slope }, i) => matrix.push([...Array.from(slope, (x) => stiffness * x), ...gaps.map((_, j) => (i === j ? -PROXIMAL * stiffness : 0))]))
  const solved = solveLinear(matrix, [...Array.from(g, (x) => -x), ...gaps.map(({ s }) => -stiffness * s)])
  if (!solved.ok) return null
  for (let a = 0; a < 6; a++) step[a] = solved.x[a]!
  return solved.x.slice(6).map((x) => stiffness * x)
}
