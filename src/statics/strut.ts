import { newtons, type Metres, type Newtons, type Pascals } from '../quantity/si'

/**
 * Thrust at which a straight stick, free to turn at both ends, bows out of line: pi^2 E I / L^2 (Euler).
 * `inertia` in m4, `length` between the places where the cord takes hold.
 * @example eulerLoad(pascals(10e9), 1.0179e-9, metres(0.6)) // 279.06
 */
export const eulerLoad = (modulus: Pascals, inertia: number, length: Metres): Newtons => newtons((Math.PI ** 2 * modulus * inertia) / length ** 2)

/** The stick's moment with the thrust's part in it, N m, or that the thrust alone bows it out. */
export type ThrustedMoment =
  | { readonly ok: true; readonly moment: number }
  | { readonly ok: false; readonly reason: 'bows'; readonly euler: Newtons }

/**
 * A thrust pushes on a stick that the loads have already bent and bends it more: M / (1 - H / P_e)
 * (Timoshenko, Theory of Elastic Stability; Wood Handbook, ch. 9, beam columns). Nearly exact
 * for an even load; a load in the middle bends less than that, by a fifth of H / P_e at most.
 * @example momentUnderThrust(3, newtons(70), newtons(280)).moment // 4
 */
export const momentUnderThrust = (moment: number, thrust: Newtons, euler: Newtons): ThrustedMoment =>
  thrust >= euler ? { ok: false, reason: 'bows', euler } : { ok: true, moment: moment / (1 - thrust / euler) }
