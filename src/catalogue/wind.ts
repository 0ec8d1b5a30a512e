import { range, value, type Range, type Value } from './basis'

/** How the wind reaches a hanger outdoors. */
export const WINDS = ['sheltered', 'open', 'exposed'] as const
export type Wind = (typeof WINDS)[number]

const gust = (speed: number, where: string): Value => value(speed, 'm/s', 'from memory', `a judgement: strongest gust of an ordinary year about two metres above ground, ${where}; EN 1991-1-4 gives about 26 m/s among houses and 29 m/s in open country, once in 50 years`)

/** Gust that a hanger is checked for, m/s. */
export const GUST_SPEED: Readonly<Record<Wind, Value>> = {
  sheltered: gust(12, 'in a porch or between walls'),
  open: gust(18, 'in a garden or on a low balcony'),
  exposed: gust(26, 'on a coast, a hill or a high balcony'),
}

const DRAG = 'order of EN 1991-1-4 and ASCE 7'
/** Drag coefficients: of round pots and of cords on their silhouette, of square ones on half their diagonal either way, of leaves on their outline in still air. */
export const DRAG_COEFFICIENT = {
  roundPot: value(1.2, '1', 'from memory', `short round pots 0.7 to 1.2, ${DRAG}; the most taken`),
  squarePot: value(1.4, '1', 'from memory', `square pots 1.3 to 2.0 on their side, ${DRAG}; 2.0 on a side is 1.4 on the diagonal`),
  cord: value(1.2, '1', 'from memory', `long round bars, ${DRAG}`),
  leaves: value(1, '1', 'from memory', 'leaves before they fold, on their outline in still air'),
} as const satisfies Readonly<Record<string, Value>>

/**
 * What is left of that of leaves as they fold and turn, by wind speed, m/s; the push grows all the same
 * with every speed.
 */
export const FOLDED_LEAVES = {
  points: [[5, 1], [10, 0.6], [15, 0.5], [20, 0.35]] as readonly (readonly [speed: number, share: number])[],
  unit: '1',
  basis: 'from memory',
  source: 'crowns of trees in a wind tunnel at 20 m/s: broad-leaved 0.15 to 0.22, conifers 0.22 to 0.47 (Vollsinger et al. 2005, Rudnicki et al. 2004, Canadian Journal of Forest Research, abstracts); between still air and there a judgement',
} as const

/** Width of a leg seen from aside over that of one cord, by the square root of its strands: a bundle with air in it. */
export const BUNDLE_WIDTH: Value = value(1.3, '1', 'computed', 'round bundle of round strands that fill 0.6 of it: 1 / sqrt(0.6)')

/** Rain that clings to a plant, over its mass. */
export const RAIN_ON_PLANT: Range = range(0.1, 0.4, 1, '1', 'computed', 'leaves keep 0.05 to 1.1 mm of rain (Keim et al., Advances in Water Resources 2006, abstract), of soft broad leaves 0.5 at most taken; 0.3 kg of leaf on a square metre, and leaves as 0.6 of the plant, from memory')
