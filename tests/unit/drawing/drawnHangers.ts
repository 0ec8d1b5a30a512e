import { checkHanger, DEMOS, parseDocument, resolveDocument, type CheckResult, type Patch } from '#core'
import { checkOf, ORDINARY } from '../hanger/hangerOf'
import { PANEL } from '../hanger/panelPatch'
import { BRACKET, WALL_HOOK } from '../check/links/places'

/** Builds that are drawn differently: few and many legs, one strand, each way of knotting, each ceiling, nothing known, nothing hanging. */
const PATCHES: readonly (readonly [string, Patch])[] = [
  ['ordinary', ORDINARY],
  ['three plain legs of one strand, bunched', { ...ORDINARY, 'make.legs': '3', 'make.strands': '1', 'make.build': 'plain', 'make.top': 'bunched', 'cradle.kind': 'open' }],
  ['twelve spiral legs into masonry', { ...ORDINARY, 'make.legs': '12', 'make.build': 'spiral', 'place.substrate': 'masonry', 'hook.kind': 'open' }],
  ['seven alternating legs by their length, plasterboard', { ...ORDINARY, 'make.legs': '7', 'make.build': 'alternating', 'make.legLength': '52 cm', 'place.substrate': 'plasterboard' }],
  ['cradle under the base, flooded', { ...ORDINARY, 'cradle.first': '3 cm', 'pot.drainage': 'none', 'weighed.state': 'watered' }],
  ['base wider than rim, no plant, no fringe', { ...ORDINARY, 'pot.rim': '15 cm', 'pot.base': '19 cm', 'plant.height': '0 mm', 'make.fringe': '0 mm' }],
  ['a cylinder in a saucer', { ...ORDINARY, 'pot.shape': 'cylinder', 'pot.rim': '17 cm', 'saucer.width': '21 cm', 'layer.depth': '3 cm' }],
  ['a bowl, open cradle', { ...ORDINARY, 'pot.shape': 'bowl', 'pot.rim': '25 cm', 'pot.base': '10 cm', 'pot.height': '13 cm', 'cradle.kind': 'open' }],
  ['a belly, dressed with gravel', { ...ORDINARY, 'pot.shape': 'bellied', 'pot.rim': '14 cm', 'pot.base': '11 cm', 'pot.belly': '21 cm', 'pot.bellyHeight': '9 cm', 'topping.depth': '2 cm' }],
  ['a square pot', { ...ORDINARY, 'pot.shape': 'square', 'pot.rim': '16 cm', 'pot.base': '12 cm' }],
  ['a trough, three legs', { ...ORDINARY, 'pot.shape': 'trough', 'pot.rim': '14 cm', 'pot.base': '12 cm', 'pot.length': '32 cm', 'make.legs': '3', 'make.totalLength': '150 cm' }],
  ['a trough, legs at its corners', { ...ORDINARY, 'pot.shape': 'trough', 'pot.rim': '14 cm', 'pot.base': '12 cm', 'pot.length': '32 cm', 'make.totalLength': '150 cm' }],
  ['a square pot, legs at its sides, cradle under the base', { ...ORDINARY, 'pot.shape': 'square', 'pot.strandsAt': 'sides', 'cradle.first': '5 cm' }],
  ['a level ring on three cords', { ...ORDINARY, 'ring.lies': 'level', 'ring.inside': '14 cm', 'ring.cords': '3' }],
  ['a cover pot, flooded', { ...ORDINARY, 'cover.inside': '24 cm', 'cover.height': '17 cm', 'make.totalLength': '120 cm' }],
  ['a stick on its top cord, an S-hook between', { ...ORDINARY, 'make.top': 'stick', 'stick.length': '40 cm', 'connector.kind': 'sHook' }],
  ['a stick on two hooks, chains between', { ...ORDINARY, 'make.top': 'stick', 'stick.held': 'twoHooks', 'connector.kind': 'chain', 'make.legs': '6' }],
  ['a top cord that does not reach, a carabiner', { ...ORDINARY, 'make.top': 'stick', 'stick.topCord': '20 cm', 'connector.kind': 'carabiner' }],
  ['a ring on a swivel', { ...ORDINARY, 'connector.kind': 'swivel' }],
  ['a panel against a wall, a net told, two hooks', { ...PANEL, 'panel.knots': '2', 'stick.held': 'twoHooks' }],
  ['a panel under a ceiling, odd strands, an open cradle', { ...PANEL, 'place.support': 'ceilingHook', 'panel.front': '3', 'panel.behind': '5', 'cradle.kind': 'open' }],
  ['a panel too narrow for its pot', { ...PANEL, 'panel.width': '15 cm' }],
  ['a hook in a wall that the pot leans on', { ...ORDINARY, ...WALL_HOOK }],
  ['a nail in a board wall', { ...ORDINARY, ...WALL_HOOK, 'fixing.kind': 'nail', 'place.substrate': 'plasterboard', 'make.legs': '5' }],
  ['a bracket plugged into brick', { ...ORDINARY, ...BRACKET, 'place.substrate': 'solidBrick', 'fixing.kind': 'plug', 'fixing.plugHole': '8 mm' }],
  ['a short swing arm on a board wall', { ...ORDINARY, ...BRACKET, 'place.support': 'swingArm', 'bracket.reach': '70 mm', 'place.substrate': 'plasterboard', 'fixing.kind': 'boardFixing' }],
  ['round a branch', { ...ORDINARY, 'place.support': 'overBeam', 'place.substrate': 'branch' }],
  ['two screws through a board, a second row', { ...ORDINARY, 'fixing.length': '70 mm', 'fixing.between': '12.5 mm', 'fixing.timberDepth': '12 cm', 'fixing.count': '2', 'fixing.kind': 'woodScrew', 'cradle.second': '19 cm' }],
  ['an anchor in concrete', { ...ORDINARY, 'place.substrate': 'concrete', 'fixing.kind': 'metalAnchor', 'fixing.length': '65 mm', 'hook.kind': 'latched' }],
  ['three pots on cords of their own', { ...ORDINARY, 'make.arrangement': 'tiers', 'tiers.count': '3', 'tiers.how': 'ownCords' }],
  ['a row round a rail', { ...ORDINARY, 'make.arrangement': 'row', 'place.support': 'overBeam', 'place.substrate': 'rail' }],
  ['a row wider than its stick', { ...ORDINARY, 'make.arrangement': 'row', 'stick.length': '30 cm', 'row.spacing': '35 cm' }],
  ['nothing said', {}],
  ['legs too short', { ...ORDINARY, 'make.totalLength': '55 cm' }],
]

const demos = DEMOS.map(({ file, text }): readonly [string, CheckResult] => {
  const parsed = parseDocument(text)
  if (!parsed.ok) throw new Error(file)
  const read = resolveDocument(parsed.document)
  if (!read.ok) throw new Error(file)
  return [file, checkHanger(read.hanger)]
})

export const DRAWN: readonly (readonly [string, CheckResult])[] = [...demos, ...PATCHES.map(([name, patch]) => [name, checkOf(patch)] as const)]
