import type { Basis, Grade } from '../catalogue/basis'
import { BREAK_BY_DIAMETER, DEFAULT_STIFFNESS, DENSEST_CORD, FIBRE_PROPERTIES } from '../catalogue/cords'
import type { Answers } from '../hanger/fields'
import { cordMassPerMetre } from '../load/cordMass'
import type { Finding } from './finding'
import type { Capacity, Term } from './linkResult'
import { entering, fromCatalogue, worked } from './term'

/** Breaking force of one new, dry, unknotted strand, with the way it is known; null if it is not. */
export interface CordStrength {
  readonly capacity: Capacity | null
  readonly grade: Grade
  readonly findings: readonly Finding[]
  readonly terms: readonly Term[]
}

const newton = (value: number, basis: Basis, source: string): Capacity => ({ value, unit: 'N', basis, source })

/**
 * Breaking force of one strand, N, best basis first: rated; grams per metre times tenacity; diameter
 * only (CORD_BY_DIAMETER; CORD_TOO_HEAVY where the grams per metre cannot be); else none (CORD_UNKNOWN).
 */
export function cordStrength(answers: Answers): CordStrength {
  const rated = answers['cord.rated']
  if (rated !== null) return { capacity: newton(rated, 'your own', 'rated breaking force of the cord'), grade: 'rated', findings: [], terms: [] }
  const perMetre = answers['cord.linearDensity']
  const diameter = answers['cord.diameter']
  const tenacities = FIBRE_PROPERTIES[answers['cord.fibre']].tenacity
  const most = diameter === null ? Infinity : (DENSEST_CORD.value * Math.PI * diameter * diameter) / 4
  const tooHeavy = perMetre !== null && perMetre > most
  if (perMetre !== null && tenacities && !tooHeavy) {
    const make = answers['cord.make']
    const tenacity = make === 'twisted' || make === 'braided' ? tenacities.tight : tenacities.loose
    const force = perMetre * tenacity.value
    return {
      capacity: newton(force, 'computed', `grams per metre times tenacity: ${tenacity.source}`),
      grade: 'weighed',
      findings: [],
      terms: [
        entering('linearDensity', 'm_cord', perMetre, 'kg/m', 'your own', 'weighed length of cord'),
        fromCatalogue('tenacity', 'c_cord', tenacity),
        worked('capacity', 'R', force, 'N', 'm_cord * c_cord', 'grams per metre times tenacity'),
      ],
    }
  }
  if (diameter !== null) {
    const force = BREAK_BY_DIAMETER.value * diameter * diameter
    return {
      capacity: newton(force, BREAK_BY_DIAMETER.basis, BREAK_BY_DIAMETER.source),
      grade: 'diameter',
      findings: tooHeavy ? [{ code: 'CORD_TOO_HEAVY', perMetre, most }] : [{ code: 'CORD_BY_DIAMETER', linearDensityKnown: perMetre !== null }],
      terms: [
        entering('diameter', 'd', diameter, 'm', 'your own', 'measured diameter of the cord'),
        fromCatalogue('breakByDiameter', 'c_d', BREAK_BY_DIAMETER),
        worked('capacity', 'R', force, 'N', 'c_d * d^2', 'breaking force by diameter alone'),
      ],
    }
  }
  return { capacity: null, grade: 'diameter', findings: [{ code: 'CORD_UNKNOWN' }], terms: [] }
}

/**
 * Secant stiffness EA of one strand, N: likely breaking force over strain at break. Not from the
 * floor of the diameter route: a low strength is safe, a low stiffness is not. A 4 mm cotton cord
 * where nothing is known.
 */
export function strandStiffness(answers: Answers): number {
  const { tenacity, strainAtBreak } = FIBRE_PROPERTIES[answers['cord.fibre']]
  const { capacity, grade } = cordStrength(answers)
  if (capacity === null) return DEFAULT_STIFFNESS.value
  if (grade !== 'diameter') return capacity.value / strainAtBreak.value
  const perTex = (tenacity ?? FIBRE_PROPERTIES.cotton.tenacity)?.tight.value ?? 0
  return Math.max(capacity.value, cordMassPerMetre(answers).likely * perTex) / strainAtBreak.value
}
