import { range, value, type Range, type Value } from './basis'

/** Fresh mass of plant and thick roots as a share of the watered mix; the high value leaves room for growth. */
export const PLANT_SHARE_OF_MIX: Range = range(0.1, 0.15, 0.3, '1', 'from memory', 'no published table of house-plant masses by pot size was found')

/** The same for a plant that is kept at its size. */
export const PLANT_SHARE_KEPT: Range = range(0.1, 0.15, 0.2, '1', 'from memory', 'the share above without the room for growth')

/** Height of a plant's own centre of gravity above the rim as a share of the plant's height. */
export const PLANT_CENTRE_SHARE: Value = value(0.5, '1', 'common practice', 'half way up the leaves')

/** Size classes of a plant: in proportion to its mix, or as usually sold in a pot of that width. */
export const PLANT_SIZES = ['byPot', 'pot10', 'pot15', 'pot20', 'pot25', 'pot30'] as const
export type PlantSize = (typeof PLANT_SIZES)[number]
export const PLANT_KINDS = ['leafy', 'succulent'] as const
export type PlantKind = (typeof PLANT_KINDS)[number]
export const PLANT_GROWTHS = ['grows', 'kept'] as const

const NO_TABLE = 'no published table of house-plant masses by pot size was found'
const fresh = (low: number, likely: number, high: number): Range => range(low, likely, high, 'kg', 'from memory', NO_TABLE)

/** Fresh mass of a leafy plant with its thick roots, kg, as sold in a pot of 10, 15, 20, 25 or 30 cm. */
export const PLANT_BY_SIZE: Readonly<Record<Exclude<PlantSize, 'byPot'>, Range>> = {
  pot10: fresh(0.05, 0.1, 0.15),
  pot15: fresh(0.15, 0.3, 0.5),
  pot20: fresh(0.4, 0.7, 1),
  pot25: fresh(0.8, 1.3, 2),
  pot30: fresh(1.5, 2.3, 3.5),
}

/** How much heavier a succulent is than a leafy plant of its size. */
export const SUCCULENT_OVER_LEAFY: Range = range(1.5, 1.75, 2, '1', 'from memory', NO_TABLE)

/** What a plant that is left to grow weighs later over its weight today, until it fills its pot. */
export const PLANT_GROWTH: Range = range(1, 1.3, 2, '1', 'from memory', 'gains 30 to 100 % a year until its roots fill the pot')
