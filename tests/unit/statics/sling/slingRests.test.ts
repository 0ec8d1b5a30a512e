import { describe, expect, it } from 'vitest'
import type { SlingInput, SlingRest, Vec3 } from '../../../../src/statics/sling/result'
import { slingRests, type SlingRests } from '../../../../src/statics/sling/slingRests'
import { solveSling } from '../../../../src/statics/sling/solveSling'
import { seededRandom } from '../../quantity/seededRandom'
import { imbalance } from './imbalance'
import { randomHanger } from './randomHanger'

const hangers = (count: number, seed: number, leaning: boolean): SlingInput[] => {
  const random = seededRandom(seed)
  return Array.from({ length: count }, () => randomHanger(random, leaning))
}
const most = (rest: SlingRest): number => Math.max(...rest.T)
const good: SlingInput = {
  A: [[0.02, 0, 1], [-0.01, 0.02, 1], [-0.01, -0.02, 1]], B: [[0.1, 0, 0.15], [-0.06, 0.09, 0.15], [-0.05, -0.08, 0.15]],
  L0: [0.7, 0.71, 0.7], EA: [2900, 2900, 2500], mass: 5, cg: [0, 0, 0.08], ell: 0.1, gravity: 9.80665, wall: null,
}

describe('slingRests', () => {
  const inputs = hangers(900, 77, true)
  const answers = inputs.map(slingRests)
  const several = answers.flatMap((answer, i): readonly (readonly [SlingInput, SlingRests])[] => (answer.rests.length > 1 ? [[inputs[i]!, answer]] : []))

  it('keeps the answer of solveSling and puts it first', () => {
    answers.forEach(({ first, rests }, i) => {
      expect(first).toEqual(solveSling(inputs[i]!))
      if ('T' in first && first.stable) expect(rests[0]).toBe(first)
    })
  })

  it('finds pots at a wall that rest in more than one way, each a lasting balance of its own', () => {
    expect(several.length).toBeGreaterThanOrEqual(2)
    for (const [input, { rests }] of several) {
      rests.forEach((rest, i) => {
        expect(rest.stable).toBe(true)
        expect(imbalance(input, rest)).toBeLessThanOrEqual(1e-9)
        for (const other of rests.slice(0, i)) {
          const weight = input.mass * input.gravity
          const force = Math.max(...rest.T.map((T, j) => Math.abs(T - other.T[j]!))) / weight
          expect(Math.max(force, Math.hypot(...rest.cg.map((x, j) => x - other.cg[j]!)))).toBeGreaterThan(1e-6)
        }
      })
    }
  })

  it('shows the worst: lost support before the greatest pull', () => {
    for (const [, { rests, worst }] of several) {
      const lost = rests.filter(({ status }) => status === 'LOST_SUPPORT')
      expect(lost.length === 0 || worst!.status === 'LOST_SUPPORT').toBe(true)
      expect(most(worst!)).toBe(Math.max(...(lost.length > 0 ? lost : rests).map(most)))
    }
  })

  it('finds one rest only for pots that hang free, whatever they are started with', () => {
    hangers(200, 5, false).map(slingRests).forEach(({ rests, lost }) => {
      expect(rests).toHaveLength(1)
      expect(lost).toBe(0)
    })
  })

  it('gives the error, and no rest where none lasts', () => {
    expect(slingRests({ ...good, mass: 0 })).toEqual({ first: { status: 'ERROR', error: 'BAD_MASS' }, rests: [], worst: null, lost: 0 })
    const low = (x: number, y: number): Vec3 => [x, y, 0.005]
    const feet = [[0.02, 0], [-0.01, 0.0173], [-0.01, -0.0173]] as const
    const wobbly = { ...good, A: feet.map(([x, y]): Vec3 => [x, y, 1]), B: feet.map(([x, y]) => low(x, y)), L0: [0.8, 0.8, 0.8], EA: [1500, 1500, 1500], cg: [0, 0, 0.12] as const }
    expect(slingRests(wobbly)).toMatchObject({ first: { status: 'UNSTABLE' }, rests: [], worst: null })
  })
})
