import type { Value } from '../catalogue/basis'
import type { Fibre } from '../catalogue/cords'
import { MANILA_MASS_TOLERANCE, MANILA_ROPE, NYLON_ROPE, POLYESTER_ROPE, POLYPROPYLENE_ROPE, SISAL_ROPE, type RopeRow } from '../catalogue/ropeTables'

const TABLES: Readonly<Partial<Record<Fibre, readonly RopeRow[]>>> = {
  manila: MANILA_ROPE, sisal: SISAL_ROPE, polyester: POLYESTER_ROPE, polypropylene: POLYPROPYLENE_ROPE, nylon: NYLON_ROPE,
}

/** The rope table of a fibre, thinnest first; null where none was found. */
export const ropeTable = (fibre: Fibre): readonly RopeRow[] | null => TABLES[fibre] ?? null

/**
 * The least measured diameter that counts as a row's size, m: its millimetres, or its inches if those
 * are less. A hair less counts too, as what typing in inches leaves.
 */
export const leastOf = (row: RopeRow): number => Math.min(row.diameter, row.inchDiameter) - 1e-9

/**
 * The row for a measured diameter, m: between two sizes the thinner one, beyond the thickest that one
 * (a thicker rope of its kind is no weaker); null below the thinnest.
 */
export const ropeRow = (rows: readonly RopeRow[], diameter: number): RopeRow | null => rows.findLast((row) => diameter >= leastOf(row)) ?? null

/** How far below its mass per metre a rope of the table may be; of other fibres no figure was found, and manila’s stands in. */
const toleranceOf = (row: RopeRow): Value => (row.diameter < 0.009 ? MANILA_MASS_TOLERANCE.to8 : MANILA_MASS_TOLERANCE.from10)

/** The least a rope must weigh to be the one of a row, kg/m; null where the table does not say. */
export const leastMass = (row: RopeRow): number | null => (row.linearDensity === null ? null : row.linearDensity.value * (1 - toleranceOf(row).value))
