import { newtons, type Newtons, type Radians } from '../quantity/si'

/**
 * Tension left of T after a turn alpha with friction mu, holding side: T e^(-mu alpha) (Euler and Eytelwein).
 * @example afterTurn(newtons(100), 0.3, radians(Math.PI / 2)) // 62.42
 */
export const afterTurn = (tension: Newtons, friction: number, turn: Radians): Newtons => newtons(tension * Math.exp(-friction * turn))

/**
 * Force with which a cord presses on an edge it turns over by phi: sqrt(T1^2 + T2^2 - 2 T1 T2 cos phi), T1 and T2
 * the tensions before and after it (balance of three forces).
 * @example edgeForce(newtons(3), newtons(4), radians(Math.PI / 2)) // 5
 */
export const edgeForce = (before: Newtons, after: Newtons, turn: Radians): Newtons => newtons(Math.sqrt(before ** 2 + after ** 2 - 2 * before * after * Math.cos(turn)))

/**
 * Grip of n wraps of tension t round a bundle: 2 pi mu n t. The radius drops out. A model only: no
 * published test of a wrapped gathering knot exists.
 * @example wrapGrip(0.3, 8, newtons(30)) // 452.39
 */
export const wrapGrip = (friction: number, wraps: number, tension: Newtons): Newtons => newtons(2 * Math.PI * friction * wraps * tension)

/**
 * Hoop tension in a wrap that holds N strands pulling radially outwards with T each: N T / (2 pi),
 * equilibrium of half a ring under even radial load.
 * @example splayHoop(4, newtons(10)) // 6.366
 */
export const splayHoop = (strands: number, tension: Newtons): Newtons => newtons((strands * tension) / (2 * Math.PI))
