import type { Value } from '../catalogue/basis'
import type { Hanger } from '../hanger/hanger'
import { cordStrengths } from './cordStrength'
import { wearOf } from './inspected'
import type { Part } from './linkResult'
import { carryingStrands, joinUnknown, legSections, weakestSection, wrapSection } from './sections'

/** A section of a leg as listed. */
export interface SectionRow {
  readonly part: Part
  /** Strands that carry there. */
  readonly strands: number
  /** How well each does; null where nothing is known of it. */
  readonly efficiency: Value | null
  /** strands x efficiency */
  readonly effective: number | null
  /** The fewest effective strands of those known. */
  readonly weakest: boolean
}

/** All sections of a leg from ring to gathering knot, the turn into the wraps last, with the weakest marked; for a dry strand. */
export function legSectionTable(hanger: Hanger): readonly SectionRow[] {
  const { answers } = hanger
  const cord = cordStrengths(hanger).leg.dry
  const { gone } = wearOf(hanger.inspections)
  const known = [...legSections(answers, gone, cord), wrapSection(answers, gone, cord.tied)]
  const weakest = weakestSection(known)
  const rows = known.map((s): SectionRow => ({ ...s, weakest: s === weakest }))
  const glued: SectionRow = { part: 'gluedStrands', strands: carryingStrands(answers), efficiency: null, effective: null, weakest: false }
  return joinUnknown(answers, cord.tied) ? [...rows.slice(0, 2), glued, ...rows.slice(2)] : rows
}
