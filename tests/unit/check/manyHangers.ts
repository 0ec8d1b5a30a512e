import { DEMOS, parseDocument, resolveDocument, type Hanger } from '#core'
import { hangerOf, ORDINARY } from '../hanger/hangerOf'
import { ON_STICK } from './links/stickOf'
import { PANEL } from '../hanger/panelPatch'
import { BRACKET, WALL_HOOK } from './links/places'
import { testedHanger } from '../hanger/testedHanger'
import { without } from '../hanger/without'

/** Hangers that between them use every arrangement, every part and every kind of evidence. */
export const MANY_HANGERS: readonly (readonly [string, Hanger])[] = [
  ...DEMOS.map(({ file, text }): [string, Hanger] => {
    const parsed = parseDocument(text)
    if (!parsed.ok) throw new Error(file)
    const read = resolveDocument(parsed.document)
    if (!read.ok) throw new Error(file)
    return [file, read.hanger]
  }),
  ['ordinary', hangerOf(ORDINARY)],
  ['rated cord, bunched over an open hook', hangerOf({ ...ORDINARY, 'cord.rated': '420 N', 'make.top': 'bunched', 'hook.kind': 'open', 'make.build': 'plain' })],
  ['soaked pulls as tied, a water test hang', testedHanger({ ...ORDINARY, 'testHang.volume': '19 l', 'testHang.time': '25 h', 'testHang.slip': '1 mm' }, [131, 118, 140, 126].map((n) => ({ load: `${n} N`, how: 'tied', state: 'soaked', time: '20 s' })))],
  ['one straight pull, untimed', testedHanger(ORDINARY, [{ load: '21 kg' }])],
  ['manila rope by its table, a sharp pot', hangerOf({ ...ORDINARY, 'cord.fibre': 'manila', 'cord.make': 'rope', 'cord.diameter': '6.5 mm', 'cord.linearDensity': '27 g/m', 'pot.edge': 'sharp' })],
  ['a weighed piece of cord', hangerOf({ ...without(ORDINARY, 'cord.linearDensity'), 'cord.weighedMass': '47 g', 'cord.weighedLength': '9.8 m' })],
  ['hook in a stud, the pot leaning on the wall, damp', hangerOf({ ...ORDINARY, ...WALL_HOOK, 'place.exposure': 'steamy', 'fixing.between': '12 mm', 'rail.others': '1.3 kg' })],
  ['nail in a wall, the pot hanging clear', hangerOf({ ...ORDINARY, ...WALL_HOOK, 'fixing.kind': 'nail', 'hook.projection': '140 mm' })],
  ['hook on a plate in brick, by a plug’s low figure', hangerOf({ ...ORDINARY, ...WALL_HOOK, 'place.substrate': 'solidBrick', 'fixing.kind': 'plug', 'fixing.count': '3' })],
  ['bracket with lag screws in end grain', hangerOf({ ...ORDINARY, ...BRACKET, 'fixing.kind': 'lagScrew', 'fixing.grain': 'end', 'fixing.diameter': '14 mm', 'fixing.penetration': '90 mm' })],
  ['swing arm on rated toggles, told by the customer', hangerOf({ ...ORDINARY, ...BRACKET, 'place.support': 'swingArm', 'place.substrate': 'plasterboard', 'fixing.kind': 'boardFixing', 'fixing.rated': '30 kgf', 'fixing.ratedFor': 'pullOut', 'fixing.ratedShear': '55 kgf', 'place.known': 'told' })],
  ['bracket on toggles of unknown make', hangerOf({ ...ORDINARY, ...BRACKET, 'place.substrate': 'plasterboardOnSteelStud', 'fixing.kind': 'boardFixing' })],
  ['anchor in a concrete ceiling', hangerOf({ ...ORDINARY, 'place.substrate': 'concrete', 'fixing.kind': 'metalAnchor', 'fixing.length': '45 mm' })],
  ['branch, pulled in place', hangerOf({ ...ORDINARY, 'place.support': 'overBeam', 'place.substrate': 'branch', 'fixing.proof': '40 kg' })],
  ['no lever, and a swing arm on one screw', hangerOf({ ...ORDINARY, ...BRACKET, 'place.support': 'swingArm', 'bracket.screws': '1' })],
  ['tested knot, people beneath', hangerOf({ ...ORDINARY, 'testHang.mass': '21 kg', 'testHang.time': '25 h', 'testHang.slip': '2 mm', 'place.beneath': 'people' })],
  ['a stick on its top cord under an S-hook', hangerOf({ ...ON_STICK,  'connector.kind': 'sHook', 'connector.wire': '5 mm', 'connector.inside': '17 mm', 'place.beneath': 'people' })],
  ['a green stick on two hooks, welded chain, other loads', hangerOf({ ...ON_STICK,  'stick.held': 'twoHooks', 'stick.state': 'green', 'make.legs': '5', 'connector.kind': 'chain', 'connector.metal': 'steel', 'connector.wire': '5 mm', 'connector.joint': 'closed', 'rail.others': '3 kg', 'hook.metal': 'brass' })],
  ['a natural stick', hangerOf({ ...ON_STICK,  'stick.wood': 'natural' })],
  ['bamboo, shut S-hook', hangerOf({ ...ON_STICK,  'stick.wood': 'bamboo', 'stick.hollow': '13 mm', 'connector.kind': 'sHook', 'connector.joint': 'closed', 'connector.wire': '4 mm', 'connector.inside': '14 mm' })],
  ['outdoors in wind, on a tested wooden ring', hangerOf({ ...ORDINARY, 'cord.fibre': 'polyester', 'place.exposure': 'outdoors', 'place.wind': 'exposed', 'ring.metal': 'wood', 'ring.wire': '12 mm', 'testHang.mass': '60 kg', 'testHang.time': '24 h', 'testHang.slip': '1 mm' })],
  ['bracket within a child’s reach', hangerOf({ ...ORDINARY, ...BRACKET, 'place.reach': 'child' })],
  ['swing arm in the wind, other loads', hangerOf({ ...ORDINARY, ...BRACKET, 'place.support': 'swingArm', 'place.exposure': 'outdoors', 'rail.others': '2 kg' })],
  ['hook in a wall within a cat’s reach', hangerOf({ ...ORDINARY, ...WALL_HOOK, 'place.reach': 'cat', 'rail.others': '1 kg' })],
  ['a stick on two hooks in the wind', hangerOf({ ...ON_STICK,  'stick.held': 'twoHooks', 'place.exposure': 'outdoors', 'place.reach': 'child' })],
  ['a hook in the wind, other loads on it', hangerOf({ ...ORDINARY, 'place.exposure': 'outdoors', 'rail.others': '2 kg' })],
  ['a panel against a wall, its net told', hangerOf({ ...PANEL, 'panel.knots': '2', 'place.reach': 'child' })],
  ['a panel under a ceiling, on two hooks, over people', hangerOf({ ...PANEL, 'place.support': 'ceilingHook', 'stick.held': 'twoHooks', 'place.beneath': 'people' })],
  ['three tiers, the lower ones held by wraps, outdoors', hangerOf({ ...ORDINARY, 'cord.fibre': 'polyester', 'make.arrangement': 'tiers', 'tiers.count': '3', 'tiers.how': 'wrapped', 'second.mass': '3 kg', 'third.rim': '120 mm', 'place.exposure': 'outdoors', 'place.reach': 'child' })],
  ['a tall plant in open strands, held by friction', hangerOf({ ...ORDINARY, 'cradle.kind': 'open', 'plant.height': '80 cm', 'plant.mass': '3 kg', 'seat.offset': '6 mm' })],
  ['a level ring on cords of its own, a wrapping cord cut short', hangerOf({ ...ORDINARY, 'ring.lies': 'level', 'ring.metal': 'steel', 'ring.inside': '115 mm', 'ring.wire': '5 mm', 'ring.cords': '4', 'ring.cordStrands': '4', 'ring.rise': '80 mm', 'make.totalLength': '120 cm', 'gathering.wraps': '12', 'gathering.cordLength': '60 cm' })],
  ['a top cord too short for its stick', hangerOf({ ...ON_STICK, 'stick.topCord': '28 cm' })],
  ['a row on one top cord, one of them taken down', hangerOf({ ...ON_STICK, 'make.arrangement': 'row', 'make.top': 'ring', 'row.count': '3', 'row.spacing': '30 cm', 'row.others': '2.5 kg', 'stick.length': '110 cm', 'stick.span': '100 cm', 'stick.diameter': '35 mm', 'stick.topCord': '150 cm' })],
  ['a wooden ring', hangerOf({ ...ORDINARY, 'ring.metal': 'wood', 'ring.wire': '11 mm' })],
]
