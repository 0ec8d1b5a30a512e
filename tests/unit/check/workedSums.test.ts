import { evaluate } from 'mathjs'
import { describe, expect, test } from 'vitest'
import { checkHanger, DEMOS, parseDocument, resolveDocument, type CheckResult } from '#core'
import { checkOf, ORDINARY } from '../hanger/hangerOf'
import { onStick } from './links/stickOf'
import { PANEL } from '../hanger/panelPatch'
import { BRACKET, WALL_HOOK } from './links/places'
import { testedHanger } from '../hanger/testedHanger'
import { without } from '../hanger/without'

const checks: readonly (readonly [string, CheckResult])[] = [
  ...DEMOS.map(({ file, text }): [string, CheckResult] => {
    const parsed = parseDocument(text)
    if (!parsed.ok) throw new Error(file)
    const read = resolveDocument(parsed.document)
    if (!read.ok) throw new Error(file)
    return [file, checkHanger(read.hanger)]
  }),
  ['ordinary', checkOf(ORDINARY)],
  ['rated cord, bunched over an open hook', checkOf({ ...ORDINARY, 'cord.rated': '420 N', 'make.top': 'bunched', 'hook.kind': 'open', 'make.build': 'plain' })],
  ['soaked pulls as tied, a water test hang', checkHanger(testedHanger({ ...ORDINARY, 'testHang.volume': '19 l', 'testHang.time': '25 h', 'testHang.slip': '1 mm' }, [131, 118, 140, 126].map((n) => ({ load: `${n} N`, how: 'tied', state: 'soaked', time: '20 s' }))))],
  ['one straight pull, untimed', checkHanger(testedHanger(ORDINARY, [{ load: '21 kg' }]))],
  ['manila rope by its table, a sharp pot', checkOf({ ...ORDINARY, 'cord.fibre': 'manila', 'cord.make': 'rope', 'cord.diameter': '6.5 mm', 'cord.linearDensity': '27 g/m', 'pot.edge': 'sharp' })],
  ['a weighed piece of cord', checkOf({ ...without(ORDINARY, 'cord.linearDensity'), 'cord.weighedMass': '47 g', 'cord.weighedLength': '9.8 m' })],
  ['hook in a stud, the pot leaning on the wall, damp', checkOf({ ...ORDINARY, ...WALL_HOOK, 'place.exposure': 'steamy', 'fixing.between': '12 mm', 'rail.others': '1.3 kg' })],
  ['nail in a wall, the pot hanging clear', checkOf({ ...ORDINARY, ...WALL_HOOK, 'fixing.kind': 'nail', 'hook.projection': '140 mm' })],
  ['hook on a plate in brick, by a plug’s low figure', checkOf({ ...ORDINARY, ...WALL_HOOK, 'place.substrate': 'solidBrick', 'fixing.kind': 'plug', 'fixing.count': '3' })],
  ['bracket with lag screws in end grain', checkOf({ ...ORDINARY, ...BRACKET, 'fixing.kind': 'lagScrew', 'fixing.grain': 'end', 'fixing.diameter': '14 mm', 'fixing.penetration': '90 mm' })],
  ['swing arm on rated toggles, told by the customer', checkOf({ ...ORDINARY, ...BRACKET, 'place.support': 'swingArm', 'place.substrate': 'plasterboard', 'fixing.kind': 'boardFixing', 'fixing.rated': '30 kgf', 'fixing.ratedFor': 'pullOut', 'fixing.ratedShear': '55 kgf', 'place.known': 'told' })],
  ['bracket on toggles of unknown make', checkOf({ ...ORDINARY, ...BRACKET, 'place.substrate': 'plasterboardOnSteelStud', 'fixing.kind': 'boardFixing' })],
  ['anchor in a concrete ceiling', checkOf({ ...ORDINARY, 'place.substrate': 'concrete', 'fixing.kind': 'metalAnchor', 'fixing.length': '45 mm' })],
  ['branch, pulled in place', checkOf({ ...ORDINARY, 'place.support': 'overBeam', 'place.substrate': 'branch', 'fixing.proof': '40 kg' })],
  ['no lever, and a swing arm on one screw', checkOf({ ...ORDINARY, ...BRACKET, 'place.support': 'swingArm', 'bracket.screws': '1' })],
  ['tested knot, people beneath', checkOf({ ...ORDINARY, 'testHang.mass': '21 kg', 'testHang.time': '25 h', 'testHang.slip': '2 mm', 'place.beneath': 'people' })],
  ['a stick on its top cord under an S-hook', onStick({ 'connector.kind': 'sHook', 'connector.wire': '5 mm', 'connector.inside': '17 mm', 'place.beneath': 'people' })],
  ['a green stick on two hooks, welded chain, other loads', onStick({ 'stick.held': 'twoHooks', 'stick.state': 'green', 'make.legs': '5', 'connector.kind': 'chain', 'connector.metal': 'steel', 'connector.wire': '5 mm', 'connector.joint': 'closed', 'rail.others': '3 kg', 'hook.metal': 'brass' })],
  ['a natural stick', onStick({ 'stick.wood': 'natural' })],
  ['bamboo, shut S-hook', onStick({ 'stick.wood': 'bamboo', 'stick.hollow': '13 mm', 'connector.kind': 'sHook', 'connector.joint': 'closed', 'connector.wire': '4 mm', 'connector.inside': '14 mm' })],
  ['outdoors in wind, on a tested wooden ring', checkOf({ ...ORDINARY, 'cord.fibre': 'polyester', 'place.exposure': 'outdoors', 'place.wind': 'exposed', 'ring.metal': 'wood', 'ring.wire': '12 mm', 'testHang.mass': '60 kg', 'testHang.time': '24 h', 'testHang.slip': '1 mm' })],
  ['bracket within a child’s reach', checkOf({ ...ORDINARY, ...BRACKET, 'place.reach': 'child' })],
  ['swing arm in the wind, other loads', checkOf({ ...ORDINARY, ...BRACKET, 'place.support': 'swingArm', 'place.exposure': 'outdoors', 'rail.others': '2 kg' })],
  ['hook in a wall within a cat’s reach', checkOf({ ...ORDINARY, ...WALL_HOOK, 'place.reach': 'cat', 'rail.others': '1 kg' })],
  ['a stick on two hooks in the wind', onStick({ 'stick.held': 'twoHooks', 'place.exposure': 'outdoors', 'place.reach': 'child' })],
  ['a hook in the wind, other loads on it', checkOf({ ...ORDINARY, 'place.exposure': 'outdoors', 'rail.others': '2 kg' })],
  ['a panel against a wall, its net told', checkOf({ ...PANEL, 'panel.knots': '2', 'place.reach': 'child' })],
  ['a panel under a ceiling, on two hooks, over people', checkOf({ ...PANEL, 'place.support': 'ceilingHook', 'stick.held': 'twoHooks', 'place.beneath': 'people' })],
  ['three tiers, the lower ones held by wraps, outdoors', checkOf({ ...ORDINARY, 'cord.fibre': 'polyester', 'make.arrangement': 'tiers', 'tiers.count': '3', 'tiers.how': 'wrapped', 'second.mass': '3 kg', 'third.rim': '120 mm', 'place.exposure': 'outdoors', 'place.reach': 'child' })],
  ['a wooden ring', checkOf({ ...ORDINARY, 'ring.metal': 'wood', 'ring.wire': '11 mm' })],
]

describe.each(checks)('%s', (_, check) => {
  test.each(check.links.map((l) => [l.id, l] as const))('%s: every line with a formula follows from the other lines', (_id, link) => {
    const scope = Object.fromEntries(link.terms.map((t) => [t.symbol, t.value]))
    expect(Object.keys(scope)).toHaveLength(link.terms.length)
    for (const term of link.terms) {
      if (term.formula === null) continue
      const value = evaluate(term.formula, { ...scope }) as number
      expect(Math.abs(value - term.value), `${term.symbol} = ${term.formula}`).toBeLessThanOrEqual(1e-9 * Math.abs(term.value))
    }
  })

  test('allowable is capacity times the factors, utilisation demand over allowable', () => {
    for (const link of check.links) {
      if (link.capacity === null || link.allowable === null) continue
      const product = link.factors.reduce((p, f) => p * f.value, link.capacity.value)
      expect(Math.abs(link.allowable.value - product)).toBeLessThanOrEqual(1e-9 * product)
      if (link.utilisation !== null && link.demand !== null) expect(link.utilisation).toBeCloseTo(link.demand.value / link.allowable.value, 9)
    }
  })

  test('ids are unique', () => {
    expect(new Set(check.links.map((l) => l.id)).size).toBe(check.links.length)
  })

  test('every number in a sum has a basis and a source', () => {
    for (const term of check.links.flatMap((l) => l.terms)) expect([term.basis, term.source].every((text) => text.length > 0)).toBe(true)
  })
})
