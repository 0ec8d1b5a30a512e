import { value, type Value } from './basis'

const degrees = (x: number): number => (x * Math.PI) / 180

/** Legs that may be counted on, at most. */
export const COUNTED_LEGS: Value = value(3, '1', 'published', 'EN 1492-1, mode factors of three and four legs: 2.1 and 1.5 are 3 cos b at 45 and 60 degrees; a rigid load on more than three rests on three')

/** Angle of the legs from the vertical above which the maker is warned, rad. */
export const WIDE_ANGLE: Value = value(degrees(60), 'rad', 'published', 'EN 1492-1 rates no sling beyond 60 degrees from the vertical')

/** Angle of the legs from the vertical above which no number is trusted, rad. */
export const REFUSED_ANGLE: Value = value(degrees(75), 'rad', 'from memory', 'a judgement: there each of four legs carries about the whole weight, and a centimetre more or less in half a metre changes that by a fifth and more')

/** Tension below which a leg is called nearly slack, as a share of an even one. */
export const NEARLY_SLACK: Value = value(0.05, '1', 'from memory', 'a judgement: a leg that swings loose to the hand; said, not reckoned with')
