import { KNOT_TAKE_UP } from '../catalogue/knots'
import { CORD_DRIPPING, CORD_WETTED } from '../catalogue/soaking'
import { hasStick } from '../hanger/arrangement'
import type { Answers } from '../hanger/fields'
import { gatheredStrands } from '../hanger/strandCount'
import { cordMassPerMetre } from './cordMass'
import { ringMass } from './ringMass'
import { addMass, NO_MASS, scaleMass, timesRange, type MassRange, type State } from './states'
import { stickMass } from './stickMass'

/** Length of all its cord, m: as cut, or all strands from end to end with their knots; and of the top cord. */
function metresOfCord(answers: Answers): number {
  const cords = answers['make.cords']
  const cut = answers['make.cutLength']
  const top = hasStick(answers) && answers['stick.held'] === 'topCord' ? answers['stick.topCord'] * answers['stick.topStrands'] : 0
  if (cords !== null && cut !== null) return cords * cut + top
  if (answers['make.arrangement'] === 'panel') return panelCord(answers) + top
  const takeUp = answers['make.build'] === 'plain' ? 1 : KNOT_TAKE_UP.value
  return answers['make.legs'] * answers['make.strands'] * answers['make.totalLength'] * takeUp + top
}

/** Cords of a panel: all strands knotted down to its edge, and from there plain, half round the pot, and its fringe. */
function panelCord(answers: Answers): number {
  const strands = Math.max(2 * answers['panel.cords'], gatheredStrands(answers))
  const below = answers['panel.rise'] + answers['pot.height'] + answers['pot.rim'] + answers['make.fringe']
  return strands * (answers['panel.height'] * KNOT_TAKE_UP.value + below)
}

/** Water in its cords over their dry mass: none under a roof, for only the pot is watered; rain may or may not have soaked them outdoors. */
function soakedShare(answers: Answers, state: State): MassRange {
  if (answers['place.exposure'] !== 'outdoors' || state === 'dry') return NO_MASS
  return state === 'watered'
    ? { low: 0, likely: CORD_WETTED.likely, high: CORD_DRIPPING.high }
    : { low: CORD_WETTED.low, likely: CORD_DRIPPING.likely, high: CORD_DRIPPING.high }
}

/** Mass of the hanger itself in each state, kg: its cord as cut, or reckoned from its legs, and ring or stick; with rain in it outdoors. */
export function hangerMass(answers: Answers): Readonly<Record<State, MassRange>> {
  const cord = scaleMass(cordMassPerMetre(answers), metresOfCord(answers))
  const inState = (state: State): MassRange => {
    const soaked = timesRange(cord, soakedShare(answers, state))
    return addMass(addMass(cord, soaked), addMass(ringMass(answers), stickMass(answers, state)))
  }
  return { dry: inState('dry'), watered: inState('watered'), flooded: inState('flooded') }
}
