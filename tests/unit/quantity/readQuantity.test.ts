import { describe, expect, it } from 'vitest'
import type { QuantityKind } from '../../../src/quantity/quantityKind'
import { readQuantity } from '../../../src/quantity/readQuantity'
import { INCH, POUND, STANDARD_GRAVITY } from '../../../src/quantity/si'

const valueOf = (text: string, kind: QuantityKind): unknown => {
  const read = readQuantity(text, kind)
  return read.ok ? read.value : read.problem
}

const unitRead = (text: string, kind: QuantityKind): string => {
  const read = readQuantity(text, kind)
  return read.ok ? read.unit : read.problem.code
}

describe('numbers', () => {
  // Right column by hand; an inch is 127/5000 m, a sixteenth of it 127/80000 m.
  it.each([
    ['4.5 m', 4.5],
    ['4,5 m', 4.5],
    ['.5 m', 0.5],
    [',5 m', 0.5],
    ['007 m', 7],
    ['+3 m', 3],
    ['0,500 m', 0.5],
    ['1.250 m', 1.25],
    ['12,50 m', 12.5],
    ['1234,567 m', 1234.567],
    ['1 000 m', 1000],
    ['1\u00a0000 m', 1000],
    ['1\u2009000 m', 1000],
    ['1\u202f000 000,25 m', 1000000.25],
    ['12 345.5 m', 12345.5],
    ['1,000.5 m', 1000.5],
    ['1.000,5 m', 1000.5],
    ['1,000,000 m', 1e6],
    ['1.000.000 m', 1e6],
    ['1e3 m', 1000],
    ['1.5E-3 m', 0.0015],
    ['2,5e+1m', 25],
    ['3/16 in', 3 * 127 / 80000],
    ['5 3/16 in', 83 * 127 / 80000],
    ['5-3/16 in', 83 * 127 / 80000],
    ['5\u20133\u204416 in', 83 * 127 / 80000],
    ['½ in', 8 * 127 / 80000],
    ['5½ in', 88 * 127 / 80000],
    ['5 ⅜ in', 86 * 127 / 80000],
    ['5⅞in', 94 * 127 / 80000],
    ['1 000 3/16 in', 16003 * 127 / 80000],
    ['7/3 m', 7 / 3],
    ['2 ⅔ m', 8 / 3],
    ['1-100/200 m', 1.5],
    ['0 0/16 in', 0],
  ])('reads %s', (text, metres) => {
    expect(valueOf(text, 'length')).toBe(metres)
  })

  it.each([
    ['-5 kg', -5],
    ['\u22125 kg', -5],
    ['\u20135 kg', -5],
    ['- 5 kg', -5],
    ['-5 1/2 kg', -5.5],
    ['-½ kg', -0.5],
  ])('keeps the sign of %s', (text, kilograms) => {
    expect(valueOf(text, 'mass')).toBe(kilograms)
  })

  it('never gives a negative zero', () => {
    for (const text of ['-0 kg', '-0.0 lb', '-0/7 oz', '-1e-999 kg']) expect(valueOf(text, 'mass'), text).toBe(0)
  })

  it.each(['abc', 'kg', '.', ',', '-', '+', '--5 kg', '5. kg', '1,,5 kg', '1.2.3 kg', '12 5 kg', '1 00 kg', '1 0000 kg', '1000 000 kg', '0 500 kg',
    '1,00,000 kg', '1,000.000.5 kg', '3/4/5 kg', '1.5/2 kg', '2 4/3 kg', '2 3/3 kg', '5.5 3/16 kg', '1,5½ kg', '½½ kg', '½ ½ kg', '5½ 1/2 kg', '½/2 kg', '3/½ kg', '3 / 16 kg',
    '٣ kg', '５ kg', '$5 kg', 'five kg', '0x10 kg', 'NaN kg', 'Infinity kg', '5 − 3 kg'])('refuses %s as a number', (text) => {
    expect(readQuantity(text, 'mass')).toMatchObject({ ok: false })
  })

  it.each(['abc', 'kg', '12 5 kg', '3/4/5 kg', '2 4/3 kg', 'NaN kg'])('names %s as typed', (text) => {
    expect(valueOf(`  ${text} `, 'mass')).toEqual({ code: 'NOT_A_NUMBER', text })
  })

  it.each([
    ['1,250 kg', '1250 kg', '1.250 kg'],
    ['-12,000lb', '-12000lb', '-12.000lb'],
    ['1 100/200 kg', '1100/200 kg', '1-100/200 kg'],
    ['1 000/3 kg', '1000/3 kg', '1-000/3 kg'],
    ['1,250 1/2 kg', '1250 1/2 kg', '1.250 1/2 kg'],
  ])('refuses %s, which can be read in two ways, and writes out both', (text, one, other) => {
    expect(valueOf(text, 'mass')).toEqual({ code: 'AMBIGUOUS_NUMBER', text, readings: [one, other] })
  })

  it('gives readings that are themselves read, and differ', () => {
    for (const text of ['1,250 kg', '-999,999 oz', '1 100/200 lb', '2 001/003 kg']) {
      const read = readQuantity(text, 'mass')
      if (read.ok || read.problem.code !== 'AMBIGUOUS_NUMBER') throw new Error(`${text} was not ambiguous`)
      const [one, other] = read.problem.readings.map(reading => readQuantity(reading, 'mass'))
      expect(one, text).toMatchObject({ ok: true })
      expect(other, text).toMatchObject({ ok: true })
      expect(one, text).not.toEqual(other)
    }
  })

  it('refuses division by zero, and what no double can hold', () => {
    expect(valueOf('3/0 in', 'length')).toEqual({ code: 'DIVISION_BY_ZERO', text: '3/0 in' })
    expect(valueOf('5 3/00 in', 'length')).toEqual({ code: 'DIVISION_BY_ZERO', text: '5 3/00 in' })
    expect(valueOf('0/0 in', 'length')).toEqual({ code: 'DIVISION_BY_ZERO', text: '0/0 in' })
    expect(valueOf('1e400 kg', 'mass')).toEqual({ code: 'NOT_FINITE', text: '1e400 kg' })
    expect(valueOf('-1e99999999999 kg', 'mass')).toEqual({ code: 'NOT_FINITE', text: '-1e99999999999 kg' })
    expect(valueOf('1e308 kN', 'force')).toEqual({ code: 'NOT_FINITE', text: '1e308 kN' })
    expect(valueOf('1e310 g', 'mass')).toBe(1e307)
  })

  it('takes whole numbers alone for a count', () => {
    expect(valueOf('12', 'count')).toBe(12)
    expect(valueOf('1 200', 'count')).toBe(1200)
    expect(valueOf('8/2', 'count')).toBe(4)
    expect(valueOf('4.0', 'count')).toBe(4)
    expect(valueOf('4.5', 'count')).toEqual({ code: 'NOT_WHOLE', text: '4.5' })
    expect(valueOf('4 ½', 'count')).toEqual({ code: 'NOT_WHOLE', text: '4 ½' })
    expect(valueOf('4 strands', 'count')).toEqual({ code: 'UNKNOWN_UNIT', unit: 'strands', allowed: [], suggestion: null })
    expect(valueOf('4 kg', 'count')).toMatchObject({ code: 'WRONG_KIND', unit: 'kg', unitKind: 'mass', askedKind: 'count', allowed: [] })
  })

  it('takes per cent for a ratio and not for a plain number', () => {
    expect(valueOf('0.3', 'ratio')).toBe(0.3)
    expect(valueOf('30 %', 'ratio')).toBe(0.3)
    expect(valueOf('62.5%', 'ratio')).toBe(0.625)
    expect(valueOf('3/8', 'number')).toBe(0.375)
    expect(valueOf('30 %', 'number')).toMatchObject({ code: 'WRONG_KIND', unit: '%' })
  })
})

describe('units', () => {
  it.each<[string, QuantityKind, number, string]>([
    ['64 in', 'length', 1.6256, 'in'],
    ['64"', 'length', 1.6256, 'in'],
    ['64″', 'length', 1.6256, 'in'],
    ['64 ”', 'length', 1.6256, 'in'],
    ['64\'\'', 'length', 1.6256, 'in'],
    ['64 inch', 'length', 1.6256, 'in'],
    ['64 INCHES', 'length', 1.6256, 'in'],
    ['64 in.', 'length', 1.6256, 'in'],
    ['3\'', 'length', 0.9144, 'ft'],
    ['3 feet', 'length', 0.9144, 'ft'],
    ['3 foot', 'length', 0.9144, 'ft'],
    ['1 yd', 'length', 0.9144, 'yd'],
    ['85 cm', 'length', 0.85, 'cm'],
    ['3mm', 'length', 0.003, 'mm'],
    ['3\u00a0mm', 'length', 0.003, 'mm'],
    ['5 Kg', 'mass', 5, 'kg'],
    ['5 KG', 'mass', 5, 'kg'],
    ['10 lbs', 'mass', 4.5359237, 'lb'],
    ['10 LB', 'mass', 4.5359237, 'lb'],
    ['16 oz', 'mass', 0.45359237, 'oz'],
    ['10 lbf', 'force', 44.482216152605, 'lbf'],
    ['1 kgf', 'force', 9.80665, 'kgf'],
    ['12 daN', 'force', 120, 'daN'],
    ['1.5 kN', 'force', 1500, 'kN'],
    ['180°', 'angle', Math.PI, 'deg'],
    ['90 º', 'angle', Math.PI / 2, 'deg'],
    ['60 deg', 'angle', Number('1.04719755119659774615421446109'), 'deg'],
    ['0.25 rad', 'angle', 0.25, 'rad'],
    ['18 km/h', 'speed', 5, 'km/h'],
    ['18 km / h', 'speed', 5, 'km/h'],
    ['10 mph', 'speed', 4.4704, 'mph'],
    ['4.2 g/m', 'linearDensity', 0.0042, 'g/m'],
    ['4200 tex', 'linearDensity', 0.0042, 'tex'],
    ['4.2 ktex', 'linearDensity', 0.0042, 'ktex'],
    ['30.48 lb/100 ft', 'linearDensity', 0.45359237, 'lb/100 ft'],
    ['30.48 lbs / 100ft', 'linearDensity', 0.45359237, 'lb/100 ft'],
    ['0.9144 oz/yd', 'linearDensity', 0.028349523125, 'oz/yd'],
    ['2 h', 'time', 7200, 'h'],
    ['1 d', 'time', 86400, 'day'],
    ['3 Days', 'time', 259200, 'day'],
    ['2 weeks', 'time', 1209600, 'week'],
    ['12 months', 'time', 31557600, 'month'],
    ['1 year', 'time', 31557600, 'year'],
    ['2.5 L', 'volume', 0.0025, 'l'],
    ['250 mL', 'volume', 0.00025, 'ml'],
    ['1 US gal', 'volume', 0.003785411784, 'US gal'],
    ['1 us  gallon', 'volume', 0.003785411784, 'US gal'],
    ['231 in³', 'volume', 0.003785411784, 'in3'],
    ['231 in^3', 'volume', 0.003785411784, 'in3'],
    ['650 kg/m³', 'density', 650, 'kg/m3'],
    ['0.65 kg/L', 'density', 650, 'kg/l'],
    ['650 g/l', 'density', 650, 'g/l'],
    ['1 psi', 'pressure', Number('6894.75729316836133672267344534'), 'psi'],
    ['2 N/mm2', 'pressure', 2e6, 'MPa'],
  ])('reads %s as %s', (text, kind, value, unit) => {
    expect(readQuantity(text, kind)).toEqual({ ok: true, kind, value, unit })
  })

  it('agrees with the constants the core computes with', () => {
    expect(valueOf('1 in', 'length')).toBe(INCH)
    expect(valueOf('1 lb', 'mass')).toBe(POUND)
    expect(valueOf('1 kgf', 'force')).toBe(STANDARD_GRAVITY)
  })

  it.each([
    ['5\'6"', 66], ['5\' 6"', 66], ['5′6″', 66], ['5’ 6”', 66], ['5\'6\'\'', 66], ['5\'-6"', 66], ['5 ft 6 in', 66], ['5ft6in', 66], ['5 feet 6 inches', 66],
    ['5 ft - 6 in', 66], ['5 ft 6"', 66], ['5\' 6 1/2"', 66.5], ['5\'6½"', 66.5], ['5 ft 6 1/2 in', 66.5], ['5 ft 6-1/2 in', 66.5], ['5 ft 6,5 in', 66.5], ['5\' ½"', 60.5],
    ['5 ft 0 in', 60], ['0 ft 7 in', 7], ['-5 ft 6 in', -66], ['1 000 ft 11.5 in', 12011.5],
  ])('reads %s as feet and inches', (text, inches) => {
    expect(readQuantity(text, 'length')).toEqual({ ok: true, kind: 'length', value: inches * 127 / 5000, unit: 'ft in' })
  })

  it('reads pounds and ounces', () => {
    expect(readQuantity('12 lb 4 oz', 'mass')).toEqual({ ok: true, kind: 'mass', value: 12.25 * POUND, unit: 'lb oz' })
    expect(readQuantity('1 lb 15½ oz', 'mass')).toMatchObject({ ok: true, value: 0.8930099784375 })
  })

  it('refuses parts that do not fit together', () => {
    expect(valueOf('5 ft 12 in', 'length')).toEqual({ code: 'PART_TOO_LARGE', text: '12 in', unit: 'in', below: 12 })
    expect(valueOf('2 lb 16 oz', 'mass')).toEqual({ code: 'PART_TOO_LARGE', text: '16 oz', unit: 'oz', below: 16 })
    expect(valueOf('5.5 ft 6 in', 'length')).toEqual({ code: 'NOT_A_NUMBER', text: '5.5 ft 6 in' })
    expect(valueOf('5½ ft 6 in', 'length')).toEqual({ code: 'NOT_A_NUMBER', text: '5½ ft 6 in' })
    expect(valueOf('5e1 ft 6 in', 'length')).toEqual({ code: 'NOT_A_NUMBER', text: '5e1 ft 6 in' })
    expect(valueOf('5\' 6', 'length')).toEqual({ code: 'NO_UNIT', number: '6', allowed: ['in'] })
    expect(valueOf('5 ft 6/0 in', 'length')).toEqual({ code: 'DIVISION_BY_ZERO', text: '5 ft 6/0 in' })
    expect(valueOf('5 ft 6 cm', 'length')).toEqual({ code: 'TRAILING_TEXT', text: '6 cm' })
    expect(valueOf('1 m 20 cm', 'length')).toEqual({ code: 'TRAILING_TEXT', text: '20 cm' })
    expect(valueOf('5 ft 6 in 7', 'length')).toMatchObject({ code: 'TRAILING_TEXT' })
    expect(valueOf('5 ft 6 in', 'angle')).toMatchObject({ code: 'WRONG_KIND', unit: 'ft in', unitKind: 'length', askedKind: 'angle' })
    expect(valueOf('5 lb 6 oz', 'force')).toMatchObject({ code: 'WRONG_KIND', unit: 'lb oz', hint: 'lbf' })
  })

  it('never guesses a missing unit, not even of nothing', () => {
    expect(valueOf('4.5', 'mass')).toEqual({ code: 'NO_UNIT', number: '4.5', allowed: ['kg', 'g', 'lb', 'oz'] })
    expect(valueOf('0', 'length')).toEqual({ code: 'NO_UNIT', number: '0', allowed: ['mm', 'cm', 'm', 'in', 'ft', 'yd'] })
    expect(valueOf(' -3/16 ', 'force')).toEqual({ code: 'NO_UNIT', number: '-3/16', allowed: ['N', 'daN', 'kN', 'kgf', 'lbf'] })
  })

  it.each<[string, QuantityKind, string, string | null]>([
    ['5 mM', 'length', 'mM', 'mm'],
    ['5 Mm', 'length', 'Mm', 'mm'],
    ['5 M', 'length', 'M', 'm'],
    ['5 kG', 'mass', 'kG', 'kg'],
    ['5 KN', 'force', 'KN', 'kN'],
    ['5 n', 'force', 'n', 'N'],
    ['5 mpa', 'pressure', 'mpa', 'MPa'],
    ['5 mPa', 'pressure', 'mPa', 'MPa'],
    ['2 gal', 'volume', 'gal', 'US gal'],
    ['5 kp', 'force', 'kp', 'kgf'],
    ['5 kilos', 'mass', 'kilos', 'kg'],
    ['5 km', 'length', 'km', null],
    ['5 t', 'mass', 't', null],
    ['5 kp', 'mass', 'kp', null],
    ['5 bananas', 'mass', 'bananas', null],
    ['5 (kg)', 'mass', '(kg)', null],
    ['5 __proto__', 'mass', '__proto__', null],
    ['5 constructor', 'length', 'constructor', null],
  ])('refuses the unit of %s, asked %s', (text, kind, unit, suggestion) => {
    expect(valueOf(text, kind)).toMatchObject({ code: 'UNKNOWN_UNIT', unit, suggestion })
  })

  it.each<[string, QuantityKind, QuantityKind, string | null]>([
    ['10 lb', 'mass', 'force', 'lbf'],
    ['10 oz', 'mass', 'force', 'lbf'],
    ['10 kg', 'mass', 'force', 'kgf'],
    ['10 g', 'mass', 'force', 'kgf'],
    ['10 lbf', 'force', 'mass', 'lb'],
    ['10 kgf', 'force', 'mass', 'kg'],
    ['10 N', 'force', 'mass', 'kg'],
    ['10 kN', 'force', 'mass', 'kg'],
    ['12 g', 'mass', 'linearDensity', 'g/m'],
    ['12 kg', 'mass', 'length', null],
    ['12 m', 'length', 'time', null],
    ['12 "', 'length', 'angle', null],
    ['30 %', 'ratio', 'mass', null],
  ])('refuses %s, a %s, where a %s is asked', (text, unitKind, askedKind, hint) => {
    expect(valueOf(text, askedKind)).toMatchObject({ code: 'WRONG_KIND', unitKind, askedKind, hint })
  })

  it('gives hints and suggestions that are themselves units of the kind asked', () => {
    for (const [text, kind] of [['1 lb', 'force'], ['1 kN', 'mass'], ['1 oz', 'linearDensity'], ['1 gal', 'volume'], ['1 kmh', 'speed'], ['1 cc', 'volume'], ['1 yr', 'time']] as const) {
      const read = readQuantity(text, kind)
      const meant = read.ok ? null : read.problem.code === 'WRONG_KIND' ? read.problem.hint : read.problem.code === 'UNKNOWN_UNIT' ? read.problem.suggestion : null
      expect(unitRead(`1 ${meant}`, kind), text).toBe(meant)
    }
  })
})

describe('the text as a whole', () => {
  it('refuses nothing, too much, and what follows a quantity', () => {
    for (const blank of ['', ' ', '\t\n', '\u00a0']) expect(valueOf(blank, 'mass')).toEqual({ code: 'EMPTY' })
    expect(valueOf(`${'1'.repeat(57)} kg`, 'mass')).toBe(Number('1'.repeat(57)))
    expect(valueOf(`${'1'.repeat(58)} kg`, 'mass')).toEqual({ code: 'TOO_LONG', length: 61, limit: 60 })
    expect(valueOf(`${' '.repeat(500)}5 kg${' '.repeat(500)}`, 'mass')).toBe(5)
    expect(valueOf('5 kg or so', 'mass')).toEqual({ code: 'TRAILING_TEXT', text: 'or so' })
    expect(valueOf('5 kg 3', 'mass')).toEqual({ code: 'TRAILING_TEXT', text: '3' })
    expect(valueOf('5 kg 6 kg', 'mass')).toEqual({ code: 'TRAILING_TEXT', text: '6 kg' })
  })
})
