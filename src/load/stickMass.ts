import { POT_MATERIALS } from '../catalogue/potMaterials'
import { hasStick } from '../hanger/arrangement'
import type { Answers } from '../hanger/fields'
import { addMass, NO_MASS, scaleMass, timesRange, type MassRange, type State } from './states'

type StickAnswers = Pick<Answers, 'make.arrangement' | 'make.top' | 'place.support' | 'stick.diameter' | 'stick.length' | 'stick.state' | 'place.exposure'>

/** Mass of the stick the legs hang from, kg, as solid wood, full of water where it is green or rain has soaked it; none without a stick. */
export function stickMass(answers: StickAnswers, state: State): MassRange {
  if (!hasStick(answers)) return NO_MASS
  const { density, uptake } = POT_MATERIALS.wood
  const dry = scaleMass(density, (Math.PI / 4) * answers['stick.diameter'] ** 2 * answers['stick.length'])
  const wet = answers['stick.state'] === 'green' || (answers['place.exposure'] === 'outdoors' && state !== 'dry')
  return wet ? addMass(dry, timesRange(dry, uptake)) : dry
}
