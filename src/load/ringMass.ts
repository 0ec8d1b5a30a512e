import { STEEL_DENSITY } from '../catalogue/metals'
import { POT_MATERIALS } from '../catalogue/potMaterials'
import { hangsFrom } from '../hanger/arrangement'
import type { Answers } from '../hanger/fields'
import { massRange, NO_MASS, scaleMass, type MassRange } from './states'

type RingAnswers = Pick<Answers, 'make.arrangement' | 'make.top' | 'ring.metal' | 'ring.wire' | 'ring.inside'>

/** Mass of the ring the legs hang from, kg: of steel wire, whatever its metal, or of wood with a bar as high as it is thick; none without a ring. */
export function ringMass(answers: RingAnswers): MassRange {
  if (hangsFrom(answers) !== 'ring') return NO_MASS
  const bar = answers['ring.wire']
  const round = Math.PI * (answers['ring.inside'] + bar)
  if (answers['ring.metal'] === 'wood') return scaleMass(POT_MATERIALS.wood.density, bar * bar * round)
  const mass = STEEL_DENSITY.value * (Math.PI / 4) * bar * bar * round
  return massRange(mass, mass, mass)
}
