import { POUND, STANDARD_GRAVITY } from '../quantity/si'
import { range, value, type Range, type Value } from './basis'

const LBF = POUND * STANDARD_GRAVITY
const published = (kilonewtons: number, source: string): Value => value(kilonewtons * 1000, 'N', 'published', source)
const upTo = (lbf: number, make: string): Value => value(lbf * LBF, 'N', 'published', `cord maker’s page of 2014, ${make}; the page does not say how it was tested`)
const FOUR_STRAND = 'dealer’s list of four-strand hemp rope (modulor.de)'

/** Published breaking forces of natural cord of a named kind and size, N: means or claims, never minima. They differ sixfold at one size, so none of them stands for another maker's cord. */
export const NATURAL_CORD_BREAKS = {
  cottonHollowBraid8: published(1.07, 'rope vendor’s own test, mean of 5, decorative hollow braid (prorope.eu)'),
  cottonTwisted4_8: upTo(319, 'three-strand, “up to”'),
  cottonTwisted12_7: upTo(1500, 'three-strand, “up to”'),
  cottonSolidBraid4_8: upTo(525, 'solid braid'),
  cottonSolidBraid12_7: upTo(2100, 'solid braid'),
  hempTwisted8: published(4.34, 'rope vendor’s own test, mean of 5, three-strand (prorope.eu)'),
  hempFourStrand6: published(2.6, FOUR_STRAND),
  hempFourStrand10: published(7.1, FOUR_STRAND),
  hempFourStrand16: published(17.8, FOUR_STRAND),
} as const satisfies Readonly<Record<string, Value>>

/** One size of a twine standard. */
export interface TwineRow {
  readonly id: string
  /** Nominal mass per metre of the dry fibre, kg/m. */
  readonly linearDensity: Range
  /** Least breaking force, N. */
  readonly breaking: Value
}

const GB_2696 = 'GB 2696-1987, jute twine, three-ply, least break, read in a machine translation'
const twine = (from: number, to: number, newtons: number): TwineRow => ({
  id: `${from} to ${to} tex`,
  linearDensity: range(from * 1e-6, ((from + to) / 2) * 1e-6, to * 1e-6, 'kg/m', 'published', `${GB_2696}; likely: the middle`),
  breaking: value(newtons, 'N', 'published', GB_2696),
})

export const JUTE_TWINE: readonly TwineRow[] = [twine(1010, 1050, 100), twine(1880, 1960, 200), twine(2080, 2170, 220), twine(2320, 2420, 240)]
