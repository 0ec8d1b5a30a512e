import { findingText, governingOf, linkName, parts, withPullTests, editField, type CheckResult, type HangerDocument, type LinkCode, type Verdict } from '#core'
import { WRITES, type StepGuide } from './stepGuides'

/** How a part stands: its verdict, and how far what it may carry, or its limit, is used where that is known. */
export interface Standing {
  readonly verdict: Verdict
  readonly utilisation: number | null
  readonly unit: 'N' | 'm' | ''
}

/** A part before and after a result was written down; null where it was not asked anything then. */
export interface Change {
  readonly key: string
  readonly name: string
  readonly before: Standing | null
  readonly now: Standing | null
}

/** The document as it would be without what a guide wrote. */
export function withoutResult(document: HangerDocument, guide: StepGuide): HangerDocument {
  if (guide === 'pullTest') return withPullTests(document, [])
  return WRITES[guide].fields.reduce<HangerDocument>((rest, path) => editField(rest, path, null), document)
}

/** Parts whose verdict a result changes, then those it is meant for and those that decide without it and with it. */
export function changesOf(before: CheckResult, after: CheckResult, meant: readonly LinkCode[]): readonly Change[] {
  const deciding = [before, after].flatMap(({ governing }) => (governing === null ? [] : [keyOf(governing.link, governing.tier)]))
  const [was, is] = [standingsOf(before), standingsOf(after)]
  const changes = [...new Set([...was.keys(), ...is.keys()])].map((key): Change & { readonly link: LinkCode } => {
    const one = is.get(key) ?? was.get(key)
    return { key, link: one?.link ?? 'load', name: one?.name ?? '', before: was.get(key)?.standing ?? null, now: is.get(key)?.standing ?? null }
  })
  const told = changes.filter((change) => isChanged(change) || meant.includes(change.link) || deciding.includes(change.key))
  return [...told.filter(isChanged), ...told.filter((change) => !isChanged(change))]
}

export const isChanged = ({ before, now }: Pick<Change, 'before' | 'now'>): boolean => before?.verdict !== now?.verdict

/** Sentences that the check did not say before, of the parts told of. */
export function newSentences(before: CheckResult, after: CheckResult, told: readonly Change[]): readonly string[] {
  const said = (check: CheckResult): readonly string[] => parts(check).filter(({ link, tier }) => told.some(({ key }) => key === keyOf(link, tier)))
    .flatMap(({ results }) => governingOf(results)?.findings ?? []).map(findingText)
  const old = new Set(said(before))
  return [...new Set(said(after))].filter((sentence) => !old.has(sentence))
}

interface Told {
  readonly link: LinkCode
  readonly name: string
  readonly standing: Standing | null
}

const keyOf = (link: LinkCode, tier: number): string => `${link}@${tier}`

const standingsOf = (check: CheckResult): ReadonlyMap<string, Told> => new Map(parts(check).map(({ link, tier, results }) => {
  const worst = governingOf(results)
  return [keyOf(link, tier), { link, name: linkName(link, tier), standing: worst === null ? null : { verdict: worst.verdict, utilisation: worst.utilisation, unit: worst.demand?.unit ?? '' } }]
}))
