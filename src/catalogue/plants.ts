import { range, value, type Range, type Value } from './basis'

/** Fresh mass of plant and thick roots as a share of the watered mix; the high value leaves room for growth. */
export const PLANT_SHARE_OF_MIX: Range = range(0.1, 0.15, 0.3, '1', 'from memory', 'no published table of house-plant masses by pot size was found')

/** Height of a plant's own centre of gravity above the rim as a share of the plant's height. */
export const PLANT_CENTRE_SHARE: Value = value(0.5, '1', 'common practice', 'half way up the leaves')
