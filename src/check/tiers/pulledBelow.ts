import type { CaseCode } from '../../load/loadCases'
import { STANDARD_GRAVITY } from '../../quantity/si'
import type { Term } from '../linkResult'
import type { Solved } from '../solved'
import { entering } from '../term'

/** What a pot hung from a gathering knot does to the pull that its wraps must hold. */
export interface PulledBelow {
  /** The pull that reaches the wraps, N, from that of the legs. */
  readonly slipWith: (legs: number) => number
  /** The same over the symbols F_s and those of the terms. */
  readonly formula: string
  readonly terms: readonly Term[]
}

/**
 * Cords that only the wraps hold ask them for the lower pot's pull besides that of the legs. Strands that run on
 * carry the lower pot themselves, and it holds them against being drawn up: its lightest weight at rest is taken
 * off; not in a drop, where all falls together, nor where it is lifted out.
 */
export function pulledBelow(solved: Solved, code: CaseCode): PulledBelow {
  const { below, belowLeast, factor, case: { code: now } } = solved.loads[code]
  if (solved.drawnKnot === null) return { slipWith: (legs) => legs, formula: 'F_s', terms: [] }
  if (solved.hanger.answers['tiers.how'] === 'wrapped') {
    const pull = below * STANDARD_GRAVITY * factor
    return { slipWith: (legs) => legs + pull, formula: 'F_s + F_b', terms: [entering('lowerPull', 'F_b', pull, 'N', 'computed', 'weight of what hangs below on cords that only the wraps hold, in this case')] }
  }
  if (now === 'drop') return { slipWith: (legs) => legs, formula: 'F_s', terms: [] }
  const relief = belowLeast * STANDARD_GRAVITY
  return { slipWith: (legs) => Math.max(0, legs - relief), formula: 'max(0, F_s - F_b)', terms: [entering('lowerRelief', 'F_b', relief, 'N', 'computed', 'least weight of what hangs below on the same strands')] }
}
