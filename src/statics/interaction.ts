import { newtons, type Newtons, type Radians } from '../quantity/si'

export interface PullAndShear {
  readonly pull: Newtons
  readonly shear: Newtons
}

/**
 * Use of a fixing that is pulled and sheared at once, by the straight line N / N_R + V / V_R; 1 is all of it.
 * The cautious one of the usual rules. Without a capacity any load is endless use.
 * @example linearUse({ pull: newtons(30), shear: newtons(80) }, { pull: newtons(120), shear: newtons(400) }) // 0.45
 */
export const linearUse = (demand: PullAndShear, capacity: PullAndShear): number => share(demand.pull, capacity.pull) + share(demand.shear, capacity.shear)

const share = (demand: number, capacity: number): number => (demand === 0 ? 0 : demand / capacity)

/**
 * What a wood screw or lag screw takes of a load at an angle to the wood's face, N:
 * W Z / (W cos^2 a + Z sin^2 a), W its withdrawal over the whole thread, Z its lateral value; a = 0 along
 * the face, a right angle straight out (National Design Specification, 12.4.1). Nothing where either is nothing.
 * @example angledScrew(newtons(600), newtons(300), radians(Math.PI / 4)) // 400
 */
export const angledScrew = (withdrawal: Newtons, lateral: Newtons, angle: Radians): Newtons =>
  newtons(withdrawal === 0 || lateral === 0 ? 0 : (withdrawal * lateral) / (withdrawal * Math.cos(angle) ** 2 + lateral * Math.sin(angle) ** 2))
