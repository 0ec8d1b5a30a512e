import { frontView, governingOf, partKey, parts, type CaseCode, type CheckResult, type LinkCode, type PartKey } from '#core'

/** What the drawing shows of one part, in figures. */
export interface PartRow {
  readonly key: PartKey
  readonly link: LinkCode
  readonly tier: number
  /** Height above the pot’s base where it hangs before any cord stretched, m; null where the part is not drawn. */
  readonly height: number | null
  /** Share of what it may carry in the situation shown; null where it is not known or does not concern it. */
  readonly share: number | null
}

/** Parts from the building down as drawn in a situation. */
export function partRows(check: CheckResult, situation: CaseCode): readonly PartRow[] {
  const { anchors } = frontView(check, situation)
  return parts(check).map(({ link, tier, results }) => {
    const key = partKey(link, tier)
    const share = governingOf(results.filter((result) => result.case === situation))?.utilisation ?? null
    return { key, link, tier, height: anchors[key]?.[1] ?? null, share }
  })
}
