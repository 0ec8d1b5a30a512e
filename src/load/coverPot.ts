import { COVER_MATERIAL, COVER_OVER_POT, COVER_WATER } from '../catalogue/vessels'
import { WATER_DENSITY } from '../catalogue/pottingMixes'
import type { Answers } from '../hanger/fields'
import { metres } from '../quantity/si'
import type { Component } from './component'
import { potOutline } from './potOutline'
import { sectionReach } from './section'
import { solidBetween } from './solid'
import { addMass, massRange, NO_MASS, type MassRange, type State } from './states'
import { soakedInto, vesselArea, vesselMass, type Vessel } from './vesselMass'

/** Inside measures of the cover pot, m: upright and round, as wide and as high as the pot asks where they were not taken. */
export function coverPotOf(answers: Answers): Vessel {
  const widest = Math.max(...potOutline(answers, 0).flatMap(({ from, to, at }) => [sectionReach(at(from)), sectionReach(at(to))]))
  return { width: answers['cover.inside'] ?? 2 * COVER_OVER_POT.value * widest, depth: answers['cover.height'] ?? answers['pot.height'], round: true, longer: 0 }
}

/** Room between pot and cover pot up to a height, as water, kg. */
function gapWater(answers: Answers, vessel: Vessel, height: number): number {
  const upTo = Math.min(height, vessel.depth, answers['pot.height'])
  return Math.max(0, vesselArea(vessel) * upTo - solidBetween(potOutline(answers, 0), 0, upTo).volume) * WATER_DENSITY.value
}

/** A cover pot that was not weighed may be of anything: as light as plastic, usually glazed, as heavy as that or as the pot within. */
function estimated(answers: Answers, vessel: Vessel): MassRange {
  const usual = vesselMass(vessel, COVER_MATERIAL.usual)
  return { low: vesselMass(vessel, COVER_MATERIAL.lightest).low, likely: usual.likely, high: Math.max(usual.high, vesselMass(vessel, answers['pot.material']).high) }
}

/** The cover pot with the water between it and the pot: none dry, up to two fingers just watered, up to the lower of the two rims where water stands. */
export function coverPot(answers: Answers, state: State): Component {
  const vessel = coverPotOf(answers)
  const weighed = answers['cover.mass']
  const dry = weighed === null ? estimated(answers, vessel) : massRange(weighed, weighed, weighed)
  const full = gapWater(answers, vessel, Infinity)
  const stands: MassRange = state === 'flooded' ? { low: full, likely: full, high: full } : { low: 0, likely: 0, high: gapWater(answers, vessel, COVER_WATER.value) }
  const water = state === 'dry' ? NO_MASS : addMass(soakedInto(dry, COVER_MATERIAL.usual), stands)
  return { part: 'coverPot', mass: addMass(dry, water), water, centre: metres(vessel.depth / 2), basis: weighed === null ? 'from memory' : 'your own' }
}
