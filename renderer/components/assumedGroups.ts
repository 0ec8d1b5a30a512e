import { governingOf, isWorse, linkName, partKey, parts, settlingFields, type Assumed, type CheckResult, type FieldPath, type LinkResult, type PartKey } from '#core'
import { LINK_FIELDS, RARE_FIELDS, tierFields } from './linkFields'

/** Assumed things that bear on one part; `part` null for those of no part’s own. */
export interface AssumedGroup {
  readonly part: PartKey | null
  readonly name: string
  readonly decides: boolean
  readonly assumed: readonly Assumed[]
}

/** The more concern the earlier; of equal verdicts the harder worked. */
function bySeriousness(a: LinkResult, b: LinkResult): number {
  if (a.verdict !== b.verdict) return isWorse(a.verdict, b.verdict) ? -1 : 1
  return (b.utilisation ?? 0) - (a.utilisation ?? 0)
}

/**
 * What a check assumed, by part: the part that decides first, then the rest by how serious they are; of each part what
 * must be answered first, then what its findings ask for. Each thing stands once, where it matters most.
 */
export function assumedGroups(check: CheckResult, rest: string): readonly AssumedGroup[] {
  const deciding = check.governing === null ? null : partKey(check.governing.link, check.governing.tier)
  const ranked = parts(check).flatMap(({ link, tier, results }) => {
    const worst = governingOf(results)
    return worst === null ? [] : [{ key: partKey(link, tier), link, tier, worst, results }]
  }).sort((a, b) => Number(b.key === deciding) - Number(a.key === deciding) || bySeriousness(a.worst, b.worst))
  const left = new Map(check.assumed.map((assumed) => [assumed.path, assumed]))
  const take = (paths: readonly FieldPath[]): readonly Assumed[] => [...new Set(paths)].flatMap((path) => {
    const found = left.get(path)
    left.delete(path)
    return found ?? []
  })
  const needed = new Set(settlingFields(check.links.flatMap(({ findings }) => findings).filter(({ code }) => code === 'ANSWER_NEEDED')))
  const neededFirst = (assumed: readonly Assumed[]): readonly Assumed[] => [...assumed.filter(({ path }) => needed.has(path)), ...assumed.filter(({ path }) => !needed.has(path))]
  const groups = ranked.map(({ key, link, tier, worst, results }): AssumedGroup => ({
    part: key, name: linkName(link, tier), decides: key === deciding,
    assumed: neededFirst(take([...settlingFields([...worst.findings, ...results.flatMap(({ findings }) => findings)]), ...tierFields(key), ...(tier === 1 ? LINK_FIELDS[link] : []), ...(tier === 1 ? RARE_FIELDS[link] ?? [] : [])])),
  }))
  return [...groups, { part: null, name: rest, decides: false, assumed: [...left.values()] }].filter(({ assumed }) => assumed.length > 0)
}
