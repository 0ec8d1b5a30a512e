import { describe, expect, it } from 'vitest'
import type { SlingInput } from '../../../../src/statics/sling/result'
import { solveSling } from '../../../../src/statics/sling/solveSling'
import { solveSlingNear } from '../../../../src/statics/sling/solveSlingNear'
import { seededRandom } from '../../quantity/seededRandom'
import { imbalance } from './imbalance'
import { randomHanger } from './randomHanger'

/** Each hanger solved, then a little heavier and off centre from there and from the beginning. */
function sweep(leaning: boolean): { readonly cold: number; readonly warm: number; readonly elsewhere: number; readonly count: number } {
  const random = seededRandom(89)
  let [cold, warm, elsewhere, count] = [0, 0, 0, 0]
  for (let i = 0; i < 400; i++) {
    const input = randomHanger(random, leaning)
    const first = solveSling(input)
    if (!('T' in first)) continue
    const next: SlingInput = { ...input, mass: 1.02 * input.mass, cg: [input.cg[0] + 1e-3, input.cg[1], input.cg[2]] }
    const plain = solveSling(next)
    const near = solveSlingNear(next, first)
    count++
    if ('iterations' in plain) cold += plain.iterations
    if ('iterations' in near) warm += near.iterations
    if ('T' in near) expect(imbalance(next, near)).toBeLessThanOrEqual(1e-9)
    const same = 'T' in plain && 'T' in near ? plain.status === near.status && plain.T.every((T, j) => Math.abs(T - near.T[j]!) < 1e-7 * next.mass * next.gravity) : plain.status === near.status
    if (!same) elsewhere++
  }
  return { cold, warm, elsewhere, count }
}

describe('solveSlingNear', () => {
  it('answers as solveSling does, in fewer steps, hanging free', () => {
    const { cold, warm, elsewhere, count } = sweep(false)
    expect(count).toBe(400)
    expect(elsewhere).toBe(0)
    expect(warm).toBeLessThan(cold)
  })

  it('and at a wall', () => {
    const { cold, warm, elsewhere, count } = sweep(true)
    expect(count).toBeGreaterThan(395)
    expect(elsewhere).toBeLessThanOrEqual(1)
    expect(warm).toBeLessThan(cold)
  })

  it('says that a pot would tip where its upright balance ceases to last, and passes on errors', () => {
    const feet = [[0.02, 0], [-0.01, 0.0173], [-0.01, -0.0173]] as const
    const at = (height: number): SlingInput => ({
      A: feet.map(([x, y]) => [x, y, 1]), B: feet.map(([x, y]) => [x, y, 0.005]), L0: [0.8, 0.8, 0.8], EA: [1500, 1500, 1500],
      mass: 5, cg: [0, 0, height], ell: 0.1, gravity: 9.80665, wall: null,
    })
    const steady = solveSling(at(0.01))
    if (!('T' in steady)) throw new Error(steady.status)
    expect(solveSlingNear(at(0.012), steady).status).toBe('OK')
    expect(solveSlingNear(at(0.12), steady)).toEqual(solveSling(at(0.12)))
    expect(solveSlingNear(at(0.12), steady).status).toBe('UNSTABLE')
    expect(solveSlingNear({ ...at(0.01), mass: NaN }, steady)).toEqual({ status: 'ERROR', error: 'NOT_FINITE' })
    expect(solveSlingNear(at(0.01), { ...steady, cg: [NaN, 0, 0] })).toEqual(steady)
  })
})
