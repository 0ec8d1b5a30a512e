import { newtons, type Metres, type Newtons, type Pascals } from '../quantity/si'

/** One dowel through a side member into a main member. Bearing lengths in each; `bendingYield` of the dowel. */
export interface Joint {
  readonly diameter: Metres
  readonly bendingYield: Pascals
  readonly main: { readonly bearing: Pascals; readonly length: Metres }
  readonly side: { readonly bearing: Pascals; readonly length: Metres }
}

/** How the joint yields: one member crushes along its length, the dowel turns in both, it bends in one and turns in the other, or it bends in both. */
export const YIELD_MODES = ['mainCrushes', 'sideCrushes', 'dowelTurns', 'hingeInSide', 'hingeInMain', 'twoHinges'] as const
export type YieldMode = (typeof YIELD_MODES)[number]

/**
 * Load across the dowel at which each mode yields, by equilibrium of the dowel against uniform
 * bearing (European yield model; AWC National Design Specification, table 12.3.1A, without the
 * reduction terms).
 */
export function yieldLoads({ diameter: D, bendingYield: fyb, main, side }: Joint): Readonly<Record<YieldMode, Newtons>> {
  const [Fm, Fs, lm, ls] = [main.bearing, side.bearing, main.length, side.length]
  const [re, rt] = [Fm / Fs, lm / ls]
  const k1 = (Math.sqrt(re + 2 * re ** 2 * (1 + rt + rt ** 2) + rt ** 2 * re ** 3) - re * (1 + rt)) / (1 + re)
  const k2 = -1 + Math.sqrt(2 * (1 + re) + (2 * fyb * (1 + 2 * re) * D ** 2) / (3 * Fm * lm ** 2))
  const k3 = -1 + Math.sqrt((2 * (1 + re)) / re + (2 * fyb * (2 + re) * D ** 2) / (3 * Fm * ls ** 2))
  return {
    mainCrushes: newtons(D * lm * Fm),
    sideCrushes: newtons(D * ls * Fs),
    dowelTurns: newtons(k1 * D * ls * Fs),
    hingeInSide: newtons((k2 * D * lm * Fm) / (1 + 2 * re)),
    hingeInMain: newtons((k3 * D * ls * Fm) / (2 + re)),
    twoHinges: newtons(D ** 2 * Math.sqrt((2 * Fm * fyb) / (3 * (1 + re)))),
  }
}

/** The mode that yields first, with its load. */
export function governingYield(joint: Joint): { readonly mode: YieldMode; readonly load: Newtons } {
  const loads = yieldLoads(joint)
  return YIELD_MODES.map((mode) => ({ mode, load: loads[mode] })).reduce((least, next) => (next.load < least.load ? next : least))
}
