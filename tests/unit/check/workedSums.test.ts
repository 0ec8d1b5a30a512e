import { evaluate } from 'mathjs'
import { describe, expect, test } from 'vitest'
import { checkHanger, type CheckResult } from '#core'
import { MANY_HANGERS } from './manyHangers'

const checks = MANY_HANGERS.map(([name, hanger]): readonly [string, CheckResult] => [name, checkHanger(hanger)])

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

  test('every sum leads from demand and capacity to what may be carried and how far that is used', () => {
    for (const { terms, demand, capacity, allowable, utilisation } of check.links) {
      const symbols = terms.map((t) => t.symbol)
      expect(symbols.includes('E') && symbols.includes('R') && symbols.includes('A')).toBe(demand !== null && capacity !== null && allowable !== null)
      expect(terms.find((t) => t.code === 'utilisation')?.value ?? null).toBe(utilisation)
      expect(terms.some((t) => t.code === 'holdsLimit')).toBe(utilisation !== null)
    }
  })

  test('ids are unique', () => {
    expect(new Set(check.links.map((l) => l.id)).size).toBe(check.links.length)
  })

  test('every number in a sum has a basis and a source', () => {
    for (const term of check.links.flatMap((l) => l.terms)) expect([term.basis, term.source].every((text) => text.length > 0)).toBe(true)
  })
})
