import { expect, test } from 'vitest'
import { chainOf } from '../../../src/chance/chain'
import type { InputCode } from '../../../src/chance/inputs'
import { knownParts } from '../../../src/chance/known'
import { massAt } from '../../../src/chance/masses'
import { useOf } from '../../../src/chance/nearness'
import type { ChanceCase } from '../../../src/chance/tally'
import { checkOf, ORDINARY } from '../hanger/hangerOf'

const check = checkOf(ORDINARY)
const chain = chainOf(check, knownParts(check).known)
const { solved } = check

/** The use of a part in a hanger that is the middle one but for these numbers. */
function use(key: string, code: ChanceCase, numbers: Readonly<Partial<Record<InputCode, readonly number[]>>> = {}): number {
  const z = new Float64Array(chain.size)
  for (const [input, values] of Object.entries(numbers)) values.forEach((value, i) => { z[chain.places[chain.inputs.indexOf(input as InputCode)]![i]!] = value })
  chain.draw(z)
  return useOf(chain.parts.find((part) => part.key === key)!, code)
}

const lognormal = (scatter: number): number => Math.sqrt(Math.log(1 + scatter ** 2))
const watered = 0.3 * 3 * 365.25 * 86400

test('the legs of the middle hanger, by hand', () => {
  // Two filler cords of 4.8 g/m at 4 cN/tex in each leg; one roll and one knot in ten fall short of what is counted.
  const roll = 4.8e-3 * 4e4 * Math.exp(1.2816 * lognormal(0.2))
  const knots = 0.7 * Math.exp(1.2816 * lognormal(0.12))
  const left = 0.8 * (1 - 0.088 * Math.log10(watered / 10))
  const middle = use('leg', 'watered')
  const weight = chain.weight('watered') * 9.80665
  const { path } = solved.geometry
  const tension = weight / (4 * Math.cos(path.ok ? path.angle : NaN))
  // The legs stretch a little, which leaves them a little steeper.
  expect(middle / (tension / (2 * roll * knots * left))).toBeCloseTo(1, 2)
  expect(chain.weight('watered')).toBeCloseTo(solved.potted.watered.mass.likely + solved.hangerMass.watered.likely, 9)
})

test('one input at a time', () => {
  const middle = use('leg', 'watered')
  expect(use('leg', 'watered', { roll: [1] }) / middle).toBeCloseTo(Math.exp(-lognormal(0.2)), 9)
  expect(use('gatheringTurn', 'dry', { roll: [1] }) / use('gatheringTurn', 'dry')).toBeCloseTo(Math.exp(-lognormal(0.2)), 9)
  // A fifth is lost to age; a scatter of 0.3 of that.
  expect(use('leg', 'watered', { ageing: [-1] }) / middle).toBeCloseTo(0.8 / (1 - 0.2 * 0.7), 9)
  expect(use('leg', 'watered', { duration: [1] }) / middle).toBeCloseTo((1 - 0.088 * Math.log10(watered / 10)) / (1 - 1.1 * 0.088 * Math.log10(watered / 10)), 9)
  expect(use('hook', 'watered', { 'strength.hook': [1] }) / use('hook', 'watered')).toBeCloseTo(Math.exp(-lognormal(0.25)), 9)
})

test('the leg that is tied too short bears most, whichever it is, and its own strands count', () => {
  const middle = use('leg', 'watered')
  const short = [0, 1, 2, 3].map((leg) => use('leg', 'watered', { legLengths: [0, 1, 2, 3].map((i) => (i === leg ? -2 : 0)) }))
  for (const one of short) {
    expect(one).toBeGreaterThan(1.1 * middle)
    expect(one).toBeCloseTo(short[0]!, 6)
  }
  // Both carrying strands of one leg weak: that leg decides, though it bears no more than the others.
  const weak = use('leg', 'watered', { strands: [0, 0, 0, 0, -2, -2] })
  expect(weak / middle).toBeCloseTo(Math.exp(2 * lognormal(0.2)), 6)
  // Strands that only knot bear nothing in the run.
  expect(use('leg', 'watered', { strands: [0, 0, 0, 0, 0, 0, -2, -2] })).toBeLessThan(1.5 * middle)
})

test('a weight on either side of the likely one by its own range', () => {
  const range = { low: 3, likely: 4, high: 6 }
  expect([-1.6449, 0, 1.6449].map((z) => massAt(range, z))).toEqual([3, 4, 6])
  expect(massAt(range, 9)).toBe(massAt(range, 3))
  expect(massAt({ low: 0, likely: 1, high: 1 }, -3)).toBe(0)
})

test('friction and the tension of the wraps hold the knot by its model', () => {
  const grip = (numbers: Parameters<typeof use>[2]): number => use('gatheringGrip', 'watered', numbers)
  expect(grip({ wraps: [1] }) / grip({})).toBeCloseTo(Math.exp(-lognormal(0.35)), 9)
  expect(grip({ friction: [1] })).toBeLessThan(grip({}) * Math.exp(-lognormal(0.25)))
  expect(grip({ friction: [-1] })).toBeGreaterThan(grip({}) * Math.exp(lognormal(0.25)))
})
