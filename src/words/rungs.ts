import type { RungCode, RungGap } from '../check/cordRungs'
import { byUnits } from './writing'

/** Ways to know what a cord bears, best first. */
export const RUNG_NAMES: Readonly<Record<RungCode, string>> = {
  pullTests: 'your own pull tests',
  rated: 'breaking force stated by its maker',
  ropeTable: 'published table of its rope',
  get weighed() { return byUnits('grams per metre', 'ounces per yard') },
  diameter: 'diameter alone',
}

/** Why a way is not open, or what would open it. */
export const RUNG_GAP_TEXTS: Readonly<Record<RungGap, string>> = {
  noTests: 'No pull test is written down yet: three show how much the cord varies, five are worth making.',
  notRated: 'Only where the maker of the cord states one.',
  notRope: 'Only for three-strand rope sold by a standard: craft cord has no such table.',
  noTable: 'No published table was found for rope of this fibre.',
  noDiameter: 'Measure the diameter: ten turns side by side round a pencil, divided by ten.',
  thinnerThanTable: 'It is thinner than any rope of the table.',
  lighterThanTable: 'It is lighter than the rope of the table, so it is not that rope.',
  get notWeighed() { return byUnits('Weigh ten metres of it.', 'Weigh ten yards of it.') },
  pieceTooLight: 'The piece was too light for the scale to tell: weigh a longer one.',
  tooHeavy: 'No cord of this diameter can be so heavy: one of the two measures is wrong.',
  noTenacity: 'The fibre is not known, or nobody has published what it bears for its weight.',
}
