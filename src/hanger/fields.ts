import { EXPOSURES } from '../catalogue/ageing'
import { CORD_MAKES, FIBRES } from '../catalogue/cords'
import { DAY, YEAR } from '../catalogue/duration'
import { FILLING_KINDS } from '../catalogue/fillings'
import { PULLERS } from '../catalogue/jolts'
import { METALS } from '../catalogue/metals'
import { PLANT_GROWTHS, PLANT_KINDS, PLANT_SIZES } from '../catalogue/plants'
import { POT_MATERIALS_KINDS } from '../catalogue/potMaterials'
import { MIX_KINDS } from '../catalogue/pottingMixes'
import { REFUSED_SUPPORTS } from '../catalogue/refusals'
import { BENEATH } from '../catalogue/reserves'
import { SUBSTRATES } from '../catalogue/substrates'
import { TIMBERS } from '../catalogue/timber'
import { WINDS } from '../catalogue/wind'
import { WOODS, type WoodCode } from '../catalogue/woods'
import type { Field, FieldValue } from './field'
import { choice, day, ESSENTIAL, FIRST, is, LATER, litre, mm, open, quantity, SAFE, screw, TACIT, text, times } from './fieldMakers'

/** Shapes of pots: round ones by their outline, square ones and troughs by their sides. */
export const POT_SHAPES = ['taperedRound', 'cylinder', 'bowl', 'bellied', 'square', 'trough'] as const
export type PotShapeKind = (typeof POT_SHAPES)[number]

/** How pot and strands stand to each other: legs round one pot, a panel against a wall, pots under one another, several hangers on one stick. */
export const ARRANGEMENTS = ['legs', 'panel', 'tiers', 'row'] as const

/** What the hook, bracket or cord is put on. */
export const SUPPORTS = ['ceilingHook', 'wallHook', 'bracket', 'swingArm', 'overBeam'] as const
/** What it may be fixed into, and what it may not, told apart so that the refusal can say why. */
export const PLACE_SUBSTRATES = [...SUBSTRATES, ...REFUSED_SUPPORTS.filter((s) => s !== 'plasterboardCeiling' && s !== 'unknownSupport')] as const
/** How the hook or bracket is held in it. */
export const FIXING_KINDS = ['screwHook', 'woodScrew', 'lagScrew', 'nail', 'plug', 'boardFixing', 'metalAnchor', 'resinAnchor', 'adhesive', 'magnet', 'unknown'] as const
/** What may hang between hook and ring. */
export const CONNECTOR_KINDS = ['none', 'sHook', 'chain', 'carabiner', 'swivel'] as const
/** Woods of a bought stick, and sticks that no table knows. */
export const STICK_WOODS = ['unknown', 'natural', 'bamboo', ...(Object.keys(WOODS) as readonly WoodCode[])] as const

/**
 * The one table of inputs, in the order a maker is asked; a default may use fields above it.
 * Reading, errors, JSON Schema, `assumed`, form, stepping, help and the bad-input tests come from
 * it. Ranges: wide enough for any hanger a person can lift, narrow enough to catch a wrong unit.
 */
export const FIELDS = {
  'pot.have': choice(['yes', 'no'], 'yes', 'a pot is meant unless the maker says there is none yet', FIRST),
  'pot.shape': choice(POT_SHAPES, 'taperedRound', 'the usual flower pot', FIRST),
  'pot.rim': quantity('length', 40 * mm, 1000 * mm, is(200 * mm, 'mm', 'common practice', 'an 8 in pot'), ESSENTIAL),
  'pot.height': quantity('length', 30 * mm, 1000 * mm, times(0.9, 'pot.rim', 'mm', 'height of a standard pot over its rim'), LATER),
  'pot.base': quantity('length', 20 * mm, 1000 * mm, times(0.7, 'pot.rim', 'mm', 'base of a standard pot over its rim'), LATER),
  'pot.length': quantity('length', 60 * mm, 1500 * mm, times(2.5, 'pot.rim', 'mm', 'a trough two and a half times as long as wide'), LATER),
  'pot.belly': quantity('length', 40 * mm, 1200 * mm, { from: (earlier) => 1.15 * Math.max(earlier('pot.rim'), earlier('pot.base')), unit: 'mm', basis: 'common practice', source: 'a belly a little wider than rim and base' }, LATER),
  'pot.bellyHeight': quantity('length', 10 * mm, 1000 * mm, times(0.5, 'pot.height', 'mm', 'widest half way up'), LATER),
  'pot.strandsAt': choice(['corners', 'sides'], 'corners', 'a leg at each corner', LATER),
  'pot.edge': choice(['rounded', 'sharp'], 'rounded', 'a moulded or thrown rim', LATER),
  'pot.material': choice(POT_MATERIALS_KINDS, 'terracotta', 'the usual flower pot', ESSENTIAL),
  'pot.wall': open('length', 0.3 * mm, 60 * mm, LATER),
  'pot.emptyMass': open('mass', 0.005, 60, LATER),
  'pot.drainage': choice(['hole', 'none', 'unknown'], 'unknown', SAFE, FIRST),
  'pot.fillGap': quantity('length', 0, 200 * mm, is(15 * mm, 'mm', 'common practice', 'filled to 1 to 2 cm below the rim'), LATER),
  'mix.kind': choice(MIX_KINDS, 'soilless', 'house plants are sold in soilless mixes', LATER),
  'mix.bulkDensity': open('density', 10, 2500, LATER),
  'mix.capacity': open('ratio', 0, 1, LATER),
  'mix.porosity': open('ratio', 0, 1, LATER),
  'layer.depth': quantity('length', 0, 300 * mm, is(0, 'mm', 'common practice', 'no drainage layer'), TACIT),
  'layer.kind': choice(FILLING_KINDS, 'gravel', 'the heaviest of the usual layers', LATER),
  'topping.depth': quantity('length', 0, 200 * mm, is(0, 'mm', 'common practice', 'no top dressing'), TACIT),
  'topping.kind': choice(FILLING_KINDS, 'gravel', 'the heaviest of the usual dressings', LATER),
  'saucer.width': open('length', 40 * mm, 1000 * mm, LATER),
  'saucer.depth': open('length', 2 * mm, 150 * mm, LATER),
  'saucer.mass': open('mass', 0.005, 30, LATER),
  'reservoir.volume': open('volume', 0.01 * litre, 50 * litre, LATER),
  'cover.inside': open('length', 40 * mm, 1200 * mm, LATER),
  'cover.height': open('length', 20 * mm, 1200 * mm, LATER),
  'cover.mass': open('mass', 0.005, 60, LATER),
  'weighed.mass': open('mass', 0.02, 150, FIRST),
  'weighed.state': choice(['dry', 'watered', 'flooded'], 'dry', SAFE, FIRST),
  'weighed.tare': open('mass', 0.001, 100, LATER),
  'plant.size': choice(PLANT_SIZES, 'byPot', 'a plant in proportion to its pot', LATER),
  'plant.kind': choice(PLANT_KINDS, 'leafy', 'the usual house plant', LATER),
  'plant.mass': open('mass', 0.005, 60, LATER),
  'plant.growth': choice(PLANT_GROWTHS, 'grows', 'a plant grows until its roots fill the pot', LATER),
  'plant.height': quantity('length', 0, 3, times(1, 'pot.rim', 'mm', 'a plant about as tall as its pot is wide'), LATER),
  'plant.width': quantity('length', 0, 4, times(2, 'pot.rim', 'mm', 'a plant twice as wide as its pot: with height and trailing stems the 0.19 m2 of a published 25 cm basket in leaf'), LATER),
  'plant.trail': quantity('length', 0, 4, times(0.5, 'pot.rim', 'mm', 'stems that trail half the pot’s width below its rim'), LATER),
  'seat.offset': quantity('length', 0, 300 * mm, times(0.05, 'pot.rim', 'mm', 'a pot set in by eye'), LATER),
  'make.stage': choice(['planned', 'made'], 'planned', 'everything can still be changed', FIRST),
  'make.have': choice(['yes', 'no'], 'yes', 'a hanger is meant unless the maker says there is none yet', FIRST),
  'cord.fibre': choice(FIBRES, 'unknown', SAFE, FIRST),
  'cord.make': choice(CORD_MAKES, 'unknown', SAFE, FIRST),
  'cord.diameter': open('length', 0.5 * mm, 30 * mm, FIRST),
  'cord.linearDensity': open('linearDensity', 0.0001, 0.5, FIRST),
  'cord.weighedMass': open('mass', 0.001, 20, LATER),
  'cord.weighedLength': open('length', 100 * mm, 500, LATER),
  'cord.rated': open('force', 5, 100_000, FIRST),
  'cord.lot': text(80),
  'cord.rollLength': open('length', 0.5, 10_000, LATER),
  'cord.rollMass': open('mass', 0.01, 100, LATER),
  'cord.rollPrice': open('number', 0, 1_000_000, LATER),
  'cord.currency': text(12),
  'cord.onRoll': open('length', 0, 10_000, LATER),
  'make.arrangement': choice(ARRANGEMENTS, 'legs', 'legs round one pot', { ...FIRST, tacit: true }),
  'make.legs': quantity('count', 3, 12, is(4, '', 'common practice', 'four legs'), ESSENTIAL),
  'make.strands': quantity('count', 1, 48, is(4, '', 'common practice', 'four strands a leg'), ESSENTIAL),
  'make.build': choice(['plain', 'sinnet', 'alternating', 'spiral'], 'sinnet', SAFE, FIRST),
  'make.fillers': open('count', 1, 48, LATER),
  'make.knotted': open('length', 0, 4, LATER),
  'make.joined': choice(['no', 'yes', 'splice', 'glued'], 'no', 'no carrying strand is tied in its length', LATER),
  'make.top': choice(['ring', 'bunched', 'stick'], 'ring', 'the legs hang from a ring by lark’s heads', LATER),
  'make.legLength': open('length', 50 * mm, 4, LATER),
  'make.totalLength': quantity('length', 200 * mm, 5, is(1, 'cm', 'common practice', 'a hanger of 100 cm'), LATER),
  'make.fringe': quantity('length', 0, 3, is(0.25, 'cm', 'common practice', 'a fringe of 25 cm'), LATER),
  'make.tolerance': quantity('length', 0, 60 * mm, is(10 * mm, 'mm', 'common practice', 'legs knotted by hand to within 10 mm of each other'), LATER),
  'make.cords': open('count', 1, 400, LATER),
  'make.cutLength': open('length', 200 * mm, 40, LATER),
  'takeUp.cut': open('length', 50 * mm, 100, LATER),
  'takeUp.finished': open('length', 10 * mm, 10, LATER),
  'make.date': day,
  'make.code': text(24),
  'make.customer': text(80),
  'make.maker': text(80),
  'make.contact': text(120),
  'cradle.kind': choice(['net', 'open'], 'net', 'neighbouring legs are knotted together round the pot', LATER),
  'cradle.first': quantity('length', 10 * mm, 1, times(0.55, 'pot.rim', 'mm', 'first knots about half the rim above the gathering knot'), LATER),
  'cradle.second': open('length', 20 * mm, 1.5, LATER),
  'gathering.wraps': quantity('count', 1, 40, is(8, '', 'common practice', 'eight wraps'), LATER),
  'gathering.cordLength': open('length', 100 * mm, 20, LATER),
  'gathering.tails': quantity('length', 0, 1, is(200 * mm, 'mm', 'common practice', 'a hand’s width left at both ends to pull on'), TACIT),
  'testHang.mass': open('mass', 0.1, 500, LATER),
  'testHang.volume': open('volume', 0.1 * litre, 500 * litre, LATER),
  'testHang.time': quantity('time', 60, YEAR, is(60, 'min', 'common practice', 'a time that was not noted counts as too short'), LATER),
  'testHang.slip': quantity('length', 0, 200 * mm, is(200 * mm, 'mm', 'common practice', 'a slip that was not marked and measured counts as too large'), LATER),
  'testHang.date': day,
  'ring.rated': open('force', 5, 100_000, LATER),
  'ring.metal': choice([...METALS, 'wood'], 'steel', 'a welded steel ring', LATER),
  'ring.wire': quantity('length', 1 * mm, 40 * mm, is(4 * mm, 'mm', 'common practice', 'ring of 4 mm wire'), LATER),
  'ring.inside': quantity('length', 8 * mm, 300 * mm, is(40 * mm, 'mm', 'common practice', 'ring 40 mm wide inside'), LATER),
  'ring.lies': choice(['upright', 'level'], 'upright', 'the ring hangs upright on the hook', TACIT),
  'ring.cords': quantity('count', 3, 12, times(1, 'make.legs', '', 'each leg runs on from the ring to the hook'), LATER),
  'ring.cordStrands': quantity('count', 1, 48, times(1, 'make.strands', '', 'as many strands as in a leg'), LATER),
  'ring.rise': quantity('length', 10 * mm, 3, times(1.5, 'ring.inside', 'mm', 'the ring hangs half as far again under the hook as it is wide'), LATER),
  'stick.wood': choice(STICK_WOODS, 'unknown', SAFE, LATER),
  'stick.diameter': quantity('length', 4 * mm, 120 * mm, is(16 * mm, 'mm', 'common practice', 'a dowel of 16 mm'), LATER),
  'stick.hollow': open('length', 0, 110 * mm, LATER),
  'stick.state': choice(['dry', 'green'], 'dry', 'a bought dowel is dry', LATER),
  'stick.grain': choice(['straight', 'sloping', 'unknown'], 'unknown', SAFE, LATER),
  'stick.length': quantity('length', 50 * mm, 3, is(300 * mm, 'mm', 'common practice', 'a stick of 30 cm'), LATER),
  'stick.held': choice(['topCord', 'twoHooks'], 'topCord', 'a cord from both ends over one hook', LATER),
  'stick.span': quantity('length', 20 * mm, 3, times(0.9, 'stick.length', 'mm', 'held near both ends'), LATER),
  'stick.topCord': quantity('length', 50 * mm, 6, times(1.5, 'stick.span', 'mm', 'half as long again as the stick between its ends'), LATER),
  'stick.topStrands': quantity('count', 1, 24, is(2, '', 'common practice', 'the cord doubled'), LATER),
  'stick.over': choice(['loose', 'tied'], 'loose', 'the cord is laid over the hook', LATER),
  'stick.bunch': quantity('length', 0, 3, times(0.3, 'stick.length', 'mm', 'the lark’s heads side by side in the middle'), LATER),
  'connector.kind': choice(CONNECTOR_KINDS, 'none', 'the ring hangs on the hook itself', TACIT),
  'connector.rated': open('force', 5, 100_000, LATER),
  'connector.metal': choice(METALS, 'unknown', SAFE, LATER),
  'connector.wire': open('length', 1 * mm, 20 * mm, LATER),
  'connector.inside': open('length', 3 * mm, 150 * mm, LATER),
  'connector.joint': choice(['open', 'closed'], 'open', SAFE, LATER),
  'hook.kind': choice(['open', 'latched', 'closed'], 'open', SAFE, FIRST),
  'hook.rated': open('force', 5, 100_000, FIRST),
  'hook.metal': choice(METALS, 'steel', 'a steel screw hook', LATER),
  'hook.wire': quantity('length', 1 * mm, 40 * mm, is(4 * mm, 'mm', 'common practice', 'a screw hook of 4 mm wire'), FIRST),
  'hook.inside': quantity('length', 4 * mm, 200 * mm, times(6, 'hook.wire', 'mm', 'bowl six wire diameters wide inside'), LATER),
  'hook.projection': quantity('length', 0, 500 * mm, times(10, 'hook.wire', 'mm', 'ten wire diameters from the ceiling to the bowl'), LATER),
  'place.support': choice(SUPPORTS, 'ceilingHook', 'hung from a hook in the ceiling', FIRST),
  'place.substrate': choice(PLACE_SUBSTRATES, 'unknown', SAFE, FIRST),
  'place.known': choice(['seen', 'told'], 'seen', 'whoever answers has seen the place', TACIT),
  'place.timber': choice(TIMBERS, 'softwood', 'joists are softwood', LATER),
  'fixing.kind': choice(FIXING_KINDS, 'screwHook', 'the hook’s own thread is the fixing', LATER),
  'fixing.screw': screw,
  'fixing.length': open('length', 5 * mm, 400 * mm, LATER),
  'fixing.between': quantity('length', 0, 200 * mm, is(0, 'mm', 'common practice', 'nothing between the head and the timber'), TACIT),
  'fixing.timberDepth': open('length', 5 * mm, 1, LATER),
  'fixing.grain': choice(['side', 'end'], 'side', 'into the side of the timber', TACIT),
  'fixing.count': quantity('count', 1, 12, is(1, '', 'common practice', 'one fixing'), TACIT),
  'fixing.plugHole': quantity('length', 4 * mm, 20 * mm, is(6 * mm, 'mm', 'common practice', 'a plug of 6 mm'), LATER),
  'fixing.rated': open('force', 5, 100_000, LATER),
  'fixing.ratedFor': choice(['pullOut', 'shear', 'unknown'], 'unknown', SAFE, LATER),
  'fixing.ratedShear': open('force', 5, 100_000, LATER),
  'fixing.diameter': quantity('length', 2 * mm, 20 * mm, times(1, 'hook.wire', 'mm', 'the thread of a screw hook is as thick as its wire'), LATER),
  'fixing.penetration': quantity('length', 0, 300 * mm, is(30 * mm, 'mm', 'common practice', 'a 30 mm thread screwed home in the joist, the board not counted'), LATER),
  'fixing.proof': open('mass', 0.1, 1000, LATER),
  'bracket.rated': open('force', 5, 100_000, LATER),
  'bracket.reach': quantity('length', 20 * mm, 1, is(200 * mm, 'mm', 'common practice', 'an arm of 20 cm'), LATER),
  'bracket.screws': quantity('count', 1, 8, is(2, '', 'common practice', 'two screws, one above the other'), LATER),
  'bracket.top': quantity('length', 10 * mm, 600 * mm, is(80 * mm, 'mm', 'common practice', 'highest screw 80 mm above the lower edge of its plate'), LATER),
  'bracket.bottom': quantity('length', 0, 590 * mm, is(15 * mm, 'mm', 'common practice', 'lowest screw 15 mm above the lower edge of its plate'), LATER),
  'bracket.wide': quantity('length', 5 * mm, 400 * mm, is(25 * mm, 'mm', 'common practice', 'a plate 25 mm wide'), LATER),
  'bracket.metal': choice(METALS, 'unknown', SAFE, LATER),
  'bracket.thick': open('length', 1 * mm, 60 * mm, LATER),
  'bracket.high': open('length', 1 * mm, 100 * mm, LATER),
  'tiers.count': quantity('count', 2, 3, is(2, '', 'common practice', 'two pots one under another'), FIRST),
  'tiers.how': choice(['runOn', 'wrapped', 'ownCords'], 'wrapped', SAFE, FIRST),
  'tiers.tested': choice(['all', 'first'], 'first', SAFE, LATER),
  'second.rim': quantity('length', 40 * mm, 1000 * mm, times(1, 'pot.rim', 'mm', 'the pot above it again'), FIRST),
  'second.height': quantity('length', 30 * mm, 1000 * mm, times(1, 'pot.height', 'mm', 'the pot above it again'), LATER),
  'second.base': quantity('length', 20 * mm, 1000 * mm, times(1, 'pot.base', 'mm', 'the pot above it again'), LATER),
  'second.mass': open('mass', 0.02, 150, FIRST),
  'second.state': choice(['dry', 'watered', 'flooded'], 'dry', SAFE, FIRST),
  'second.strand': quantity('length', 50 * mm, 4, times(3, 'second.rim', 'mm', 'strands three times the pot’s width from knot to knot'), LATER),
  'second.first': quantity('length', 10 * mm, 1, times(0.55, 'second.rim', 'mm', 'first knots about half the rim above the gathering knot'), LATER),
  'second.strands': quantity('count', 1, 48, times(1, 'make.strands', '', 'every strand goes on'), LATER),
  'third.rim': quantity('length', 40 * mm, 1000 * mm, times(1, 'second.rim', 'mm', 'the pot above it again'), FIRST),
  'third.height': quantity('length', 30 * mm, 1000 * mm, times(1, 'second.height', 'mm', 'the pot above it again'), LATER),
  'third.base': quantity('length', 20 * mm, 1000 * mm, times(1, 'second.base', 'mm', 'the pot above it again'), LATER),
  'third.mass': open('mass', 0.02, 150, FIRST),
  'third.state': choice(['dry', 'watered', 'flooded'], 'dry', SAFE, FIRST),
  'third.strand': quantity('length', 50 * mm, 4, times(3, 'third.rim', 'mm', 'strands three times the pot’s width from knot to knot'), LATER),
  'third.first': quantity('length', 10 * mm, 1, times(0.55, 'third.rim', 'mm', 'first knots about half the rim above the gathering knot'), LATER),
  'third.strands': quantity('count', 1, 48, times(1, 'second.strands', '', 'every strand goes on'), LATER),
  'row.count': quantity('count', 2, 8, is(3, '', 'common practice', 'three in a row'), FIRST),
  'row.spacing': quantity('length', 50 * mm, 2, times(2, 'pot.rim', 'mm', 'twice the pot’s width from one to the next'), LATER),
  'row.others': open('mass', 0.1, 150, LATER),
  'rail.others': open('mass', 0.1, 500, LATER),
  'panel.width': quantity('length', 60 * mm, 2, times(1.4, 'pot.rim', 'mm', 'wider than its pot, so that the strands in front clear the rim'), FIRST),
  'panel.height': quantity('length', 20 * mm, 3, is(250 * mm, 'mm', 'common practice', 'a panel knotted for 25 cm'), LATER),
  'panel.rise': quantity('length', 0, 1, times(0.4, 'pot.rim', 'mm', 'room above the rim for the plant'), LATER),
  'panel.front': quantity('count', 1, 24, is(4, '', 'common practice', 'four strands round the front from each corner'), FIRST),
  'panel.behind': quantity('count', 2, 24, is(4, '', 'common practice', 'four strands behind the pot'), FIRST),
  'panel.behindWidth': quantity('length', 0, 1, times(0.3, 'pot.rim', 'mm', 'strands behind the middle of the pot'), LATER),
  'panel.thickness': quantity('length', 0, 100 * mm, is(10 * mm, 'mm', 'common practice', 'cords and a knot or two behind the pot'), LATER),
  'panel.cords': quantity('count', 2, 48, { from: (earlier) => Math.ceil(earlier('panel.front') + earlier('panel.behind') / 2), unit: '', basis: 'common practice', source: 'every strand of the panel goes on round the pot' }, LATER),
  'panel.knots': open('count', 1, 12, LATER),
  'panel.knotSpacing': quantity('length', 10 * mm, 300 * mm, is(40 * mm, 'mm', 'common practice', 'knots 4 cm apart'), LATER),
  'place.beneath': choice(BENEATH, 'people', SAFE, FIRST),
  'place.reach': choice(['unknown', 'nobody', ...PULLERS], 'unknown', 'a child where people sit, sleep or play beneath, or the public; nobody elsewhere', TACIT),
  'place.exposure': choice(EXPOSURES, 'indoors', 'hung indoors and dry', LATER),
  'place.wind': choice(WINDS, 'open', 'a garden or low balcony', LATER),
  'place.watering': choice(['weekly', 'daily'], 'weekly', 'a house plant', LATER),
  'place.life': quantity('time', 30 * DAY, 10 * YEAR, is(3 * YEAR, 'year', 'common practice', 'replaced after three years'), LATER),
  'reserve.own': open('ratio', 1, 20, LATER),
  'reserve.reason': text(200),
} as const satisfies Readonly<Record<string, Field>>

export type FieldPath = keyof typeof FIELDS
export const FIELD_PATHS = Object.keys(FIELDS) as readonly FieldPath[]
export const isFieldPath = (path: string): path is FieldPath => Object.hasOwn(FIELDS, path)
export const fieldOf = (path: FieldPath): Field => FIELDS[path]

/** All answers in SI, by path. */
export type Answers = { readonly [P in FieldPath]: FieldValue<(typeof FIELDS)[P]> }
