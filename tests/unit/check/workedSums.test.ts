import { evaluate } from 'mathjs'
import { describe, expect, test } from 'vitest'
import { checkHanger, DEMOS, parseDocument, resolveDocument, type CheckResult } from '#core'
import { checkOf, ORDINARY } from '../hanger/hangerOf'
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
  ['tested knot, people beneath', checkOf({ ...ORDINARY, 'testHang.mass': '21 kg', 'testHang.time': '25 h', 'testHang.slip': '2 mm', 'place.beneath': 'people' })],
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
