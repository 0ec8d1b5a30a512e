import type { ChanceInput, InputCode } from '../chance/inputs'
import type { OutsideChance } from '../chance/report'
import type { ChanceCase, LeftOutReason } from '../chance/tally'
import type { LinkCode } from '../check/linkResult'
import { LINK_NAMES } from './names'

const INPUT_NAMES: Readonly<Record<ChanceInput, string>> = {
  mix: 'how heavy the potting mix is with its water',
  pot: 'how heavy the pot is',
  plant: 'how heavy the plant is',
  otherWater: 'water standing in pot, reservoir or saucer',
  scale: 'how true the scale was',
  ownMass: 'what the hanger itself weighs',
  centre: 'how high the weight sits',
  offset: 'how far off the middle the weight sits',
  legLengths: 'how evenly the legs were tied',
  stretch: 'how far the cord stretches',
  friction: 'how the cord grips',
  wraps: 'how tight the gathering knot was pulled',
  roll: 'the roll the cord came from',
  strands: 'how one strand differs from the next',
  knots: 'what the knots leave of the cord',
  ageing: 'how the cord ages and weathers',
  duration: 'how cord bears a load that lasts',
  watering: 'how much of its time it hangs wet',
}

/**
 * What an input is, as it stands within a sentence.
 * @example inputName('strength.hook') // 'the strength of: hook'
 */
export function inputName(input: InputCode): string {
  return isOfPart(input) ? `the strength of: ${LINK_NAMES[input.slice('strength.'.length) as LinkCode].toLowerCase()}` : INPUT_NAMES[input]
}

const isOfPart = (input: InputCode): input is `strength.${LinkCode}` => input.startsWith('strength.')

/** A situation, as it stands within a sentence. */
export const CHANCE_CASE_NAMES: Readonly<Record<ChanceCase | 'atRest', string>> = {
  dry: 'dry',
  watered: 'just watered',
  flooded: 'with water standing in it',
  bump: 'bumped and let swing',
  atRest: 'hanging quietly, dry or wet',
}

export const LEFT_OUT_REASONS: Readonly<Record<LeftOutReason, string>> = {
  notKnown: 'its strength is not known well enough',
  refused: 'the check refuses it, whatever it may bear, so mend that first',
  farStronger: 'it bears far more than any pot',
  fit: 'it is one length against another, and measuring tells more than chance',
}

export const OUTSIDE_TEXTS: Readonly<Record<OutsideChance, string>> = {
  missedTimber: 'A screw that missed the joist or stud, or a plug in a crumbling wall.',
  misTied: 'A knot tied wrongly or not pulled tight, a strand forgotten, a leg left out.',
  swungOn: 'Somebody who swings on it, and any load that was not meant to hang there.',
  unmeasured: 'Measures that were assumed or misread: only what is written in the hanger file is varied, and only about what it says.',
  unlisted: 'Gusts, tugs, drops and parted strands: the check itself looks at those.',
}
