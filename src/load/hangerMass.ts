import { value, type Value } from '../catalogue/basis'
import type { Answers } from '../hanger/fields'
import { cordMassPerMetre } from './cordMass'
import type { MassRange } from './states'

/** Cord in a knotted hanger per length of plain strand: fillers once, working cords about four times. */
export const KNOT_TAKE_UP: Value = value(2.5, '1', 'common practice', 'half the cords knot round the other half and take up about four times their length')
const STEEL: Value = value(7852, 'kg/m3', 'published', 'EN 1991-1-1:2002, table A.4: steel 77.0 kN/m3')

/** Mass of the hanger itself, kg: all its strands from end to end with their knots, and a metal ring. */
export function hangerMass(answers: Answers): MassRange {
  const takeUp = answers['make.build'] === 'plain' ? 1 : KNOT_TAKE_UP.value
  const metresOfCord = answers['make.legs'] * answers['make.strands'] * answers['make.totalLength'] * takeUp
  const perMetre = cordMassPerMetre(answers)
  const wire = answers['ring.wire']
  const ring = answers['make.top'] === 'ring' ? STEEL.value * (Math.PI / 4) * wire * wire * Math.PI * (answers['ring.inside'] + wire) : 0
  return { low: perMetre.low * metresOfCord + ring, likely: perMetre.likely * metresOfCord + ring, high: perMetre.high * metresOfCord + ring }
}
