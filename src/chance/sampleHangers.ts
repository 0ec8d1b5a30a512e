import type { ChanceShare } from './asked'
import type { ChanceProblem } from './problem'
import { faultsOf } from './readChance'
import type { ChanceTally } from './tally'

export type ChanceOutcome = { readonly ok: true; readonly tally: ChanceTally } | { readonly ok: false; readonly problems: readonly ChanceProblem[] }

/**
 * Draws hangers made like the one asked about and tallies what each does, chunk by chunk, so that it can be stopped in
 * between and shared among workers. The same seed gives the same hangers, however they are divided. Pure.
 */
export function* sampleHangers(share: ChanceShare): Generator<ChanceTally, ChanceOutcome, void> {
  const problems = faultsOf(share)
  if (problems.length > 0) return { ok: false, problems }
  return { ok: false, problems: [{ code: 'NOTHING_KNOWN', links: [] }] }
}
