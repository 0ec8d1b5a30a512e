import { MASS_BY_DIAMETER, UNMEASURED_DIAMETER } from '../catalogue/cords'
import type { Answers } from '../hanger/fields'
import { massRange, type MassRange } from './states'

/**
 * Mass per metre of the cord, kg/m: weighed, or by its diameter, or as of a usual cord where nothing is known.
 * @example cordMassPerMetre({ 'cord.linearDensity': null, 'cord.diameter': 0.004 }).likely // 0.0086
 */
export function cordMassPerMetre(answers: Pick<Answers, 'cord.linearDensity' | 'cord.diameter'>): MassRange {
  const weighed = answers['cord.linearDensity']
  if (weighed !== null) return massRange(weighed, weighed, weighed)
  const square = (answers['cord.diameter'] ?? UNMEASURED_DIAMETER.value) ** 2
  return massRange(MASS_BY_DIAMETER.low * square, MASS_BY_DIAMETER.likely * square, MASS_BY_DIAMETER.high * square)
}
