import { POUND } from '../quantity/si'
import { range, value, type Range, type Value } from './basis'

/** What a plasterboard ceiling alone might bear as an explicit exception, kg; it is refused all the same. */
export const BOARD_CEILING_EXCEPTION: Range = range(1, 2, 3, 'kg', 'common practice', 'a judgement: all of it pulls straight out, and board sags in damp air')

/** Sag over span at which a tile grid is graded, under a uniform load of its own tiles. */
export const GRID_SAG: Value = value(1 / 360, '1', 'published', 'ASTM C635: uniform load at a deflection of the span / 360; light grids are for tiles only')

const BOX = 'National Electrical Code (USA), 314.27'
/** What electrical boxes are made for, kg of lamp or fan. A lighting box is no plant hook. */
export const ELECTRICAL_BOXES = {
  lamp: value(50 * POUND, 'kg', 'published', `${BOX}(A)(2): a ceiling box holds a lamp of 50 lb; a heavier one is hung by itself`),
  fan: value(70 * POUND, 'kg', 'published', `${BOX}(C): a fan box holds at most 70 lb`),
  fanUnmarked: value(35 * POUND, 'kg', 'published', `${BOX}(C): a fan box for more than 35 lb is marked with what it holds`),
} as const satisfies Readonly<Record<string, Value>>

/** Depth from the face of a wall within which cables may run outside the usual zones of a British house, m. */
export const CABLE_DEPTH: Value = value(0.05, 'm', 'published', 'BS 7671, 522.6.201 to 204: cables less than 50 mm deep keep to zones, straight from a fitting or within 150 mm of a corner or ceiling')
