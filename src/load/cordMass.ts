import { MASS_BY_DIAMETER, UNMEASURED_DIAMETER } from '../catalogue/cords'
import { LENGTH_DOUBT, SCALE_STEP } from '../catalogue/weighing'
import type { Answers } from '../hanger/fields'
import { massRange, scaleMass, type MassRange } from './states'

type CordAnswers = Pick<Answers, 'cord.linearDensity' | 'cord.diameter' | 'cord.weighedMass' | 'cord.weighedLength'>

/**
 * Mass per metre of the cord, kg/m: as stated, or a weighed length with what scale and tape may be out,
 * or by its diameter, or as of a usual cord where nothing is known.
 * @example cordMassPerMetre({ 'cord.linearDensity': null, 'cord.diameter': 0.004, 'cord.weighedMass': null, 'cord.weighedLength': null }).likely // 0.0086
 */
export function cordMassPerMetre(answers: CordAnswers): MassRange {
  const stated = answers['cord.linearDensity']
  if (stated !== null) return massRange(stated, stated, stated)
  const mass = answers['cord.weighedMass']
  const length = answers['cord.weighedLength']
  if (mass !== null && length !== null) {
    const at = (more: number): number => Math.max(0, mass + more * SCALE_STEP.value) / (length * (1 - more * LENGTH_DOUBT.value))
    return massRange(at(-1), at(0), at(1))
  }
  return scaleMass(MASS_BY_DIAMETER, (answers['cord.diameter'] ?? UNMEASURED_DIAMETER.value) ** 2)
}
