import { describe, expect, test } from 'vitest'
import { potOutline, type OutlineAnswers } from '../../../src/load/potOutline'
import { solidBetween } from '../../../src/load/solid'
import type { Outside } from './solidOf'

// Each shape from its own description, not from the core's: half width and half length at a height, m, with a
// wall taken off square to an ellipse's axes, and from a straight side along the level.
type Half = (z: number) => readonly [across: number, along: number]
interface Described {
  readonly answers: Outside
  readonly form: number
  readonly outside: Half
  readonly inside: Half
}

const WALL = 0.008
const measures = (rim: number, base: number, height: number): Outside =>
  ({ 'pot.shape': 'taperedRound', 'pot.rim': 2 * rim, 'pot.base': 2 * base, 'pot.height': height, 'pot.length': NaN, 'pot.belly': NaN, 'pot.bellyHeight': NaN })
const both = (r: (z: number) => number): Half => (z) => [r(z), r(z)]
const ellipse = (wide: number, tall: number, level: number) => (z: number): number => (wide / tall) * Math.sqrt(Math.max(0, tall * tall - (level - z) ** 2))
/** Height of an ellipse, upright at its widest, through a point so far below that. */
const tallFor = (wide: number, narrow: number, below: number): number => below / Math.sqrt(1 - (narrow / wide) ** 2)

const straight = (z: number): number => 0.071 + (0.103 - 0.071) * (z / 0.183)
const bowlTall = tallFor(0.124, 0.052, 0.111)
const lowerTall = tallFor(0.106, 0.059, 0.093)
const upperTall = (wide: number, narrow: number): number => tallFor(wide, narrow, 0.181 - 0.093)

const SHAPES: Readonly<Record<OutlineAnswers['pot.shape'], Described>> = {
  taperedRound: { answers: measures(0.103, 0.071, 0.183), form: Math.PI, outside: both(straight), inside: both((z) => straight(z) - WALL) },
  cylinder: { answers: { ...measures(0.088, 0.03, 0.171), 'pot.shape': 'cylinder' }, form: Math.PI, outside: both(() => 0.088), inside: both(() => 0.088 - WALL) },
  square: { answers: { ...measures(0.103, 0.071, 0.183), 'pot.shape': 'square' }, form: 4, outside: both(straight), inside: both((z) => straight(z) - WALL) },
  trough: {
    answers: { ...measures(0.103, 0.071, 0.183), 'pot.shape': 'trough', 'pot.length': 0.58 },
    form: 4,
    outside: (z) => [straight(z), straight(z) + 0.29 - 0.103],
    inside: (z) => [straight(z) - WALL, straight(z) + 0.29 - 0.103 - WALL],
  },
  bowl: {
    answers: { ...measures(0.124, 0.052, 0.111), 'pot.shape': 'bowl' },
    form: Math.PI, outside: both(ellipse(0.124, bowlTall, 0.111)), inside: both(ellipse(0.124 - WALL, bowlTall - WALL, 0.111)),
  },
  bellied: {
    answers: { ...measures(0.081, 0.059, 0.181), 'pot.shape': 'bellied', 'pot.belly': 0.212, 'pot.bellyHeight': 0.093 },
    form: Math.PI,
    outside: both((z) => (z < 0.093 ? ellipse(0.106, lowerTall, 0.093)(z) : ellipse(0.106, upperTall(0.106, 0.081), 0.093)(z))),
    // The mouth is as much narrower inside as the wall is thick.
    inside: both((z) => (z < 0.093 ? ellipse(0.106 - WALL, lowerTall - WALL, 0.093)(z) : ellipse(0.106 - WALL, upperTall(0.106 - WALL, 0.081 - WALL), 0.093)(z))),
  },
}

/** Volume and centroid by 40 000 slices, each at its middle. */
function bySlices(half: Half, form: number, from: number, to: number): { readonly volume: number; readonly centroid: number } {
  const slices = 40_000
  const thick = (to - from) / slices
  let volume = 0
  let moment = 0
  for (let i = 0; i < slices; i++) {
    const z = from + (i + 0.5) * thick
    const [across, along] = half(z)
    volume += form * across * along * thick
    moment += form * across * along * thick * z
  }
  return { volume, centroid: moment / volume }
}

describe.each(Object.entries(SHAPES))('%s', (_, { answers, form, outside, inside }) => {
  const height = answers['pot.height']

  test('outside, cut slice by slice', () => {
    const [solid, sliced] = [solidBetween(potOutline(answers as OutlineAnswers, 0), 0, height), bySlices(outside, form, 0, height)]
    expect(solid.volume / sliced.volume).toBeCloseTo(1, 8)
    expect(solid.centroid / sliced.centroid).toBeCloseTo(1, 8)
  })

  test.each([[WALL, 1], [0.021, 0.87], [0.1, 0.95]])('inside, from %d m to %d of its height', (from, share) => {
    const [solid, sliced] = [solidBetween(potOutline(answers as OutlineAnswers, WALL), from, share * height), bySlices(inside, form, from, share * height)]
    expect(solid.volume / sliced.volume).toBeCloseTo(1, 8)
    expect(solid.centroid / sliced.centroid).toBeCloseTo(1, 8)
  })

  test('the wall is never thinner than half of what was said, nor more than half again as thick', () => {
    // Shortest way from a point inside to the outside, by walking the outside; across the narrow side.
    for (const z of [0.02, 0.05, 0.09, 0.1].filter((at) => at < height)) {
      const [r] = inside(z)
      const ways = Array.from({ length: 4001 }, (_unused, i) => (i * height) / 4000).map((at) => Math.hypot(outside(at)[0] - r, at - z))
      const wall = Math.min(...ways, z)
      expect(wall).toBeGreaterThan(0.5 * WALL)
      expect(wall).toBeLessThan(1.5 * WALL)
    }
  })
})
