import { hangsFrom } from '../../hanger/arrangement'
import type { Answers } from '../../hanger/fields'
import { pottedMass } from '../../load/pottedMass'
import { hangerGeometry, ringHeight } from '../geometry'
import { patched } from './patched'

type Lower = 'second' | 'third'
const LOWER: readonly Lower[] = ['second', 'third']

/** Share of a pot's height that layers may take where they are told for another pot. */
const MOST_FILLING = 0.4

/**
 * What is told of a pot under another, as the answers of a hanger with that pot alone (`tiers.count` 1): its own
 * size, weight, strands and cradle; whatever else is that of the first pot, what belongs to its size in proportion.
 * Pot 1 itself keeps its answers, without the fringe, which hangs from the lowest knot.
 */
export function answersOfTier(answers: Answers, tier: number): Answers {
  const lowest = tier === answers['tiers.count']
  const own = answers['tiers.how'] === 'ownCords'
  if (tier <= 1) return lowest || own ? answers : withoutFringe(answers)
  const key = LOWER[tier - 2] ?? 'third'
  const sized = inProportion(answers, key)
  const fringe = lowest || own ? answers['make.fringe'] : 0
  const cords = patched(sized, { 'make.fringe': fringe, 'make.legLength': null, 'make.cords': null, 'make.top': own ? answers['make.top'] : 'bunched' })
  const weighed = weighedAs(answers, cords, key)
  const knot = hangerGeometry(weighed).knot
  const ring = hangsFrom(weighed) === 'ring' ? ringHeight(weighed) : 0
  return patched(weighed, { 'make.totalLength': strandOf(answers, tier) + ring + knot + fringe })
}

/** Length of a lower pot's strands: from the knot above it, or with cords of its own from the top, each longer than those above it. */
function strandOf(answers: Answers, tier: number): number {
  const lower = LOWER.slice(0, tier - 1)
  if (answers['tiers.how'] !== 'ownCords') return answers[`${lower.at(-1) ?? 'second'}.strand`]
  return lower.reduce<number>((sum, key) => sum + answers[`${key}.strand`], hangerGeometry(answers).strand)
}

/** A hanger of the same strands that ends at its gathering knot. */
const withoutFringe = (answers: Answers): Answers =>
  patched(answers, { 'make.totalLength': answers['make.totalLength'] - (answers['make.legLength'] === null ? answers['make.fringe'] : 0), 'make.fringe': 0 })

/** The first pot's answers for a pot of another size: lengths by its rim, heights by its height, masses by its volume. */
function inProportion(answers: Answers, key: Lower): Answers {
  const [rim, height, base] = [answers[`${key}.rim`], answers[`${key}.height`], answers[`${key}.base`]]
  const [wide, high] = [rim / answers['pot.rim'], height / answers['pot.height']]
  const volume = wide * wide * high
  const of = (value: number | null, share: number): number | null => (value === null ? null : value * share)
  const filling = (depth: number): number => Math.min(depth, MOST_FILLING * height)
  const strands = answers[`${key}.strands`]
  const fillers = answers['make.fillers']
  return patched(answers, {
    'tiers.count': 1,
    'pot.rim': rim, 'pot.height': height, 'pot.base': answers['pot.shape'] === 'cylinder' ? rim : base,
    'pot.length': answers['pot.length'] * wide,
    'pot.belly': Math.max(answers['pot.belly'] * wide, rim, base), 'pot.bellyHeight': answers['pot.bellyHeight'] * high,
    'pot.emptyMass': of(answers['pot.emptyMass'], volume),
    'pot.fillGap': filling(answers['pot.fillGap']), 'layer.depth': filling(answers['layer.depth']), 'topping.depth': filling(answers['topping.depth']),
    'saucer.width': of(answers['saucer.width'], wide), 'saucer.mass': of(answers['saucer.mass'], wide * wide),
    'reservoir.volume': of(answers['reservoir.volume'], volume),
    'cover.inside': of(answers['cover.inside'], wide), 'cover.height': of(answers['cover.height'], high), 'cover.mass': of(answers['cover.mass'], volume),
    'plant.mass': of(answers['plant.mass'], volume),
    'plant.height': answers['plant.height'] * wide, 'plant.width': answers['plant.width'] * wide, 'plant.trail': answers['plant.trail'] * wide,
    'seat.offset': answers['seat.offset'] * wide,
    'cradle.first': answers[`${key}.first`],
    'make.strands': strands,
    'make.fillers': fillers === null ? null : Math.min(fillers, strands),
    'weighed.mass': answers[`${key}.mass`], 'weighed.state': answers[`${key}.state`], 'weighed.tare': null,
  })
}

/**
 * A lower pot that was not weighed, under one that was: as its size and filling make it, or as much as the
 * first for its volume, whichever is heavier.
 */
function weighedAs(answers: Answers, lower: Answers, key: Lower): Answers {
  const first = answers['weighed.mass']
  if (first === null || answers[`${key}.mass`] !== null) return lower
  const volume = (lower['pot.rim'] / answers['pot.rim']) ** 2 * (lower['pot.height'] / answers['pot.height'])
  const alike = patched(lower, { 'weighed.mass': (first - (answers['weighed.tare'] ?? 0)) * volume, 'weighed.state': answers['weighed.state'] })
  return pottedMass(alike).watered.mass.high > pottedMass(lower).watered.mass.high ? alike : lower
}
