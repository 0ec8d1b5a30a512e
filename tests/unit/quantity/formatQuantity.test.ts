import { describe, expect, it } from 'vitest'
import { exactRatio } from '../../../src/quantity/exactRatio'
import { formatFeetInches, formatInches } from '../../../src/quantity/formatInches'
import { formatQuantity, type Precision } from '../../../src/quantity/formatQuantity'
import { formatSi } from '../../../src/quantity/formatSi'
import { nearestDouble } from '../../../src/quantity/nearestDouble'
import { readQuantity } from '../../../src/quantity/readQuantity'
import { metres } from '../../../src/quantity/si'
import { UNITS } from '../../../src/quantity/units'
import { oneOf, seededRandom, wholeBetween } from './seededRandom'

const written = (value: number, unit: Parameters<typeof formatQuantity>[0]['unit'], precision: Precision): string =>
  formatQuantity({ value, unit, precision, rounding: 'nearest', decimalMark: '.' })

const readBack = (text: string, kind: Parameters<typeof readQuantity>[1]): number => {
  const read = readQuantity(text, kind)
  if (!read.ok) throw new Error(`${text}: ${read.problem.code}`)
  return read.value
}

describe('formatQuantity', () => {
  it.each([
    [1.6256, 'in', { decimals: 0 }, '64 in'],
    [1.6256, 'm', { decimals: 2 }, '1.63 m'],
    [12.345, 'kg', { significant: 3 }, '12.3 kg'],
    [12.345, 'lb', { significant: 3 }, '27.2 lb'],
    [0.0996, 'm', { significant: 2 }, '0.10 m'],
    [9.96, 'm', { significant: 2 }, '10 m'],
    [1234.5, 'kg', { significant: 2 }, '1200 kg'],
    [-0.0254, 'in', { decimals: 1 }, '-1.0 in'],
    [-0.001, 'm', { decimals: 1 }, '0.0 m'],
    [0, 'kg', { significant: 3 }, '0.00 kg'],
    [0.62, '%', { decimals: 0 }, '62 %'],
    [7, '', { decimals: 0 }, '7'],
    [0.125, '', { decimals: 2 }, '0.13'],
    [86400, 'day', 'shortest', '1 day'],
    [3 * 31557600, 'year', 'shortest', '3 years'],
    [1.5 * 31557600, 'year', { decimals: 1 }, '1.5 years'],
    [1.6764, 'ft in', 'shortest', '5 ft 6 in'],
    [1.8282, 'ft in', { decimals: 0 }, '6 ft 0 in'],
    [1.8282, 'ft in', { decimals: 1 }, '6 ft 0.0 in'],
    [-1.6891, 'ft in', { decimals: 1 }, '-5 ft 6.5 in'],
    [5.443, 'lb oz', { decimals: 0 }, '12 lb 0 oz'],
    [Math.PI / 6, 'deg', { decimals: 2 }, '30.00 deg'],
    [1e-12, 'm', 'shortest', '1e-12 m'],
    [2.5e25, 'm', 'shortest', '2.5e25 m'],
    [0, 'N', 'shortest', '0 N'],
  ] as const)('writes %d in %s to %o', (value, unit, precision, text) => {
    expect(written(value, unit, precision)).toBe(text)
  })

  it('rounds down and up towards the smaller and the larger, but not past what is all but there', () => {
    const in1 = (value: number, rounding: 'down' | 'up', unit: 'kg' | 'lb'): string =>
      formatQuantity({ value, unit, precision: { decimals: 1 }, rounding, decimalMark: '.' })
    expect(in1(12.39, 'down', 'kg')).toBe('12.3 kg')
    expect(in1(12.31, 'up', 'kg')).toBe('12.4 kg')
    expect(in1(-12.31, 'down', 'kg')).toBe('-12.4 kg')
    expect(in1(-12.39, 'up', 'kg')).toBe('-12.3 kg')
    for (let tenths = 1; tenths <= 600; tenths++) {
      const text = `${(tenths / 10).toFixed(1)} lb`
      expect(in1(readBack(text, 'mass'), 'down', 'lb')).toBe(text)
      expect(in1(readBack(text, 'mass'), 'up', 'lb')).toBe(text)
    }
    expect(in1(0.1 * 3, 'up', 'kg')).toBe('0.3 kg')
  })

  it('writes a decimal comma that cannot be taken for a group', () => {
    const comma = (value: number, decimals: number): string =>
      formatQuantity({ value, unit: 'kg', precision: { decimals }, rounding: 'nearest', decimalMark: ',' })
    expect(comma(4.5, 1)).toBe('4,5 kg')
    expect(comma(1.25, 3)).toBe('1,2500 kg')
    expect(comma(0.25, 3)).toBe('0,250 kg')
    expect(comma(1234.25, 3)).toBe('1234,250 kg')
  })

  it('refuses what is not finite', () => {
    expect(() => written(Number.NaN, 'kg', { decimals: 1 })).toThrow(RangeError)
    expect(() => written(Infinity, 'kg', 'shortest')).toThrow(RangeError)
  })

  it.each([...UNITS.map(({ symbol, kind }) => ({ symbol, kind })), { symbol: 'ft in', kind: 'length' }, { symbol: 'lb oz', kind: 'mass' }, { symbol: '', kind: 'number' }] as const)('reads back what it wrote in $symbol', ({ symbol, kind }) => {
    const random = seededRandom(30)
    const one = readBack(symbol === 'ft in' ? '1 in' : symbol === 'lb oz' ? '1 oz' : `1 ${symbol}`, kind)
    for (let i = 0; i < 100; i++) {
      const value = (random() < 0.2 ? -1 : 1) * random() * 10 ** wholeBetween(random, -4, 5)
      const decimalMark = oneOf(random, ['.', ','] as const)
      const shortest = formatQuantity({ value, unit: symbol, precision: 'shortest', rounding: 'nearest', decimalMark })
      expect(readBack(shortest, kind), shortest).toBe(value)

      const decimals = wholeBetween(random, 0, 5)
      const text = formatQuantity({ value, unit: symbol, precision: { decimals }, rounding: 'nearest', decimalMark })
      expect(Math.abs(readBack(text, kind) - value), text).toBeLessThanOrEqual(one * 10 ** -decimals * 0.5 * (1 + 1e-9) + Math.abs(value) * 1e-15)
    }
  })

  it('writes what was typed, in as few digits', () => {
    const random = seededRandom(31)
    for (let i = 0; i < 300; i++) {
      const { symbol, kind } = oneOf(random, UNITS.filter(unit => unit.kind !== 'time'))
      const typed = `${wholeBetween(random, 1, 9999) / 10 ** wholeBetween(random, 0, 3)} ${symbol}`
      expect(written(readBack(typed, kind), symbol, 'shortest')).toBe(typed)
    }
  })
})

describe('formatSi', () => {
  it.each([
    [0.9 * 0.2, 'length', 'mm', '180 mm'],
    [0.0005, 'length', 'mm', '0.5 mm'],
    [3, 'length', 'mm', '3000 mm'],
    [100000, 'force', 'N', '100000 N'],
    [1234567, 'force', 'N', '1234567 N'],
    [0.0042, 'linearDensity', 'g/m', '4.2 g/m'],
    [1 / 3, 'length', 'mm', '333.333 mm'],
    [0.0254 * 5 / 3, 'length', 'in', '1.66667 in'],
    [2 * 86400, 'time', 'day', '2 days'],
    [86400, 'time', 'day', '1 day'],
    [8, 'count', '', '8'],
    [0, 'mass', 'kg', '0 kg'],
    [-1.5, 'mass', 'kg', '-1.5 kg'],
  ] as const)('writes %d, a %s, in %s', (value, kind, unit, text) => {
    expect(formatSi(value, unit)).toBe(text)
    expect(readQuantity(text, kind)).toMatchObject({ ok: true })
  })

  it('refuses what is not finite', () => {
    expect(() => formatSi(Number.NaN, 'mm')).toThrow(RangeError)
    expect(() => formatSi(-Infinity, '')).toThrow(RangeError)
  })
})

describe('inches as on a tape', () => {
  it.each([
    [0.1318, 16, '5 3/16 in', '5 3/16 in'],
    [0.003175, 16, '1/8 in', '1/8 in'],
    [0.0508, 16, '2 in', '2 in'],
    [0.0505, 64, '1 63/64 in', '1 63/64 in'],
    [1.6891, 16, '66 1/2 in', '5 ft 6 1/2 in'],
    [1.828, 16, '71 15/16 in', '5 ft 11 15/16 in'],
    [1.828, 4, '72 in', '6 ft 0 in'],
    [-0.1318, 16, '-5 3/16 in', '-5 3/16 in'],
    [0.0005, 16, '0.020 in', '0.020 in'],
    [0, 16, '0 in', '0 in'],
  ] as const)('%d m to 1/%d', (length, parts, inches, feet) => {
    expect(formatInches(metres(length), parts)).toBe(inches)
    expect(formatFeetInches(metres(length), parts)).toBe(feet)
  })

  it('reads back within half a part', () => {
    const random = seededRandom(32)
    for (let i = 0; i < 500; i++) {
      const length = random() * 10 ** wholeBetween(random, -4, 1)
      const parts = oneOf(random, [2, 4, 8, 16, 32, 64] as const)
      for (const text of [formatInches(metres(length), parts), formatFeetInches(metres(length), parts)]) {
        expect(Math.abs(readBack(text, 'length') - length), text).toBeLessThanOrEqual(0.0254 / parts / 2 * (1 + 1e-9))
      }
    }
  })
})

describe('exactRatio', () => {
  it('gives back every double', () => {
    const random = seededRandom(33)
    const bytes = new DataView(new ArrayBuffer(8))
    for (let i = 0; i < 3000; i++) {
      bytes.setUint32(0, random() * 2 ** 32)
      bytes.setUint32(4, random() * 2 ** 32)
      const value = bytes.getFloat64(0)
      if (Number.isFinite(value)) expect(nearestDouble(exactRatio(value))).toBe(value)
    }
    for (const value of [Number.MIN_VALUE, -Number.MAX_VALUE, 2 ** -1022, 0.1, 5]) expect(nearestDouble(exactRatio(value))).toBe(value)
    expect(exactRatio(0.1)).toEqual({ numerator: 3602879701896397n * 2n, denominator: 2n ** 56n })
  })
})
