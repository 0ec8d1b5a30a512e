import { isLower, type LinkResult } from '../linkResult'
import type { Solved, Tier } from '../solved'
import { worse } from '../verdict'

/** Results of one pot among several, told apart from those of the first by their id. */
const atTier = (results: readonly LinkResult[], tier: number): readonly LinkResult[] =>
  results.map((result) => (isLower(tier) ? { ...result, tier, id: `${result.id}@${tier}` } : result))

/** The links of every pot's own sling; of a hanger with one pot those of that pot. */
export const ofEachTier = (links: (solved: Solved) => readonly LinkResult[]) => (solved: Solved): readonly LinkResult[] =>
  (solved.tiers.length === 0 ? links(solved) : solved.tiers.flatMap(({ hung, tier }) => atTier(pastThePotAbove(solved, tier, links(hung)), tier)))

/** Cords of a lower pot that come from the ring pass the pot above, which presses on them: how they bend there is not reckoned. */
function pastThePotAbove({ hanger: { answers } }: Solved, tier: number, results: readonly LinkResult[]): readonly LinkResult[] {
  if (!isLower(tier) || answers['tiers.how'] !== 'ownCords') return results
  return results.map((result): LinkResult => ({ ...result, verdict: worse(result.verdict, 'just holds') }))
}

/** The seat of each pot, as it stands with the pots under it lifted out, when it tips most easily. */
export const seatOfEachTier = (links: (solved: Solved) => readonly LinkResult[]) => (solved: Solved): readonly LinkResult[] =>
  (solved.tiers.length === 0 ? links(solved) : solved.tiers.flatMap((one) => atTier(seatOf(links(one.alone), one), one.tier)))

function seatOf(results: readonly LinkResult[], { alone, hung }: Tier): readonly LinkResult[] {
  if (alone === hung) return results
  const told = results.map((result): LinkResult => ({ ...result, findings: [...result.findings, { code: 'SEAT_LOWER_OUT' }] }))
  return [...told, ...told.filter((result) => result.case === 'watered').map((result): LinkResult => ({ ...result, case: 'lowerOut', id: result.id.replace(/watered$/, 'lowerOut') }))]
}
