import { newtons, type Newtons, type Radians } from '../quantity/si'

/**
 * Tension left of T after a turn alpha with friction mu, holding side: T e^(-mu alpha) (Euler and Eytelwein).
 * @example afterTurn(newtons(100), 0.3, radians(Math.PI / 2)) // 62.42
 */
export const afterTurn = (tension: Newtons, friction: number, turn: Radians): Newtons => newtons(tension * Math.exp(-friction * turn))

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
