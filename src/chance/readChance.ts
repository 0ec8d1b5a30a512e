import { GREATEST_SEED, MOST_SAMPLES, type ChanceAsked } from './asked'
import type { ChanceProblem } from './problem'

type Numbers = Pick<ChanceAsked, 'samples' | 'seed'>
export type ChanceNumbers = ({ readonly ok: true } & Numbers) | { readonly ok: false; readonly problems: readonly ChanceProblem[] }

/** Faults of numbers that a program hands over. */
export function faultsOf({ samples, seed }: Numbers): readonly ChanceProblem[] {
  return [
    ...(Number.isInteger(samples) && samples >= 1 && samples <= MOST_SAMPLES ? [] : [{ code: 'BAD_SAMPLES', given: String(samples), most: MOST_SAMPLES } as const]),
    ...(Number.isInteger(seed) && seed >= 0 && seed <= GREATEST_SEED ? [] : [{ code: 'BAD_SEED', given: String(seed), greatest: GREATEST_SEED } as const]),
  ]
}

/** Digits alone: what else Number reads (1e4, 0x10, an empty text as 0) is not what people mean by a count. */
const wholeNumber = (text: string): number => (/^\d+$/.test(text.trim()) ? Number(text) : NaN)

/**
 * How many hangers and from which seed, from text as typed.
 * @example readChance('0', '-1').ok // false
 */
export function readChance(samples: string, seed: string): ChanceNumbers {
  const read: Numbers = { samples: wholeNumber(samples), seed: wholeNumber(seed) }
  // What was typed is told, not what it became.
  const problems = faultsOf(read).map((p): ChanceProblem => (p.code === 'BAD_SAMPLES' ? { ...p, given: samples } : p.code === 'BAD_SEED' ? { ...p, given: seed } : p))
  return problems.length === 0 ? { ok: true, ...read } : { ok: false, problems }
}
