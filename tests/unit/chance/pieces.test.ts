import { describe, expect, test } from 'vitest'
import { readChance, solve } from '#core'
import { bundleStrength } from '../../../src/chance/bundle'
import { distributionOf } from '../../../src/chance/distribution'
import type { InputCode } from '../../../src/chance/inputs'
import { newLayout } from '../../../src/chance/layout'
import { massesOf } from '../../../src/chance/masses'
import { chunkGenerators, fillNormals } from '../../../src/chance/normals'
import { realStrength } from '../../../src/chance/partMember'
import { hangsIn, newPotNow } from '../../../src/chance/potNow'
import type { State } from '../../../src/load/states'
import { slingInput, tensionsOf } from '../../../src/check/slingBattery'
import { solveSling } from '../../../src/statics/sling/solveSling'
import { checkOf, hangerOf, ORDINARY } from '../hanger/hangerOf'
import { without } from './drawn'

describe('a pot hung by its numbers', () => {
  const solved = solve(hangerOf({ ...without(ORDINARY, 'weighed.mass', 'weighed.state'), 'seat.offset': '8 mm' }))
  const layout = newLayout()
  const own = massesOf(solved, layout, new Map())
  const now = newPotNow()
  const stretch = layout.take('stretch', 1)
  const { hang } = hangsIn(solved, now, layout, { stretch }, () => layout.places().flat())
  const massIn = (z: Float64Array) => (state: State): number => own(z, state)

  test('the middle hanger has the likely weights and even legs', () => {
    const z = new Float64Array(layout.size())
    hang(z, massIn(z))
    const likely = solved.potted.watered.mass.likely + solved.hangerMass.watered.likely
    expect(massIn(z)('watered')).toBeCloseTo(likely, 9)
    const [first, ...others] = now.tensions.dry
    for (const tension of others) expect(tension).toBeCloseTo(first!, 4)
    expect(now.offset).toBe(0)
  })

  test('tensions just watered lie between dry and flooded as a solve of their own would have them, slack legs and all', () => {
    const z = new Float64Array(layout.size())
    const generator = chunkGenerators(3)(0)
    const placesOf = (input: InputCode): readonly number[] => layout.places()[layout.inputs().indexOf(input)]!
    let slack = 0
    for (let hanger = 0; hanger < 40; hanger += 1) {
      fillNormals(generator, z)
      hang(z, massIn(z))
      const longer = placesOf('legLengths').map((place) => (solved.hanger.answers['make.tolerance'] / 2) * z[place]!)
      const [x, y] = placesOf('offset').map((place) => 0.004 * z[place]!)
      const axial = stiffnessOf(z[stretch]!)
      const battery = { plan: solved.plan!, mass: massIn(z)('watered'), stiffness: axial, bedded: axial, centre: 0, offset: 0, tolerance: 0 }
      const exact = tensionsOf(solveSling(slingInput(battery, axial, [x!, y!, solved.loads.watered.centre + now.rise], longer)))
      if (exact.some((tension) => tension < 1e-6)) slack += 1
      exact.forEach((tension, i) => { expect(Math.abs(now.tensions.watered[i]! - tension)).toBeLessThan(0.015 * Math.max(...exact)) })
    }
    expect([slack > 0, slack < 40]).toEqual([true, true])
  })

  /** First-load stiffness of a leg, times the root of three, times what is drawn: logarithm 0.34 wide as scatter. */
  function stiffnessOf(z: number): number {
    const first = (2 * solved.cord.likely!) / 0.17
    return first * Math.sqrt(3) * Math.exp(Math.sqrt(Math.log(1 + 0.34 ** 2)) * z)
  }
})

test('strands share what is left of them', () => {
  expect(bundleStrength(Float64Array.of(5), 1)).toBe(5)
  expect(bundleStrength(Float64Array.of(1, 10), 2)).toBe(10)
  expect(bundleStrength(Float64Array.of(9, 10, 8, 100), 3)).toBe(24)
})

test('real strength leaves out reserve, low value and what may be asked for a moment', () => {
  const { links } = checkOf(ORDINARY)
  const fixing = links.find((l) => l.id === 'fixing.ultimateRoute.watered')!
  const duration = fixing.factors.find((f) => f.code === 'duration')!.value
  expect(realStrength(fixing)).toBeCloseTo(fixing.capacity!.value * duration, 9)
  const hook = links.find((l) => l.id === 'hook.rated.bump')!
  expect(realStrength(hook)).toBeCloseTo(40 * 9.80665, 6)
})

describe('how numbers are spread', () => {
  test('quantiles lie between neighbours, and 1 is an edge of a scale of ratios', () => {
    const { quantiles, edges, counts, least, most } = distributionOf([0.5, 0.25, 2, 1, 4], '1', true)!
    expect([quantiles.p25, quantiles.p50, quantiles.p75, least, most]).toEqual([0.5, 1, 2, 0.25, 4])
    expect(edges.some((edge) => Math.abs(edge - 1) < 1e-12)).toBe(true)
    expect(counts.reduce((a, b) => a + b, 0)).toBe(5)
  })

  test('what never varies has a bin; nothing has no spread', () => {
    expect(distributionOf([3, 3, 3], 'kg', false)!.counts.reduce((a, b) => a + b, 0)).toBe(3)
    expect(distributionOf([1, 1], '1', true)!.edges.length).toBeGreaterThan(1)
    expect(distributionOf([], 'kg', false)).toBeNull()
  })
})

describe('numbers as typed', () => {
  test.each(['', ' ', '0', '-5', '1.5', '1e4', '0x10', 'ten', '200001', '10,000'])('“%s” hangers', (typed) => {
    expect(readChance(typed, '1')).toEqual({ ok: false, problems: [{ code: 'BAD_SAMPLES', given: typed, most: 200_000 }] })
  })

  test('a number with blanks round it, and both wrong at once', () => {
    expect(readChance(' 5000 ', '0')).toEqual({ ok: true, samples: 5000, seed: 0 })
    const both = readChance('0', '-1')
    expect(both.ok ? [] : both.problems.map((p) => p.code)).toEqual(['BAD_SAMPLES', 'BAD_SEED'])
  })
})
