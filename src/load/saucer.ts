import { SAUCER_DEPTH, SAUCER_OVER_RIM } from '../catalogue/vessels'
import { WATER_DENSITY } from '../catalogue/pottingMixes'
import type { Answers } from '../hanger/fields'
import { metres } from '../quantity/si'
import type { Component } from './component'
import { potOutline } from './potOutline'
import { solidBetween } from './solid'
import { addMass, massRange, NO_MASS, type MassRange, type State } from './states'
import { soakedInto, vesselArea, vesselMass, type Vessel } from './vesselMass'

type SaucerAnswers = Pick<Answers, 'saucer.width' | 'saucer.depth' | 'saucer.mass'>

/** Whether a saucer hangs with the pot. */
export const hasSaucer = (answers: SaucerAnswers): boolean => answers['saucer.width'] !== null || answers['saucer.mass'] !== null

/** Inside measures of the saucer, m, the usual ones where they were not taken. */
export function saucerOf(answers: Answers): Vessel {
  const round = answers['pot.shape'] !== 'square' && answers['pot.shape'] !== 'trough'
  const longer = answers['pot.shape'] === 'trough' ? Math.max(0, answers['pot.length'] - answers['pot.rim']) : 0
  return { width: answers['saucer.width'] ?? SAUCER_OVER_RIM.value * answers['pot.rim'], depth: answers['saucer.depth'] ?? SAUCER_DEPTH.likely, round, longer }
}

/** The saucer that hangs under the pot, with its water: none dry, up to full just watered, full where water stands; the pot takes room from it, but may stand on feet. */
export function saucer(answers: Answers, state: State): Component {
  const vessel = saucerOf(answers)
  const material = answers['pot.material']
  const weighed = answers['saucer.mass']
  const dry = weighed === null ? vesselMass(vessel, material) : massRange(weighed, weighed, weighed)
  const deepest = answers['saucer.depth'] ?? SAUCER_DEPTH.high
  const full = vesselArea(vessel) * deepest * WATER_DENSITY.value
  const round = Math.max(0, vesselArea(vessel) * vessel.depth - solidBetween(potOutline(answers, 0), 0, vessel.depth).volume) * WATER_DENSITY.value
  const stands: MassRange = state === 'flooded' ? { low: round, likely: round, high: full } : { low: 0, likely: round / 2, high: full }
  const water = state === 'dry' ? NO_MASS : addMass(soakedInto(dry, material), stands)
  return { part: 'saucer', mass: addMass(dry, water), water, centre: metres(vessel.depth / 2), basis: weighed === null ? 'from memory' : 'your own' }
}
