import { governingOf } from '../check/checkHanger'
import type { LinkCode, LinkResult, Side } from '../check/linkResult'
import { partKey, parts, type PartKey } from '../check/parts'
import { pottedTogether } from '../check/tiers/pottedTogether'
import { weightMakeup } from '../load/weightMakeup'
import { STATES, type MassRange, type State } from '../load/states'
import { betterOf, type Better } from './better'
import { differences, type Difference } from './differences'
import type { Variant } from './variant'

/** A part of either; null where one has no such part. */
export interface ComparedPart {
  readonly key: PartKey
  readonly link: LinkCode
  readonly tier: number
  /** What decides in the part: its worst result. */
  readonly first: LinkResult | null
  readonly second: LinkResult | null
  /** Null where only one has it. */
  readonly better: Better | null
}

/** All that hangs, the hanger's own weight included, kg. */
export interface ComparedWeight {
  readonly state: State
  readonly first: MassRange
  readonly second: MassRange
}

/** Logs that are not fields. */
export type ComparedLog = 'pullTests' | 'inspections' | 'sold'

/** Two hangers side by side; nothing in it says which should be made. */
export interface Comparison {
  /** By what decides on each side. */
  readonly better: Readonly<Record<Side, Better>>
  /** From the building down, those of either. */
  readonly parts: readonly ComparedPart[]
  readonly weights: readonly ComparedWeight[]
  readonly differences: readonly Difference[]
  readonly logs: readonly ComparedLog[]
}

/** Compares two hangers that were checked. */
export function compareVariants(first: Variant, second: Variant): Comparison {
  return {
    better: { hanger: betterOn('hanger', first, second), place: betterOn('place', first, second) },
    parts: comparedParts(first, second),
    weights: comparedWeights(first, second),
    differences: differences(first, second),
    logs: (['pullTests', 'inspections', 'sold'] as const).filter((log) => JSON.stringify(first.document[log]) !== JSON.stringify(second.document[log])),
  }
}

function betterOn(side: Side, first: Variant, second: Variant): Better {
  const decides = ({ check }: Variant): LinkResult | null => governingOf(check.links.filter((link) => link.side === side))
  const [a, b] = [decides(first), decides(second)]
  return a === null || b === null ? 'untold' : betterOf(a, b)
}

function comparedParts(first: Variant, second: Variant): readonly ComparedPart[] {
  const [a, b] = [worstByPart(first), worstByPart(second)]
  // The order is that of the one with the part; what only the other has follows what it stands below there.
  const keys = merged([...a.keys()], [...b.keys()])
  return keys.map((key): ComparedPart => {
    const [one, other] = [a.get(key) ?? null, b.get(key) ?? null]
    const { link, tier } = (one ?? other) as LinkResult
    return { key, link, tier, first: one, second: other, better: one === null || other === null ? null : betterOf(one, other) }
  })
}

const worstByPart = ({ check }: Variant): ReadonlyMap<PartKey, LinkResult> => new Map(parts(check).flatMap(({ link, tier, results }) => {
  const worst = governingOf(results)
  return worst === null ? [] : [[partKey(link, tier), worst] as const]
}))

function merged(first: readonly PartKey[], second: readonly PartKey[]): readonly PartKey[] {
  const all = [...first]
  second.forEach((key, i) => {
    if (!all.includes(key)) all.splice(i === 0 ? 0 : all.indexOf(second[i - 1] as PartKey) + 1, 0, key)
  })
  return all
}

type Makeups = ReturnType<typeof weightMakeup>

const comparedWeights = (first: Variant, second: Variant): readonly ComparedWeight[] => {
  const makeup = ({ check: { solved } }: Variant): Makeups => weightMakeup(pottedTogether(solved), solved.hangerMass)
  const [a, b] = [makeup(first), makeup(second)]
  return STATES.map((state) => ({ state, first: a[state].total, second: b[state].total }))
}
