import type { LinkCode } from '../check/linkResult'

/** What differs from one hanger to the next and is drawn for each; names in words/chanceNames.ts. */
export const CHANCE_INPUTS = [
  'mix', 'pot', 'plant', 'otherWater', 'scale', 'ownMass',
  'centre', 'offset', 'legLengths', 'stretch', 'friction', 'wraps',
  'roll', 'strands', 'knots', 'ageing', 'duration', 'watering',
] as const
export type ChanceInput = (typeof CHANCE_INPUTS)[number]
/** One input: a thing of its own, or the strength of one part that is not of cord. */
export type InputCode = ChanceInput | `strength.${LinkCode}`
