import { peopleBeneath } from '../catalogue/reserves'
import type { Answers } from '../hanger/fields'
import type { LinkResult } from './linkResult'
import { ownReserve } from './ownReserve'
import { worse } from './verdict'

/**
 * Over people a reserve of the maker's own below the usual one leaves "just holds" at best
 * (RESERVE_LOW_OVER_PEOPLE): it is theirs to answer for, and no check's to praise. Only links that
 * it makes easier are touched.
 */
export function temperLowReserve(answers: Answers, links: readonly LinkResult[]): readonly LinkResult[] {
  const reserve = ownReserve(answers)
  if (reserve === null || reserve.own >= reserve.usual || !peopleBeneath(answers['place.beneath'])) return links
  const { own, usual } = reserve
  return links.map((link): LinkResult => (link.factors.some((f) => f.code === 'reserve' && f.basis === 'your own')
    ? { ...link, verdict: worse(link.verdict, 'just holds'), findings: [...link.findings, { code: 'RESERVE_LOW_OVER_PEOPLE', own, usual }] }
    : link))
}
