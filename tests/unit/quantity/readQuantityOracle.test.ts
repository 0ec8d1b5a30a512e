import { all, create, type BigNumber, type FactoryFunctionMap } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { nearestDouble } from '../../../src/quantity/nearestDouble'
import { ratio } from '../../../src/quantity/ratio'
import { readQuantity } from '../../../src/quantity/readQuantity'
import { UNITS, type UnitSymbol } from '../../../src/quantity/units'
import { oneOf, seededRandom, wholeBetween } from './seededRandom'

// mathjs in 64-digit decimals, so that its last digit as a double is the correctly rounded one.
const math = create(all as FactoryFunctionMap, { number: 'BigNumber', precision: 64 })

/** What mathjs calls our units. Its psi is given to 11 figures only, so it is asked for lbf/in^2. */
const NAMES: Readonly<Record<UnitSymbol, string | null>> = {
  'mm': 'mm', 'cm': 'cm', 'm': 'm', 'in': 'in', 'ft': 'ft', 'yd': 'yd',
  'kg': 'kg', 'g': 'g', 'lb': 'lb', 'oz': 'oz',
  'N': 'N', 'daN': 'daN', 'kN': 'kN', 'kgf': 'kgf', 'lbf': 'lbf',
  'deg': 'deg', 'rad': 'rad',
  'm/s': 'm/s', 'km/h': 'km/h', 'mph': 'mi/h',
  'g/m': 'g/m', 'kg/m': 'kg/m', 'tex': 'g/km', 'ktex': 'kg/km', 'lb/100 ft': 'lb/ft', 'oz/yd': 'oz/yd',
  's': 's', 'min': 'minute', 'h': 'hour', 'day': 'day', 'week': 'week', 'month': 'month', 'year': 'year',
  'l': 'l', 'ml': 'ml', 'cm3': 'cm^3', 'm3': 'm^3', 'US gal': 'gal', 'in3': 'in^3',
  'kg/m3': 'kg/m^3', 'kg/l': 'kg/l', 'g/l': 'g/l', 'g/cm3': 'g/cm^3', 'lb/ft3': 'lb/ft^3',
  'Pa': 'Pa', 'kPa': 'kPa', 'MPa': 'MPa', 'GPa': 'GPa', 'psi': 'lbf/in^2',
  '%': null,
}
const SI: Readonly<Record<string, string>> = {
  length: 'm', mass: 'kg', force: 'N', angle: 'rad', speed: 'm/s', linearDensity: 'kg/m', time: 's', volume: 'm^3', density: 'kg/m^3', pressure: 'Pa',
}

function oracle(number: BigNumber, symbol: UnitSymbol, kind: string): number {
  const counted = symbol === 'lb/100 ft' ? number.div(100) : number
  const si = math.unit(counted, NAMES[symbol] ?? '').toNumeric(SI[kind] ?? '')
  return Number(si.toString())
}

const units = UNITS.filter(({ symbol }) => NAMES[symbol] !== null)

describe('against mathjs in 64 digits, to the last digit', () => {
  it.each(units)('$symbol, in decimals', ({ symbol, kind }) => {
    const random = seededRandom(20)
    for (let i = 0; i < 60; i++) {
      const decimals = wholeBetween(random, 0, 4)
      const number = (wholeBetween(random, 1, 10 ** wholeBetween(random, 1, 7)) / 10 ** decimals).toFixed(decimals)
      const typed = number.replace('.', decimals === 3 ? '.' : oneOf(random, ['.', ',']))
      expect(readQuantity(`${typed} ${symbol}`, kind), `${typed} ${symbol}`)
        .toEqual({ ok: true, kind, unit: symbol, value: oracle(math.bignumber(number), symbol, kind) })
    }
  })

  it.each(units)('$symbol, in fractions', ({ symbol, kind }) => {
    const random = seededRandom(21)
    for (let i = 0; i < 30; i++) {
      const below = oneOf(random, [2, 3, 4, 7, 8, 16, 32, 64, 99])
      const above = wholeBetween(random, 1, below - 1)
      const whole = wholeBetween(random, 1, 90)
      const number = math.bignumber(above).div(below).add(whole)
      expect(readQuantity(`${whole} ${above}/${below} ${symbol}`, kind), `${whole} ${above}/${below} ${symbol}`)
        .toEqual({ ok: true, kind, unit: symbol, value: oracle(number, symbol, kind) })
    }
  })

  it('feet and inches', () => {
    const random = seededRandom(22)
    for (let i = 0; i < 200; i++) {
      const [feet, inches, sixteenths] = [wholeBetween(random, 0, 40), wholeBetween(random, 0, 11), wholeBetween(random, 1, 15)]
      const all = math.bignumber(String(feet * 12 + inches + sixteenths / 16))
      const read = readQuantity(`${feet}' ${inches} ${sixteenths}/16"`, 'length')
      expect(read, `${feet} ${inches} ${sixteenths}`).toMatchObject({ ok: true, value: oracle(all, 'in', 'length') })
    }
  })
})

describe('nearestDouble', () => {
  it('rounds as the engine reads decimals, over all sizes of double', () => {
    const random = seededRandom(23)
    for (let i = 0; i < 5000; i++) {
      const digits = Array.from({ length: wholeBetween(random, 1, 30) }, () => wholeBetween(random, 0, 9)).join('')
      const exponent = wholeBetween(random, -345, 300)
      const whole = BigInt(digits)
      const exact = exponent < 0 ? ratio(whole, 10n ** BigInt(-exponent)) : ratio(whole * 10n ** BigInt(exponent), 1n)
      expect(nearestDouble(exact), `${digits}e${exponent}`).toBe(Number(`${digits}e${exponent}`))
    }
  })

  it('sends ties to the even neighbour, and just beyond a tie to the nearer', () => {
    const half = 2n ** 53n
    expect(nearestDouble(ratio(half + 1n, 1n))).toBe(2 ** 53)
    expect(nearestDouble(ratio(half + 3n, 1n))).toBe(2 ** 53 + 4)
    expect(nearestDouble(ratio((half + 1n) * 10n ** 30n + 1n, 10n ** 30n))).toBe(2 ** 53 + 2)
    expect(nearestDouble(ratio(-(half + 1n) * 10n ** 30n + 1n, 10n ** 30n))).toBe(-(2 ** 53))
    expect(nearestDouble(ratio(1n, 2n ** 1075n))).toBe(0)
    expect(nearestDouble(ratio(3n, 2n ** 1075n))).toBe(2 * Number.MIN_VALUE)
    expect(nearestDouble(ratio(2n ** 1024n - 2n ** 970n, 1n))).toBe(Infinity)
    expect(nearestDouble(ratio(2n ** 1024n - 2n ** 970n - 1n, 1n))).toBe(Number.MAX_VALUE)
  })
})
