import { KNOT_TAKE_UP } from '../catalogue/knots'
import { STEEL_DENSITY } from '../catalogue/metals'
import { CORD_DRIPPING, CORD_WETTED } from '../catalogue/soaking'
import type { Answers } from '../hanger/fields'
import { cordMassPerMetre } from './cordMass'
import { addMass, massRange, NO_MASS, scaleMass, timesRange, type MassRange, type State } from './states'

/** Length of all its cord, m: as cut, or all strands from end to end with their knots. */
function metresOfCord(answers: Answers): number {
  const cords = answers['make.cords']
  const cut = answers['make.cutLength']
  if (cords !== null && cut !== null) return cords * cut
  const takeUp = answers['make.build'] === 'plain' ? 1 : KNOT_TAKE_UP.value
  return answers['make.legs'] * answers['make.strands'] * answers['make.totalLength'] * takeUp
}

/** Water in its cords over their dry mass: none under a roof, for only the pot is watered; rain may or may not have soaked them outdoors. */
function soakedShare(answers: Answers, state: State): MassRange {
  if (answers['place.exposure'] !== 'outdoors' || state === 'dry') return NO_MASS
  return state === 'watered'
    ? { low: 0, likely: CORD_WETTED.likely, high: CORD_DRIPPING.high }
    : { low: CORD_WETTED.low, likely: CORD_DRIPPING.likely, high: CORD_DRIPPING.high }
}

/** Mass of the hanger itself in each state, kg: its cord as cut, or reckoned from its legs, and the ring, a wooden one as heavy as steel; with rain in it outdoors. */
export function hangerMass(answers: Answers): Readonly<Record<State, MassRange>> {
  const cord = scaleMass(cordMassPerMetre(answers), metresOfCord(answers))
  const wire = answers['ring.wire']
  const ring = answers['make.top'] === 'ring' ? STEEL_DENSITY.value * (Math.PI / 4) * wire * wire * Math.PI * (answers['ring.inside'] + wire) : 0
  const inState = (state: State): MassRange => addMass(addMass(cord, timesRange(cord, soakedShare(answers, state))), massRange(ring, ring, ring))
  return { dry: inState('dry'), watered: inState('watered'), flooded: inState('flooded') }
}
