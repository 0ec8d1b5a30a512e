import { describe, expect, it } from 'vitest'
import type { QuantityKind } from '../../../src/quantity/quantityKind'
import { readQuantity } from '../../../src/quantity/readQuantity'
import { stepQuantity } from '../../../src/quantity/stepQuantity'
import { oneOf, seededRandom, wholeBetween } from './seededRandom'

describe('stepQuantity', () => {
  it.each<[string, QuantityKind, string, string]>([
    ['4.5 kg', 'mass', '4.6 kg', '4.4 kg'],
    ['4,5kg', 'mass', '4,6kg', '4,4kg'],
    ['12 lbs', 'mass', '13 lbs', '11 lbs'],
    ['9.9 m', 'length', '10.0 m', '9.8 m'],
    ['.5 in', 'length', '0.6 in', '0.4 in'],
    ['0.50 in', 'length', '0.51 in', '0.49 in'],
    ['999 999 g', 'mass', '1 000 000 g', '999 998 g'],
    ['1 000 g', 'mass', '1 001 g', '999 g'],
    ['1,000.5 kg', 'mass', '1000.6 kg', '1000.4 kg'],
    ['1,000,000 g', 'mass', '1000001 g', '999999 g'],
    ['1.5e3 N', 'force', '1.6e3 N', '1.4e3 N'],
    ['3/16 in', 'length', '4/16 in', '2/16 in'],
    ['15/16 in', 'length', '1 0/16 in', '14/16 in'],
    ['1 0/16 in', 'length', '1 1/16 in', '15/16 in'],
    ['5 3/16 in', 'length', '5 4/16 in', '5 2/16 in'],
    ['5½"', 'length', '6 0/2"', '5 0/2"'],
    ['-5 3/16 in', 'length', '-5 2/16 in', '-5 4/16 in'],
    ['1-99/200 in', 'length', '1-100/200 in', '1-98/200 in'],
    ['5 ft 6 in', 'length', '5 ft 7 in', '5 ft 5 in'],
    ['5\'11"', 'length', '6\'0"', '5\'10"'],
    ['5\'-6 1/2"', 'length', '5\'-7 1/2"', '5\'-5 1/2"'],
    ['6 ft 0.25 in', 'length', '6 ft 1.25 in', '5 ft 11.25 in'],
    ['-5 ft 0 in', 'length', '-4 ft 11 in', '-5 ft 1 in'],
    ['0 ft 0 in', 'length', '0 ft 1 in', '-0 ft 1 in'],
    ['12 lb 15 oz', 'mass', '13 lb 0 oz', '12 lb 14 oz'],
    ['0 kg', 'mass', '1 kg', '-1 kg'],
    ['-1 kg', 'mass', '0 kg', '-2 kg'],
    ['4', 'count', '5', '3'],
    ['62 %', 'ratio', '63 %', '61 %'],
    ['30°', 'angle', '31°', '29°'],
    ['1 US gal', 'volume', '2 US gal', '0 US gal'],
    ['10 lb/100 ft', 'linearDensity', '11 lb/100 ft', '9 lb/100 ft'],
  ])('%s', (text, kind, higher, lower) => {
    expect(stepQuantity(text, kind, 1)).toBe(higher)
    expect(stepQuantity(text, kind, -1)).toBe(lower)
  })

  it('adds a digit rather than write what could be taken for a group', () => {
    expect(stepQuantity('0,999 kg', 'mass', 1)).toBe('1,0000 kg')
  })

  it('gives nothing where there is nothing to step', () => {
    for (const text of ['', 'abc', '4.5', '1,250 kg', '5 lbf', '3/0 kg', `${'9'.repeat(57)} kg`]) {
      expect(stepQuantity(text, 'mass', 1), text).toBeNull()
    }
    expect(stepQuantity('4.0', 'count', 1)).toBeNull()
  })

  it('up and down again is where it was, and up is more', () => {
    const random = seededRandom(40)
    const number = (): string => oneOf(random, [
      () => String(wholeBetween(random, 0, 3000)),
      () => (random() * 100).toFixed(wholeBetween(random, 1, 4)),
      () => (random() * 100).toFixed(2).replace('.', ','),
      () => `${wholeBetween(random, 0, 7)} ${wholeBetween(random, 0, 15)}/16`,
      () => `${wholeBetween(random, 1, 7)}/8`,
      () => `${wholeBetween(random, 1, 999)} ${String(wholeBetween(random, 0, 999)).padStart(3, '0')}`,
      () => `${wholeBetween(random, 0, 9)} ft ${wholeBetween(random, 0, 11)}`,
    ])()
    for (let i = 0; i < 1000; i++) {
      const text = `${random() < 0.2 ? '-' : ''}${number()} in`
      const up = stepQuantity(text, 'length', 1) ?? ''
      const back = stepQuantity(up, 'length', -1) ?? ''
      const [start, more, again] = [text, up, back].map(each => readQuantity(each, 'length'))
      if (!start?.ok || !more?.ok || !again?.ok) throw new Error(`${text} -> ${up} -> ${back}`)
      expect(more.value, text).toBeGreaterThan(start.value)
      expect(again.value, text).toBe(start.value)
      expect(more.unit, text).toBe(start.unit)
    }
  })
})
