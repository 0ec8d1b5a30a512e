import { describe, expect, test } from 'vitest'
import { metres, newtons, radians } from '../../../src/quantity/si'
import { bracketScrews, type Bracket, type BracketInput } from '../../../src/statics/bracket'
import { seededRandom } from '../quantity/seededRandom'

const random = seededRandom(9)
const between = (low: number, high: number): number => low + (high - low) * random()

const CASES = Array.from({ length: 50 }, (): BracketInput => ({
  load: newtons(between(5, 160)), reach: metres(between(0.08, 0.5)), swing: radians(between(-1.5, 1.5)),
  screws: Array.from({ length: 2 + Math.floor(5 * random()) }, () => ({ across: metres(between(-0.05, 0.05)), up: metres(between(0, 0.3)) })),
}))

function solved(input: BracketInput): Bracket {
  const found = bracketScrews(input)
  if (!found.ok) throw new Error(found.reason)
  return found
}

const largest = (forces: readonly number[]): number => Math.max(...forces)

describe('any bracket', () => {
  test('is in balance: pulls against the load’s lever, edge against pulls', () => {
    for (const input of CASES) {
      const { pulls, edge } = solved(input)
      expect(pulls.reduce((sum, pull, i) => sum + pull * input.screws[i]!.up, 0)).toBeCloseTo(input.load * input.reach * Math.cos(input.swing), 9)
      expect(edge).toBeCloseTo(pulls.reduce((sum, pull) => sum + pull, 0), 9)
    }
  })

  test('shares no less than the load along the wall', () => {
    for (const input of CASES) expect(solved(input).shears.reduce((sum, shear) => sum + shear, 0)).toBeGreaterThanOrEqual(input.load * (1 - 1e-12))
  })

  test('is the same in a mirror', () => {
    for (const input of CASES) {
      const [front, mirror] = [solved(input), solved({ ...input, swing: radians(0 - input.swing), screws: input.screws.map(({ across, up }) => ({ across: metres(0 - across), up })) })]
      mirror.shears.forEach((shear, i) => expect(shear).toBeCloseTo(front.shears[i]!, 9))
      mirror.pulls.forEach((pull, i) => expect(pull).toBeCloseTo(front.pulls[i]!, 9))
      expect(mirror.sideMoment).toBeCloseTo(-front.sideMoment, 9)
    }
  })

  test('pulls in proportion to load and reach, and never more with a further screw', () => {
    for (const input of CASES) {
      const once = largest(solved(input).pulls)
      expect(largest(solved({ ...input, load: newtons(2 * input.load), reach: metres(3 * input.reach) }).pulls)).toBeCloseTo(6 * once, 8)
      expect(largest(solved({ ...input, screws: [...input.screws, { across: metres(0), up: metres(0.07) }] }).pulls)).toBeLessThan(Math.max(once, 1e-9))
    }
  })
})

describe('a bracket without an answer', () => {
  const ONE: BracketInput = { load: newtons(30), reach: metres(0.2), swing: radians(0), screws: [{ across: metres(0.01), up: metres(0.1) }] }

  test('has its screws at the edge it turns on, or none', () => {
    for (const screws of [[], [{ across: metres(0.02), up: metres(0) }]]) expect(bracketScrews({ ...ONE, screws })).toEqual({ ok: false, reason: 'noLever' })
  })

  test('hangs on one screw, straight out only', () => {
    expect(bracketScrews(ONE).ok).toBe(true)
    expect(bracketScrews({ ...ONE, swing: radians(0.2) })).toEqual({ ok: false, reason: 'turns' })
  })

  test('swung along the wall pulls nothing out, and turns the plate with all its lever', () => {
    const found = solved({ ...ONE, swing: radians(Math.PI / 2), screws: [...ONE.screws, { across: metres(0.01), up: metres(0.02) }] })
    expect(largest(found.pulls)).toBeCloseTo(0, 12)
    // 6 N m on screws 80 mm apart: 75 N sideways, with 15 N down.
    found.shears.forEach((shear) => expect(shear).toBeCloseTo(Math.hypot(75, 15), 10))
  })
})
