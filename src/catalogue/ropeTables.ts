import { INCH, POUND, STANDARD_GRAVITY } from '../quantity/si'
import { value, type Basis, type Value } from './basis'

/** One size of a rope table: least breaking force of new, dry, unknotted rope under a short pull. */
export interface RopeRow {
  readonly id: string
  /** Nominal, m. */
  readonly diameter: number
  /** The same size in inches, m; the lesser of both is the least that counts as this size. */
  readonly inchDiameter: number
  /** kg/m; null where the table does not give it. */
  readonly linearDensity: Value | null
  /** N. */
  readonly breaking: Value
}

/** Printed units: pounds per hundred feet, and pounds-force. */
const LB_PER_100_FT = POUND / 30.48
const LBF = POUND * STANDARD_GRAVITY

const CI_1308 = 'Cordage Institute CI 1308-96, manila, three-strand, least break, as republished by a rope maker (abacarope.com)'
const FEDERAL = 'rope maker’s table in the style of the federal specification, three-strand, edition not stated (industrialrope.com)'
const POLYESTER_TABLE = 'rope table by diameter, polyester, three-strand, least break (Engineering ToolBox)'

/** The tables are printed in inches, of which their millimetres are the round figures. */
const SIXTEENTHS: Readonly<Record<number, number>> = { 5: 3, 6: 4, 8: 5, 10: 6, 11: 7, 12: 8, 14: 9 }

const row = (mm: number, linearDensity: number | null, breaking: number, basis: Basis, source: string): RopeRow => ({
  id: `${mm} mm`,
  diameter: mm / 1000,
  inchDiameter: ((SIXTEENTHS[mm] ?? Number.NaN) / 16) * INCH,
  linearDensity: linearDensity === null ? null : value(linearDensity, 'kg/m', basis, source),
  breaking: value(breaking, 'N', basis, source),
})
const printed = (mm: number, lbPer100Feet: number, lbf: number, source: string): RopeRow => row(mm, lbPer100Feet * LB_PER_100_FT, lbf * LBF, 'published', source)

/** Manila, three-strand, 3/16 in to 9/16 in. */
export const MANILA_ROPE: readonly RopeRow[] = [
  printed(5, 1.37, 405, CI_1308),
  printed(6, 1.82, 540, CI_1308),
  printed(8, 2.64, 900, CI_1308),
  printed(10, 3.79, 1215, CI_1308),
  printed(11, 4.87, 1575, CI_1308),
  printed(12, 6.96, 2385, CI_1308),
  printed(14, 9.63, 3105, CI_1308),
]

/** Strength of sisal over manila of the same size. */
export const SISAL_OVER_MANILA: Value = value(0.8, '1', 'published', 'US Army FM 5-125, chapter 1, relative strengths (manila 100, sisalana 80), order read from a damaged reprint; a Navy course on fibre line agrees')

/** Sisal, three-strand: its table was not found. */
export const SISAL_ROPE: readonly RopeRow[] = MANILA_ROPE.map(({ diameter, breaking }) =>
  row(diameter * 1000, null, SISAL_OVER_MANILA.value * breaking.value, 'computed', `0.80 x manila of the same size; ${CI_1308}`))

/** How far the mass per metre of manila may be from the table, as a share, by nominal diameter: up to 8 mm, and above. */
export const MANILA_MASS_TOLERANCE: Readonly<Record<'to8' | 'from10', Value>> = {
  to8: value(0.1, '1', 'published', CI_1308),
  from10: value(0.08, '1', 'published', CI_1308),
}

export const NYLON_ROPE: readonly RopeRow[] = [
  printed(5, 1, 900, FEDERAL),
  printed(6, 1.5, 1490, FEDERAL),
  printed(8, 2.5, 2300, FEDERAL),
  printed(10, 3.5, 3340, FEDERAL),
  printed(12, 6.5, 5750, FEDERAL),
]

export const POLYPROPYLENE_ROPE: readonly RopeRow[] = [
  printed(5, 0.7, 720, FEDERAL),
  printed(6, 1.2, 1130, FEDERAL),
  printed(8, 1.8, 1710, FEDERAL),
  printed(10, 2.8, 2440, FEDERAL),
  printed(12, 4.7, 3780, FEDERAL),
]

const polyester = (mm: number, gramsPerMetre: number, lbf: number): RopeRow => row(mm, gramsPerMetre / 1000, lbf * LBF, 'published', POLYESTER_TABLE)
export const POLYESTER_ROPE: readonly RopeRow[] = [
  polyester(5, 16, 765),
  polyester(6, 29, 1315),
  polyester(8, 45, 2050),
  polyester(10, 65, 2900),
  polyester(12, 115, 5085),
]
