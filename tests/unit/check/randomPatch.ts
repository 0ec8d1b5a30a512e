import type { Patch } from '#core'
import { oneOf, seededRandom, wholeBetween } from '../quantity/seededRandom'

/** A hanger such as could be made, every essential answered; the same for the same seed. */
export function randomPatch(seed: number): Patch {
  const random = seededRandom(seed)
  const between = (from: number, to: number): number => wholeBetween(random, from, to)
  const rim = between(120, 310)
  const share = (from: number, to: number): string => `${Math.round((rim * between(from, to)) / 100)} mm`
  const diameter = between(20, 80) / 10
  const maybe = (patch: Patch, percent: number): Patch => (between(1, 100) <= percent ? patch : {})
  const wire = between(3, 9)
  return {
    'pot.rim': `${rim} mm`, 'pot.height': share(60, 115), 'pot.base': share(55, 98), 'pot.fillGap': `${between(0, 25)} mm`,
    'pot.material': oneOf(random, ['terracotta', 'stoneware', 'plastic', 'concrete', 'glass', 'wood']),
    'pot.drainage': oneOf(random, ['hole', 'hole', 'none', 'unknown']), 'mix.kind': oneOf(random, ['soilless', 'peat', 'cactus', 'gardenSoil', 'unknown']),
    ...maybe({ 'weighed.mass': `${between(8, 160) / 10} kg`, 'weighed.state': oneOf(random, ['dry', 'watered', 'flooded']) }, 60),
    'plant.height': `${between(0, 60)} cm`, 'seat.offset': `${between(0, 15)} mm`,
    'cord.fibre': oneOf(random, ['cotton', 'cotton', 'jute', 'hemp', 'linen', 'polyester', 'polypropylene', 'nylon', 'unknown']), 'cord.make': oneOf(random, ['loose', 'twisted', 'braided']),
    ...maybe({ 'cord.diameter': `${diameter} mm` }, 85), ...maybe({ 'cord.linearDensity': `${(between(35, 65) / 100) * diameter * diameter} g/m` }, 75),
    'make.legs': String(between(3, 12)), 'make.strands': String(between(1, 12)), 'make.build': oneOf(random, ['plain', 'sinnet', 'alternating', 'spiral']),
    'make.joined': oneOf(random, ['no', 'no', 'yes']), 'make.top': oneOf(random, ['ring', 'bunched']), 'make.legLength': `${between(35, 110)} cm`, 'make.tolerance': `${between(0, 20)} mm`,
    'cradle.kind': oneOf(random, ['net', 'open']), 'cradle.first': share(35, 90), 'gathering.wraps': String(between(2, 22)),
    ...maybe({ 'testHang.mass': `${between(4, 40)} kg`, 'testHang.time': `${between(20, 40)} h`, 'testHang.slip': `${between(0, 4)} mm` }, 40),
    'ring.metal': oneOf(random, ['steel', 'brass', 'unknown', 'wood']), 'ring.wire': `${between(3, 8)} mm`, 'ring.inside': `${between(25, 70)} mm`, ...maybe({ 'ring.rated': `${between(10, 90)} kgf` }, 25),
    'hook.kind': oneOf(random, ['open', 'latched', 'closed']), 'hook.metal': oneOf(random, ['steel', 'brass', 'unknown']), 'hook.wire': `${wire} mm`, 'hook.projection': `${between(0, 60)} mm`,
    ...maybe({ 'hook.rated': `${between(8, 80)} kgf` }, 40), 'place.substrate': oneOf(random, ['timber', 'timber', 'masonry', 'plasterboard', 'unknown']),
    ...maybe({ 'fixing.rated': `${between(8, 80)} kgf` }, 25), 'fixing.diameter': `${wire} mm`, 'fixing.penetration': `${between(10, 70)} mm`, ...maybe({ 'fixing.proof': `${between(2, 30)} kg` }, 50),
    'place.beneath': oneOf(random, ['nothing', 'furniture', 'wayThrough', 'people', 'public']), 'place.exposure': oneOf(random, ['indoors', 'indoors', 'steamy', 'outdoors']),
    'place.watering': oneOf(random, ['weekly', 'daily']), 'place.life': `${between(1, 9)} years`,
    ...maybe({ 'pot.shape': oneOf(random, ['cylinder', 'bowl', 'bellied', 'square', 'trough']), 'pot.belly': `${between(320, 400)} mm` }, 40),
    ...maybe({ 'layer.depth': `${between(5, 50)} mm`, 'topping.depth': `${between(0, 30)} mm` }, 25), ...maybe({ 'reservoir.volume': `${between(2, 15) / 10} l` }, 10),
    ...maybe({ 'saucer.width': `${rim + between(-60, 30)} mm` }, 15), ...maybe({ 'cover.inside': `${rim + between(5, 70)} mm` }, 10),
    ...randomPlace(seed, wire),
  }
}

/** The place of every third hanger, of its own chance: walls, brackets, beams, other fixings and what they go into. */
function randomPlace(seed: number, wire: number): Patch {
  if (seed % 3 !== 0) return {}
  const random = seededRandom(seed + 10_000)
  const between = (from: number, to: number): number => wholeBetween(random, from, to)
  const maybe = (patch: Patch, percent: number): Patch => (between(1, 100) <= percent ? patch : {})
  return {
    'place.support': oneOf(random, ['wallHook', 'bracket', 'swingArm', 'overBeam', 'ceilingHook']),
    'place.substrate': oneOf(random, ['timber', 'timber', 'solidBrick', 'perforatedBrick', 'denseBlock', 'aeratedBlock', 'concrete', 'plasterboard', 'plasterboardOnSteelStud', 'steelBeam', 'rail', 'branch', 'curtainRod', 'unknown']),
    'place.timber': oneOf(random, ['softwood', 'hardwood', 'unknown', 'douglasFirLarch', 'redOak']), 'place.known': oneOf(random, ['seen', 'told']),
    'fixing.kind': oneOf(random, ['screwHook', 'woodScrew', 'lagScrew', 'nail', 'plug', 'boardFixing', 'metalAnchor', 'unknown']), 'fixing.count': String(between(1, 4)), 'fixing.between': `${between(0, 15)} mm`,
    ...maybe({ 'fixing.grain': 'end' }, 20), 'fixing.plugHole': `${between(5, 10)} mm`, 'fixing.ratedFor': oneOf(random, ['pullOut', 'shear', 'unknown']), ...maybe({ 'fixing.ratedShear': `${between(20, 120)} kgf` }, 40),
    'hook.projection': `${between(0, 200)} mm`, 'hook.wire': `${wire + between(0, 5)} mm`, ...maybe({ 'rail.others': `${between(1, 60) / 10} kg` }, 30),
    'bracket.reach': `${between(60, 400)} mm`, 'bracket.screws': String(between(1, 4)), 'bracket.top': `${between(40, 200)} mm`, 'bracket.bottom': `${between(5, 30)} mm`,
    ...maybe({ 'bracket.rated': `${between(5, 60)} kgf` }, 25), ...maybe({ 'bracket.thick': `${between(4, 20)} mm`, 'bracket.high': `${between(8, 40)} mm` }, 70), 'bracket.metal': oneOf(random, ['steel', 'brass', 'unknown']),
  }
}
