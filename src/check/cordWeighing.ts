import { LENGTH_DOUBT, SCALE_STEP } from '../catalogue/weighing'
import { cordMassPerMetre } from '../load/cordMass'
import type { MassRange } from '../load/states'
import type { Term } from './linkResult'
import { entering, fromCatalogue, worked } from './term'

/** A cord's mass per metre as its maker weighed it, kg/m, with the lines that show its low end as `m_cord`. */
export interface CordWeighing {
  readonly perMetre: MassRange
  readonly terms: readonly Term[]
}

type Weighed = Parameters<typeof cordMassPerMetre>[0]

/**
 * Mass per metre from what was typed, taken as it stands, or from a piece of measured length: the scale
 * may be off by a step, the length by a hundredth. Null where neither is known, or where the piece weighs
 * no more than a step of the scale.
 * @example Number(cordWeighing({ 'cord.diameter': null, 'cord.linearDensity': null, 'cord.weighedMass': 0.048, 'cord.weighedLength': 10 }).perMetre.low.toFixed(6)) // 0.004653
 */
export function cordWeighing(answers: Weighed): CordWeighing | null {
  const typed = answers['cord.linearDensity']
  if (typed !== null) return { perMetre: cordMassPerMetre(answers), terms: [entering('linearDensity', 'm_cord', typed, 'kg/m', 'your own', 'weighed length of cord')] }
  const mass = answers['cord.weighedMass']
  const length = answers['cord.weighedLength']
  if (mass === null || length === null || mass <= SCALE_STEP.value) return null
  const perMetre = cordMassPerMetre(answers)
  return {
    perMetre,
    terms: [
      entering('weighedPiece', 'm_p', mass, 'kg', 'your own', 'piece of cord on the scale'),
      fromCatalogue('scaleStep', 'm_s', SCALE_STEP),
      entering('weighedLength', 'l_p', length, 'm', 'your own', 'its length'),
      fromCatalogue('lengthDoubt', 'e_l', LENGTH_DOUBT),
      worked('linearDensity', 'm_cord', perMetre.low, 'kg/m', '(m_p - m_s) / (l_p * (1 + e_l))', 'low end of what was weighed'),
    ],
  }
}
