import type { CheckResult } from '../check/checkHanger'
import { LINKS, type LinkCode, type LinkResult } from '../check/linkResult'
import { isWorse, type Verdict } from '../check/verdict'
import type { HangerDocument, Patch } from '../hanger/document'
import { checkPatched } from './evaluate'
import { harmed, worstOfLink } from './harmed'
import { REMEDY_KINDS, type RemedyCode, type RemedyKind } from './remedyKinds'
import { smallestCord } from './smallestCord'

/** A change to the hanger file that was checked and found to help. */
export interface Remedy {
  readonly code: RemedyCode
  readonly patch: Patch
  /** The link it mends, and how that link stands with the patch. */
  readonly link: LinkCode
  readonly linkVerdict: Verdict
  /** The whole with the patch laid over. */
  readonly verdict: Verdict
  readonly utilisation: number | null
}

/** Links in trouble, governing one first: those whose worst case neither holds nor just holds; else the governing one. */
function linksToMend(check: CheckResult): readonly LinkCode[] {
  const governing = check.governing
  if (governing === null) return []
  const troubled = LINKS.filter((link) => {
    const worst = worstOfLink(check, link)
    return worst !== null && isWorse(worst.verdict, 'just holds')
  })
  return [...new Set([governing.link, ...troubled])]
}

function improves(before: LinkResult | null, after: LinkResult | null): boolean {
  if (before === null || after === null) return before !== null
  if (before.verdict !== after.verdict) return isWorse(before.verdict, after.verdict)
  return before.utilisation !== null && after.utilisation !== null && after.utilisation < before.utilisation * (1 - 1e-9)
}

/** The check of a document with a patch, each made once: what does not mend one link is tried on others too. */
function checksOf(document: HangerDocument): (patch: Patch) => CheckResult | null {
  const made = new Map<string, CheckResult | null>()
  return (patch) => {
    const key = JSON.stringify(patch)
    const known = made.get(key)
    if (known !== undefined) return known
    const after = checkPatched(document, patch)
    made.set(key, after)
    return after
  }
}

function tryKind(checked: (patch: Patch) => CheckResult | null, check: CheckResult, link: LinkCode, kind: RemedyKind): Remedy | null {
  let best: Remedy | null = null
  for (const patch of kind.patches(check)) {
    const after = checked(patch)
    if (after === null || harmed(check, after, [link]) !== null) continue
    const mended = worstOfLink(after, link)
    if (!improves(worstOfLink(check, link), mended)) continue
    best = { code: kind.code, patch, link, linkVerdict: mended?.verdict ?? 'holds', verdict: after.verdict, utilisation: after.governing?.utilisation ?? null }
    if (!isWorse(best.linkVerdict, 'just holds')) return best
  }
  return best
}

/**
 * Remedies for a checked hanger, found by checking each again: listed only if the link they mend
 * improves and no other gets a worse verdict; the governing link's first, then by cost. Of each kind the
 * mildest patch that lets the link hold, or the strongest that still helps. With no hanger yet, the
 * smallest cord. A generator, so that a long search can be stopped between two checks.
 */
export function* searchRemedies(document: HangerDocument, check: CheckResult): Generator<Remedy, void, void> {
  const { answers } = check.solved.hanger
  if (answers['make.have'] === 'no') {
    const cord = smallestCord(document)
    if (cord) yield { code: 'smallestCord', patch: cord.patch, link: 'leg', linkVerdict: worstOfLink(cord.check, 'leg')?.verdict ?? 'holds', verdict: cord.check.verdict, utilisation: cord.check.governing?.utilisation ?? null }
    return
  }
  const planned = answers['make.stage'] === 'planned'
  const seen = new Set<RemedyCode>()
  const checked = checksOf(document)
  for (const link of linksToMend(check)) {
    const kinds = REMEDY_KINDS.filter((kind) => kind.helps.includes(link) && (planned || !kind.plannedOnly)).sort((a, b) => a.cost - b.cost)
    for (const kind of kinds) {
      if (seen.has(kind.code)) continue
      const remedy = tryKind(checked, check, link, kind)
      if (remedy === null) continue
      seen.add(kind.code)
      yield remedy
    }
  }
}

/** All remedies at once. */
export const findRemedies = (document: HangerDocument, check: CheckResult): readonly Remedy[] => [...searchRemedies(document, check)]
