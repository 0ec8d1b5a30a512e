import { governingOf, type CheckResult } from '../check/checkHanger'
import { LINKS, type LinkCode, type LinkResult } from '../check/linkResult'
import { isWorse } from '../check/verdict'

/** The result of a link that decides; null where there is no such link. */
export const worstOfLink = (check: CheckResult, link: LinkCode): LinkResult | null => governingOf(check.links.filter((l) => l.link === link))

/** The worst of the links that end up with a worse verdict than before, those aside that were meant to change; null if none does. */
export function harmed(before: CheckResult, after: CheckResult, meant: readonly LinkCode[]): LinkResult | null {
  return governingOf(LINKS.flatMap((link) => {
    if (meant.includes(link)) return []
    const then = worstOfLink(before, link)
    const now = worstOfLink(after, link)
    return then !== null && now !== null && isWorse(now.verdict, then.verdict) ? [now] : []
  }))
}
