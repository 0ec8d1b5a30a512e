import { governingOf, LINKS, type CheckResult, type LinkCode, type LinkResult, type Side } from '#core'

/** One part of the load path on the ladder: its worst result. */
export interface Rung {
  readonly link: LinkCode
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
  const rungs = LINKS.flatMap((link): readonly Rung[] => {
    const worst = governingOf(check.links.filter((result) => result.link === link))
    if (worst === null) return []
    const holdsTo = worst.terms.find((term) => term.code === 'holdsLimit')?.value ?? null
    return [{ link, worst, holdsTo, decides: check.governing?.link === link }]
  })
  return (['place', 'hanger'] as const).map((side) => ({ side, rungs: rungs.filter((rung) => rung.worst.side === side) })).filter((group) => group.rungs.length > 0)
}
