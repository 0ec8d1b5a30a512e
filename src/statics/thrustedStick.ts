import { newtons, type Newtons, type Pascals } from '../quantity/si'

/** What one newton of weight does in a stick, and what the stick sets against it. */
export interface ThrustedStick {
  /** Largest bending moment and thrust for each newton of weight: m, and a plain ratio. */
  readonly moment: number
  readonly thrust: number
  /** Section modulus, m3, and area, m2. */
  readonly modulus: number
  readonly area: number
  /** Thrust at which it bows out of line, N. */
  readonly bows: Newtons
}

/**
 * The weight, N, at which the outer fibres reach a stress f: W k_M / (Z (1 - W k_H / P_e)) + W k_H / A = f, the
 * thrust bending the stick further (momentUnderThrust). Solved for W; with no thrust f Z / k_M.
 * @example weightAtStress(pascals(40e6), { moment: 0.05, thrust: 0, modulus: 4e-7, area: 2e-4, bows: newtons(900) }) // 320
 */
export function weightAtStress(stress: Pascals, { moment, thrust, modulus, area, bows }: ThrustedStick): Newtons {
  const bend = moment / modulus
  const push = thrust / area
  const bow = thrust / bows
  const sum = bend + push + stress * bow
  return newtons((2 * stress) / (sum + Math.sqrt(sum * sum - 4 * bow * push * stress)))
}
