import type { Basis } from '../catalogue/basis'
import { PLANT_BY_SIZE, PLANT_GROWTH, PLANT_SHARE_KEPT, PLANT_SHARE_OF_MIX, SUCCULENT_OVER_LEAFY } from '../catalogue/plants'
import type { Answers } from '../hanger/fields'
import { massRange, timesRange, type MassRange } from './states'

type PlantAnswers = Pick<Answers, 'plant.mass' | 'plant.size' | 'plant.kind' | 'plant.growth' | 'weighed.mass'>

/**
 * Mass of plant and thick roots, kg: weighed, by its size class and kind, or in proportion to the
 * watered mix. A plant left to grow is counted with what it gains; one in proportion to its pot fills
 * it already, and its high value leaves that room. Beside a weighing of the whole it is what it is today.
 */
export function plantMass(answers: PlantAnswers, wateredMix: MassRange): { readonly mass: MassRange; readonly basis: Basis } {
  const weighed = answers['plant.mass']
  const size = answers['plant.size']
  const grows = answers['plant.growth'] === 'grows'
  const gains = grows && answers['weighed.mass'] === null
  const grown = (today: MassRange): MassRange => (gains ? timesRange(today, PLANT_GROWTH) : today)
  if (weighed !== null) return { mass: grown(massRange(weighed, weighed, weighed)), basis: gains ? PLANT_GROWTH.basis : 'your own' }
  if (size === 'byPot') return { mass: timesRange(wateredMix, grows ? PLANT_SHARE_OF_MIX : PLANT_SHARE_KEPT), basis: PLANT_SHARE_OF_MIX.basis }
  const leafy = PLANT_BY_SIZE[size]
  return { mass: grown(answers['plant.kind'] === 'succulent' ? timesRange(leafy, SUCCULENT_OVER_LEAFY) : leafy), basis: leafy.basis }
}
