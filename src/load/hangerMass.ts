import { KNOT_TAKE_UP } from '../catalogue/knots'
import { STEEL_DENSITY } from '../catalogue/metals'
import type { Answers } from '../hanger/fields'
import { cordMassPerMetre } from './cordMass'
import type { MassRange } from './states'

/** Mass of the hanger itself, kg: all its strands from end to end with their knots, and the ring, a wooden one as heavy as steel. */
export function hangerMass(answers: Answers): MassRange {
  const takeUp = answers['make.build'] === 'plain' ? 1 : KNOT_TAKE_UP.value
  const metresOfCord = answers['make.legs'] * answers['make.strands'] * answers['make.totalLength'] * takeUp
  const perMetre = cordMassPerMetre(answers)
  const wire = answers['ring.wire']
  const ring = answers['make.top'] === 'ring' ? STEEL_DENSITY.value * (Math.PI / 4) * wire * wire * Math.PI * (answers['ring.inside'] + wire) : 0
  return { low: perMetre.low * metresOfCord + ring, likely: perMetre.likely * metresOfCord + ring, high: perMetre.high * metresOfCord + ring }
}
