import { governingOf, type CaseCode, type CheckResult, type LinkCode, type LinkResult } from '#core'

/** What a link does in one case; where it has several results there, the one that decides. */
export function linkIn(check: CheckResult, link: LinkCode, code: CaseCode): LinkResult {
  const found = governingOf(check.links.filter((l) => l.link === link && l.case === code))
  if (found === null) throw new Error(`${link} has no result in ${code}`)
  return found
}

/** The result that decides a link over all its cases. */
export function worstOfLink(check: CheckResult, link: LinkCode): LinkResult {
  const found = governingOf(check.links.filter((l) => l.link === link))
  if (found === null) throw new Error(`${link} has no result`)
  return found
}

/** Codes of the findings of a link, each once. */
export const codesOf = (check: CheckResult, link: LinkCode): readonly string[] =>
  [...new Set(check.links.filter((l) => l.link === link).flatMap((l) => l.findings).map((f) => f.code))]
