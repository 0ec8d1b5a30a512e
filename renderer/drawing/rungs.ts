import { governingOf, partKey, parts, type CheckResult, type LinkResult, type PartKey, type Side } from '#core'

/** One part of the load path on the ladder: its worst result. */
export interface Rung {
  readonly link: PartKey
  readonly worst: LinkResult
  /** Share up to which it holds; null where nothing is known to compare with. */
  readonly holdsTo: number | null
  /** It decides the whole verdict. */
  readonly decides: boolean
}

export interface RungGroup {
  readonly side: Side
  readonly rungs: readonly Rung[]
}

/** Parts from the building down, in the two groups a maker answers for apart. */
export function rungGroups(check: CheckResult): readonly RungGroup[] {
  const deciding = check.governing === null ? null : partKey(check.governing.link, check.governing.tier)
  const rungs = parts(check).flatMap(({ link, tier, results }): readonly Rung[] => {
    const worst = governingOf(results)
    const key = partKey(link, tier)
    if (worst === null) return []
    const holdsTo = worst.terms.find((term) => term.code === 'holdsLimit')?.value ?? null
    return [{ link: key, worst, holdsTo, decides: deciding === key }]
  })
  return (['place', 'hanger'] as const).map((side) => ({ side, rungs: rungs.filter((rung) => rung.worst.side === side) })).filter((group) => group.rungs.length > 0)
}
