import type { Answers } from '../../../hanger/fields'
import { metres, pascals } from '../../../quantity/si'
import { eulerLoad } from '../../../statics/strut'
import { weightAtStress } from '../../../statics/thrustedStick'
import type { Term } from '../../linkResult'
import type { StickBeam } from '../../stickBeam'
import { stickHollow, stickSection } from '../../stickSection'
import { stickWood } from '../../stickWood'
import { entering, fromCatalogue, worked } from '../../term'

/** The stress a stick is judged by, Pa, and the lines it follows from. */
export interface JudgedStress {
  readonly stress: number
  readonly formula: string
  readonly source: string
  readonly terms: readonly Term[]
}

/** The weight at which the stick reaches a stress, N, with its lines; symbol R. */
export interface StickSum {
  readonly capacity: number
  readonly terms: readonly Term[]
}

function sectionTerms(answers: Answers): readonly Term[] {
  const section = stickSection(answers)
  const hollow = stickHollow(answers)
  const thick = entering('stickDiameter', 'd_s', answers['stick.diameter'], 'm', 'your own', 'thickness of the stick')
  if (hollow === 0) {
    return [
      thick,
      worked('stickModulus', 'Z', section.modulus, 'm3', 'pi * d_s^3 / 32', 'section modulus of a round stick'),
      worked('stickArea', 'A_s', section.area, 'm2', 'pi * d_s^2 / 4', 'its area'),
      worked('stickInertia', 'I_s', section.inertia, 'm4', 'pi * d_s^4 / 64', 'its second moment of area'),
    ]
  }
  return [
    thick,
    entering('stickHollow', 'd_i', hollow, 'm', answers['stick.hollow'] === null ? 'common practice' : 'your own', 'hollow of the culm'),
    worked('stickModulus', 'Z', section.modulus, 'm3', 'pi * (d_s^4 - d_i^4) / (32 * d_s)', 'section modulus of a tube'),
    worked('stickArea', 'A_s', section.area, 'm2', 'pi * (d_s^2 - d_i^2) / 4', 'its area'),
    worked('stickInertia', 'I_s', section.inertia, 'm4', 'pi * (d_s^4 - d_i^4) / 64', 'its second moment of area'),
  ]
}

/** All that hangs on the stick, where more does than this hanger. */
const carriedTerms = ({ carried }: StickBeam): readonly Term[] =>
  (carried === 1 ? [] : [entering('rowShare', 'k_n', carried, '1', 'computed', 'all that hangs on the stick over this hanger’s weight')])

const MOMENT_SOURCES: Readonly<Record<Answers['make.arrangement'], string>> = {
  legs: 'largest bending over the weight: lark’s heads in a row, any one leg bearing as much as a counted leg',
  tiers: 'largest bending over the weight: lark’s heads in a row, any one leg bearing as much as a counted leg',
  panel: 'largest bending over the weight: strands straight above their places at the panel’s edge, shared unevenly',
  row: 'largest bending over the weight, of the whole row, this hanger in any place of it',
}
const momentSource = (answers: Answers): string => MOMENT_SOURCES[answers['make.arrangement']]

/** How the top cord thrusts along the stick, with the symbol k_H; none on two hooks. */
export function thrustTerms(answers: Answers, beam: StickBeam): readonly Term[] {
  if (beam.thrust === 0) return []
  return [
    entering('stickSpan', 's_s', answers['stick.span'], 'm', 'your own', 'between the places where the top cord is tied'),
    entering('topCordLength', 'L_c', answers['stick.topCord'], 'm', 'your own', 'top cord from one end of the stick over the hook to the other'),
    worked('hookHeight', 'h_c', beam.height, 'm', 'sqrt(L_c^2 - s_s^2) / 2', 'height of the hook above the stick'),
    entering('loadOffset', 'e_s', beam.offset, 'm', 'computed', beam.carried === 1 ? 'how far unequal legs shift the load from the middle' : 'how far the middle of the row’s load lies from the middle of the stick'),
    ...carriedTerms(beam),
    worked('thrustShare', 'k_H', beam.thrust, '1', `${beam.carried === 1 ? '' : 'k_n * '}(s_s + 2 * e_s) / (4 * h_c)`, 'thrust along the stick over the weight: equilibrium of the V'),
  ]
}

/** The weight that brings the outer fibres to a stress, the thrust bending the stick further. */
export function bendingCapacity(answers: Answers, beam: StickBeam, { stress, formula, source, terms }: JudgedStress): StickSum {
  const section = stickSection(answers)
  const { stiffness } = stickWood(answers)
  const bows = eulerLoad(pascals(stiffness.value), section.inertia, metres(answers['stick.span']))
  const capacity = weightAtStress(pascals(stress), { ...beam, modulus: section.modulus, area: section.area, bows })
  const lines = [
    ...terms,
    worked('bendingStress', 'f_b', stress, 'Pa', formula, source),
    ...sectionTerms(answers),
    entering('momentShare', 'k_M', beam.moment, 'm', 'computed', momentSource(answers)),
  ]
  if (beam.thrust === 0) return { capacity, terms: [...lines, worked('capacity', 'R', capacity, 'N', 'f_b * Z / k_M', 'bending of a straight stick')] }
  return {
    capacity,
    terms: [
      ...lines,
      ...thrustTerms(answers, beam),
      fromCatalogue('stickStiffness', 'E_s', stiffness),
      worked('bowingThrust', 'P_e', bows, 'N', 'pi^2 * E_s * I_s / s_s^2', 'thrust that bows the stick out of line (Euler)'),
      worked('stressShare', 'c_s', beam.moment / section.modulus + beam.thrust / section.area + (stress * beam.thrust) / bows, 'Pa/N', 'k_M / Z + k_H / A_s + f_b * k_H / P_e', 'bending, thrust and bowing for each newton'),
      worked('capacity', 'R', capacity, 'N', '2 * f_b / (c_s + sqrt(c_s^2 - 4 * f_b * k_H^2 / (P_e * A_s)))', 'the weight at which f_b = W k_M / (Z (1 - W k_H / P_e)) + W k_H / A_s'),
    ],
  }
}

/** The weight that brings the stick to a shear stress along its grain. */
export function shearCapacity(answers: Answers, beam: StickBeam, { stress, formula, source, terms }: JudgedStress): StickSum {
  const section = stickSection(answers)
  const capacity = (stress * section.area) / (section.shearPeak * beam.shear)
  return {
    capacity,
    terms: [
      ...terms,
      worked('shearStress', 'f_v', stress, 'Pa', formula, source),
      ...sectionTerms(answers),
      entering('shearPeak', 'k_p', section.shearPeak, '1', 'computed', 'peak of the shear stress over its mean (Jourawski)'),
      entering('shearPart', 'k_V', beam.shear, '1', 'computed', 'largest shear over the weight'),
      worked('capacity', 'R', capacity, 'N', 'f_v * A_s / (k_p * k_V)', 'shear along the grain'),
    ],
  }
}
