import { isWorse, type CaseCode, type CheckResult, type LinkCode, type LinkResult, type Verdict } from '#core'

/** What the solver leaves in a tension, and a little more. */
const ROUNDING = 1e-7

/** Worst verdict of a link in a case; null where it has none. */
function worstOf(check: CheckResult, link: LinkCode, code: CaseCode): Verdict | null {
  const verdicts = check.links.filter((l) => l.link === link && l.case === code).map((l) => l.verdict)
  return verdicts.reduce<Verdict | null>((worst, v) => (worst === null || isWorse(v, worst) ? v : worst), null)
}

function improvementsOf(before: LinkResult, first: CheckResult, second: CheckResult): string[] {
  const found: string[] = []
  const after = second.links.find((l) => l.id === before.id)
  if (before.utilisation !== null && after && after.grade === before.grade && after.utilisation !== null && after.utilisation < before.utilisation * (1 - ROUNDING)) {
    found.push(`${before.id}: ${before.utilisation} becomes ${after.utilisation}`)
  }
  const then = worstOf(first, before.link, before.case)
  const now = worstOf(second, before.link, before.case)
  if (then !== null && now !== null && isWorse(then, now)) found.push(`${before.link}.${before.case}: ${then} becomes ${now}`)
  return found
}

/**
 * Where some links of a second check look better than in the first: a smaller utilisation of the same
 * part by evidence of the same kind, or a milder verdict of the same link in the same case.
 */
export const improvements = (first: CheckResult, second: CheckResult, among: (link: LinkResult) => boolean): readonly string[] =>
  first.links.filter(among).flatMap((link) => improvementsOf(link, first, second))
