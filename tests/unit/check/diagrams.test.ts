import { describe, expect, test } from 'vitest'
import { diagramsOf, type BentLink, type LinkDiagram } from '../../../src/check/diagrams'
import type { CheckResult } from '../../../src/check/checkHanger'
import { linkIn } from './linkOf'
import { ON_STICK, onStick } from './links/stickOf'
import { checkOf, ORDINARY } from '../hanger/hangerOf'

const diagram = (check: CheckResult, link: BentLink): LinkDiagram => {
  const found = diagramsOf(check.solved, 'watered').find((d) => d.link === link)
  if (!found) throw new Error(`no diagram of ${link}`)
  return found
}
const most = (numbers: readonly number[]): number => Math.max(...numbers.map(Math.abs))

describe('diagrams of what bends', () => {
  test('the stick bends as much as its worked sum says', () => {
    const check = onStick({})
    const moment = linkIn(check, 'stick', 'watered').terms.find((t) => t.code === 'momentShare')?.value ?? NaN
    expect(most(diagram(check, 'stick').moment)).toBeCloseTo(moment * check.solved.loads.watered.weight, 9)
    expect(diagram(check, 'stick').pulls.reduce((sum, { force }) => sum + force, 0)).toBeCloseTo(check.solved.loads.watered.weight, 9)
  })

  test('bending, shear and sag of a row’s stick are those of all its hangers', () => {
    const row = onStick({ ...ON_STICK, 'make.arrangement': 'row', 'make.top': 'ring', 'row.count': '4', 'row.spacing': '25 cm', 'row.others': '3 kg', 'stick.length': '90 cm', 'stick.held': 'twoHooks', 'stick.span': '80 cm', 'stick.diameter': '30 mm' })
    expect(diagram(row, 'stick').pulls).toHaveLength(4)
    expect(most(diagram(row, 'stick').sag ?? [])).toBeGreaterThan(0.001)
  })

  test('the ring is bent most under the pulls', () => {
    const ring = diagram(checkOf({ ...ORDINARY, 'make.top': 'ring', 'ring.wire': '5 mm', 'ring.inside': '45 mm' }), 'ring')
    expect(most(ring.moment)).toBe(ring.moment[0])
    expect(ring.moment[0]).toBeCloseTo((ring.pulls[0]?.force ?? NaN) * 0.025 / Math.PI, 12)
  })

  test('of a wooden ring and an unmeasured arm how far they bend is not said', () => {
    expect(diagram(checkOf({ ...ORDINARY, 'make.top': 'ring', 'ring.metal': 'wood' }), 'ring').sag).toBeNull()
    const bracket = diagram(checkOf({ ...ORDINARY, 'place.support': 'bracket', 'bracket.reach': '25 cm' }), 'bracket')
    expect(bracket.sag).toBeNull()
    expect(bracket.moment[0]).toBeCloseTo(-0.25 * (bracket.pulls[0]?.force ?? NaN), 12)
  })

  test('what stands out of a wall is bent at its face', () => {
    const pin = diagram(checkOf({ ...ORDINARY, 'place.support': 'wallHook', 'hook.projection': '35 mm' }), 'pin')
    expect(pin.moment[0]).toBeCloseTo(-0.035 * (pin.pulls[0]?.force ?? NaN), 12)
  })

  test('a stick whose cord does not reach has none', () => {
    expect(diagramsOf(onStick({ 'stick.topCord': '20 cm' }).solved, 'watered').some((d) => d.link === 'stick')).toBe(false)
  })
})
