import { hangsFrom, hasStick, liesLevel } from './arrangement'
import type { Answers, FieldPath } from './fields'
import { readScrew } from './readScrew'

type Rule = (a: Answers) => boolean

const hasPot: Rule = (a) => a['pot.have'] === 'yes'
const hasHanger: Rule = (a) => a['make.have'] === 'yes'
const estimatesPot: Rule = (a) => a['weighed.mass'] === null && hasPot(a)
const wireHook: Rule = (a) => a['hook.rated'] === null
const onRing: Rule = (a) => hangsFrom(a) === 'ring'
const wireRing: Rule = (a) => onRing(a) && a['ring.rated'] === null
const inTimber: Rule = (a) => a['place.support'] !== 'overBeam' && a['place.substrate'] === 'timber' && a['fixing.rated'] === null
const onStick: Rule = hasStick
const onBracket: Rule = (a) => a['place.support'] === 'bracket' || a['place.support'] === 'swingArm'
const inRow: Rule = (a) => a['make.arrangement'] === 'row'
const inTiers: Rule = (a) => a['make.arrangement'] === 'tiers'
/** Three of them. */
const hasThird: Rule = (a) => inTiers(a) && a['tiers.count'] > 2
const asPanel: Rule = (a) => a['make.arrangement'] === 'panel'
const onLegs: Rule = (a) => !asPanel(a)
const hasHook: Rule = (a) => a['place.support'] === 'ceilingHook' || a['place.support'] === 'wallHook'
const onTopCord: Rule = (a) => onStick(a) && a['stick.held'] === 'topCord'
/** A bought stick of a wood that a table knows. */
const fromTable: Rule = (a) => onStick(a) && a['stick.wood'] !== 'natural' && a['stick.wood'] !== 'bamboo'
const unratedBracket: Rule = (a) => onBracket(a) && a['bracket.rated'] === null
const connected: Rule = (a) => a['connector.kind'] !== 'none'
const unratedConnector: Rule = (a) => connected(a) && a['connector.rated'] === null
const fixed: Rule = (a) => a['place.support'] !== 'overBeam'
/** A rail or rod that the cord goes round, known by what its brackets are rated for. */
const roundABar: Rule = (a) => !fixed(a) && ['rail', 'curtainRod', 'showerRod', 'towelRod'].includes(a['place.substrate'])
/** A hole is drilled, in timber or in a wall, and its depth may matter. */
const drilled: Rule = (a) => inTimber(a) || (fixed(a) && a['fixing.rated'] === null && ['aeratedBlock', 'concrete'].includes(a['place.substrate']))
const tested: Rule = (a) => a['testHang.mass'] !== null || a['testHang.volume'] !== null
const outdoors: Rule = (a) => a['place.exposure'] === 'outdoors'
/** Knots take up cord: of the legs, of a panel, of a net round the pot. */
const knotted: Rule = (a) => hasHanger(a) && (asPanel(a) || a['make.build'] !== 'plain' || a['cradle.kind'] === 'net')
const cordGuess: Rule = (a) => a['cord.rated'] === null

/** Fields that only matter beside certain answers to others; the rest always do. */
const RULES: Readonly<Partial<Record<FieldPath, Rule>>> = {
  'pot.base': (a) => a['pot.shape'] !== 'cylinder',
  'pot.length': (a) => a['pot.shape'] === 'trough',
  'pot.strandsAt': (a) => (a['pot.shape'] === 'square' || a['pot.shape'] === 'trough') && a['cover.inside'] === null && a['cover.mass'] === null && a['make.legs'] === 4 && a['make.arrangement'] !== 'panel',
  'pot.belly': (a) => a['pot.shape'] === 'bellied',
  'pot.bellyHeight': (a) => a['pot.shape'] === 'bellied',
  'pot.material': estimatesPot,
  'pot.wall': (a) => estimatesPot(a) && a['pot.emptyMass'] === null,
  'pot.emptyMass': estimatesPot,
  'weighed.mass': hasPot,
  'weighed.state': (a) => hasPot(a) && a['weighed.mass'] !== null,
  'weighed.tare': (a) => hasPot(a) && a['weighed.mass'] !== null,
  'mix.bulkDensity': hasPot,
  'mix.capacity': hasPot,
  'mix.porosity': hasPot,
  'layer.depth': hasPot,
  'layer.kind': (a) => hasPot(a) && a['layer.depth'] > 0,
  'topping.depth': hasPot,
  'topping.kind': (a) => hasPot(a) && a['topping.depth'] > 0,
  'saucer.width': hasPot,
  'saucer.depth': (a) => hasPot(a) && a['saucer.width'] !== null,
  'saucer.mass': hasPot,
  'reservoir.volume': hasPot,
  'cover.inside': hasPot,
  'cover.height': (a) => hasPot(a) && a['cover.inside'] !== null,
  'cover.mass': hasPot,
  'plant.size': (a) => estimatesPot(a) && a['plant.mass'] === null,
  'plant.kind': (a) => estimatesPot(a) && a['plant.mass'] === null && a['plant.size'] !== 'byPot',
  'plant.growth': estimatesPot,
  'plant.mass': hasPot,
  'plant.width': outdoors,
  'plant.trail': outdoors,
  'place.wind': outdoors,
  'cord.make': cordGuess,
  'cord.diameter': hasHanger,
  'cord.weighedMass': (a) => hasHanger(a) && a['cord.linearDensity'] === null,
  'cord.weighedLength': (a) => hasHanger(a) && a['cord.linearDensity'] === null,
  'make.legs': onLegs,
  'make.strands': onLegs,
  'make.build': onLegs,
  'make.top': onLegs,
  'make.knotted': (a) => onLegs(a) && a['make.build'] !== 'plain',
  'takeUp.cut': knotted,
  'takeUp.finished': knotted,
  'cord.rollLength': hasHanger,
  'cord.rollMass': hasHanger,
  'cord.rollPrice': hasHanger,
  'cord.currency': (a) => hasHanger(a) && a['cord.rollPrice'] !== null,
  'cord.onRoll': hasHanger,
  'make.fillers': (a) => onLegs(a) && a['make.build'] !== 'plain',
  'make.legLength': onLegs,
  'make.totalLength': onLegs,
  'testHang.mass': hasHanger,
  'testHang.volume': (a) => hasHanger(a) && a['testHang.mass'] === null,
  'testHang.time': tested,
  'testHang.slip': tested,
  'testHang.date': tested,
  'ring.rated': onRing,
  'ring.metal': wireRing,
  'ring.wire': onRing,
  'ring.inside': onRing,
  'ring.lies': (a) => onRing(a) && a['make.arrangement'] === 'legs',
  'ring.cords': liesLevel,
  'ring.cordStrands': liesLevel,
  'ring.rise': liesLevel,
  'stick.wood': onStick,
  'stick.diameter': onStick,
  'stick.hollow': (a) => onStick(a) && a['stick.wood'] === 'bamboo',
  'stick.state': fromTable,
  'stick.grain': fromTable,
  'stick.length': onStick,
  'stick.held': onStick,
  'stick.span': onStick,
  'stick.topCord': onTopCord,
  'stick.topStrands': onTopCord,
  'stick.over': onTopCord,
  'stick.bunch': (a) => onStick(a) && onLegs(a) && !inRow(a),
  'connector.rated': connected,
  'connector.metal': unratedConnector,
  'connector.wire': unratedConnector,
  'connector.inside': unratedConnector,
  'connector.joint': unratedConnector,
  'hook.kind': hasHook,
  'hook.rated': hasHook,
  'hook.metal': hasHook,
  'hook.wire': hasHook,
  'hook.inside': (a) => hasHook(a) && wireHook(a),
  'hook.projection': hasHook,
  'fixing.kind': fixed,
  'fixing.screw': inTimber,
  'fixing.length': drilled,
  'fixing.between': drilled,
  'fixing.timberDepth': inTimber,
  'fixing.grain': inTimber,
  'fixing.count': (a) => fixed(a) && !onBracket(a),
  'fixing.plugHole': (a) => fixed(a) && a['fixing.kind'] === 'plug',
  'place.timber': inTimber,
  'fixing.rated': (a) => fixed(a) || roundABar(a),
  'fixing.ratedFor': (a) => fixed(a) && a['fixing.rated'] !== null,
  'fixing.ratedShear': (a) => fixed(a) && a['fixing.rated'] !== null && a['place.support'] !== 'ceilingHook',
  'fixing.diameter': inTimber,
  'fixing.penetration': inTimber,
  'bracket.rated': (a) => onBracket(a) || roundABar(a),
  'bracket.reach': onBracket,
  'bracket.screws': onBracket,
  'bracket.top': onBracket,
  'bracket.bottom': (a) => onBracket(a) && a['bracket.screws'] > 1,
  'bracket.wide': (a) => a['place.support'] === 'bracket',
  'bracket.metal': unratedBracket,
  'bracket.thick': unratedBracket,
  'bracket.high': unratedBracket,
  'tiers.count': inTiers,
  'tiers.how': inTiers,
  'tiers.tested': (a) => inTiers(a) && tested(a),
  'second.rim': inTiers,
  'second.height': inTiers,
  'second.base': (a) => inTiers(a) && a['pot.shape'] !== 'cylinder',
  'second.mass': inTiers,
  'second.state': (a) => inTiers(a) && a['second.mass'] !== null,
  'second.strand': inTiers,
  'second.first': inTiers,
  'second.strands': inTiers,
  'third.rim': hasThird,
  'third.height': hasThird,
  'third.base': (a) => hasThird(a) && a['pot.shape'] !== 'cylinder',
  'third.mass': hasThird,
  'third.state': (a) => hasThird(a) && a['third.mass'] !== null,
  'third.strand': hasThird,
  'third.first': hasThird,
  'third.strands': hasThird,
  'row.count': inRow,
  'row.spacing': inRow,
  'row.others': inRow,
  'panel.width': asPanel,
  'panel.height': asPanel,
  'panel.rise': asPanel,
  'panel.front': asPanel,
  'panel.behind': asPanel,
  'panel.behindWidth': asPanel,
  'panel.thickness': asPanel,
  'panel.cords': asPanel,
  'cradle.second': (a) => !asPanel(a) && a['cradle.kind'] === 'net',
  'panel.knots': (a) => asPanel(a) && a['cradle.kind'] === 'net',
  'panel.knotSpacing': (a) => asPanel(a) && a['cradle.kind'] === 'net' && a['panel.knots'] !== null,
  'reserve.reason': (a) => a['reserve.own'] !== null,
}

/** Whether a field has a bearing on this hanger: asked in the form, listed among what is assumed. */
export const isRelevant = (path: FieldPath, answers: Answers): boolean => RULES[path]?.(answers) ?? true

const screwLength = (a: Answers): number | null => {
  const screw = a['fixing.screw'] === null ? null : readScrew(a['fixing.screw'])
  return screw?.ok ? screw.length ?? a['fixing.length'] : a['fixing.length']
}

/** Defaults that another answer stands in for: what a packet says of a screw need not be measured. */
const REPLACED: Readonly<Partial<Record<FieldPath, Rule>>> = {
  'fixing.diameter': (a) => a['fixing.screw'] !== null,
  'fixing.penetration': (a) => screwLength(a) !== null,
}

/** Whether the default of a field that was not answered counts at all. */
export const defaultCounts = (path: FieldPath, answers: Answers): boolean => isRelevant(path, answers) && REPLACED[path]?.(answers) !== true
