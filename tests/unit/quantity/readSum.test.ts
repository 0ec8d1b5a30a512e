import { evaluate } from 'mathjs/number'
import { describe, expect, test } from 'vitest'
import type { QuantityKind } from '../../../src/quantity/quantityKind'
import { readQuantity } from '../../../src/quantity/readQuantity'
import { readSum, sumExpression, sumText } from '../../../src/quantity/readSum'

function summed(text: string, kind: QuantityKind): string | null {
  const pieces = readSum(text, kind)
  if (pieces === null) return null
  const [once, twice] = [1, 2].map((scale) => Number(evaluate(sumExpression(pieces, scale))))
  return sumText(pieces, kind, once ?? NaN, twice ?? NaN)
}

describe('a sum as a maker types it', () => {
  test.each<[string, QuantityKind, string]>([
    ['2*64 in + 10 cm', 'length', '131.937 in'],
    ['1 m - 25 cm', 'length', '0.75 m'],
    ['3/16 in + 1/16 in', 'length', '0.25 in'],
    ['1 m / 4', 'length', '0.25 m'],
    ['(12 cm + 8 cm) * 3', 'length', '60 cm'],
    ['5 ft 6 in + 6 in', 'length', '72 in'],
    ['10 lb − 8 oz', 'mass', '9.5 lb'],
    ['2 × 1,5 kg', 'mass', '3 kg'],
    ['3*4', 'count', '12'],
    ['100 cm ÷ 8', 'length', '12.5 cm'],
    ['-(2 cm - 5 cm)', 'length', '3 cm'],
    ['1e2 mm + 1 cm', 'length', '110 mm'],
  ])('%s is %s', (text, kind, expected) => {
    expect(summed(text, kind)).toBe(expected)
    expect(readQuantity(expected, kind).ok).toBe(true)
  })

  test.each<[string, QuantityKind]>([
    ['12 cm', 'length'], ['', 'length'], ['3/16 in', 'length'], ['x + 2', 'length'], ['2 cm + kg', 'length'], ['2 kg + 3 kg', 'length'], ['rim * 2', 'length'],
    ['f(2 cm)', 'length'], ['constructor * 2', 'number'], [`${'1+'.repeat(200)}1`, 'number'],
  ])('%s is none', (text, kind) => { expect(readSum(text, kind)).toBeNull() })

  test.each<[string, QuantityKind]>([['2 cm * 3 cm', 'length'], ['2 cm + 3', 'length'], ['1 m / 0', 'length'], ['6 / 2 cm', 'length'], ['2 + 3', 'length']])('%s comes to nothing that was asked', (text, kind) => {
    expect(summed(text, kind)).toBeNull()
  })

  test('only digits, signs and brackets go to whoever works it out', () => {
    for (const text of ['2*64 in + 10 cm', '(1 m)/3 - 2 mm', '1e-3 m + 5 mm', '1/3*6 ft']) {
      const pieces = readSum(text, 'length')
      expect(pieces === null ? '' : sumExpression(pieces, 2)).toMatch(/^[\d.e+\-*/()]+$/)
    }
  })
})
