import { describe, expect, test } from 'vitest'
import { metres, newtons } from '../../../src/quantity/si'
import { vCord, type VCord } from '../../../src/statics/vCord'
import { freeCord, heldCord, noSlipLoadOffset, type VCordOffset, type VCordOffsetInput, type VCordOffsetOutcome } from '../../../src/statics/vCordOffset'
import { seededRandom } from '../quantity/seededRandom'

const random = seededRandom(44)
const between = (low: number, high: number): number => low + (high - low) * random()

const CASES = Array.from({ length: 80 }, (): VCordOffsetInput => {
  const span = between(0.2, 1.1)
  return { span: metres(span), cord: metres(span * between(1.05, 2.4)), weight: newtons(between(5, 190)), offset: metres(span * between(-0.4, 0.4)), depth: metres(random() < 0.4 ? 0 : between(0, 0.6)) }
})

function hangs(outcome: VCordOffsetOutcome): VCordOffset {
  if (!outcome.ok) throw new Error(outcome.reason)
  return outcome
}

const middle = (input: VCordOffsetInput): VCord => {
  const hung = vCord(input)
  if (!hung.ok) throw new Error(hung.reason)
  return hung
}

/** All answers there are: held at the middle, and running freely where that hangs. */
const HUNG = CASES.flatMap((input) => [heldCord(input), freeCord(input)].flatMap((outcome) => (outcome.ok ? [{ input, hung: outcome }] : [])))

describe('a stick hung by a cord from both ends', () => {
  test('is tried in both ways often enough', () => {
    expect(HUNG.filter(({ hung }) => hung.hookAt === 0).length).toBeGreaterThan(50)
    expect(HUNG.filter(({ hung }) => hung.hookAt !== 0).length).toBeGreaterThan(15)
  })

  test('is in balance: both pulls and the weight, and their moments about the middle of the stick', () => {
    for (const { input, hung } of HUNG) {
      const c = input.span / 2
      const pulls = [-c, c].map((end, i) => {
        const [run, rise] = [hung.hookAt - end, hung.height]
        const share = hung.tensions[i]! / Math.hypot(run, rise)
        return { along: share * run, square: share * rise, end }
      })
      const [along, square] = [input.weight * Math.sin(hung.tilt), input.weight * -Math.cos(hung.tilt)]
      expect(pulls.reduce((sum, p) => sum + p.along, along)).toBeCloseTo(0, 9)
      expect(pulls.reduce((sum, p) => sum + p.square, square)).toBeCloseTo(0, 9)
      expect(pulls.reduce((sum, p) => sum + p.end * p.square, input.offset * square + input.depth * along)).toBeCloseTo(0, 9)
      pulls.forEach((p, i) => expect(hung.lifts[i]).toBeCloseTo(p.square, 9))
      expect(hung.thrust).toBeCloseTo(Math.max(pulls[0]!.along, -pulls[1]!.along), 9)
    }
  })

  test('keeps the length of its cord', () => {
    for (const { input, hung } of HUNG) expect(Math.hypot(hung.hookAt + input.span / 2, hung.height) + Math.hypot(input.span / 2 - hung.hookAt, hung.height)).toBeCloseTo(input.cord, 9)
  })

  test('is the same from behind', () => {
    for (const input of CASES) {
      for (const solve of [heldCord, freeCord]) {
        const [front, behind] = [solve(input), solve({ ...input, offset: metres(0 - input.offset) })]
        expect(behind.ok).toBe(front.ok)
        if (!front.ok || !behind.ok) continue
        expect(behind.tilt + front.tilt).toBeCloseTo(0, 9)
        expect(behind.tensions[0]).toBeCloseTo(front.tensions[1], 8)
        expect(behind.thrust).toBeCloseTo(front.thrust, 8)
      }
    }
  })

  test('with the load in the middle is the plain case', () => {
    for (const case_ of CASES) {
      const input = { ...case_, offset: metres(0) }
      const { tension, thrust, angle } = middle(input)
      const hung = hangs(heldCord(input))
      expect(hung.tensions).toEqual([expect.closeTo(tension, 9), expect.closeTo(tension, 9)])
      expect(hung.thrust).toBeCloseTo(thrust, 9)
      expect(hung.turn).toBeCloseTo(2 * angle, 12)
      expect(hung.tilt).toBe(0)
    }
  })

  test('leans to the side of its load, the more without friction', () => {
    for (const input of CASES) {
      const [held, free] = [heldCord(input), freeCord(input)]
      if (!held.ok || !free.ok) continue
      expect(Math.sign(held.tilt)).toBe(Math.sign(input.offset))
      expect(Math.abs(free.tilt)).toBeGreaterThan(Math.abs(held.tilt))
      expect(Math.sign(free.hookAt)).toBe(-Math.sign(input.offset))
    }
  })
})

describe('where there is no answer', () => {
  const INPUT: VCordOffsetInput = { span: metres(0.5), cord: metres(0.8), weight: newtons(60), offset: metres(0.1), depth: metres(0) }

  test('a cord no longer than the stick does not reach', () => {
    const short = { ...INPUT, cord: metres(0.5) }
    for (const outcome of [vCord(short), heldCord(short), freeCord(short)]) expect(outcome).toEqual({ ok: false, reason: 'cordTooShort', least: 0.5 })
  })

  test('a load beyond the end leaves the other half slack', () => {
    expect(heldCord({ ...INPUT, offset: metres(0.2499) }).ok).toBe(true)
    expect(heldCord({ ...INPUT, offset: metres(0.2501) })).toEqual({ ok: false, reason: 'slack' })
    expect(heldCord({ ...INPUT, offset: metres(-0.2501) })).toEqual({ ok: false, reason: 'slack' })
  })

  test('loads hung freely always let the cord run, wherever they stand', () => {
    for (const offset of [-0.249, -0.1, 0, 0.02, 0.24]) expect(freeCord({ ...INPUT, offset: metres(offset) })).toMatchObject({ ok: false, reason: 'runs' })
  })
})

describe('the offset that friction holds', () => {
  test('grows with friction and with the depth of the load, and stays on the stick when loads hang freely', () => {
    for (const input of CASES) {
      const offsetOf = (depth: number, friction: number): number => noSlipLoadOffset(middle(input), input.span, metres(depth), friction)
      expect(offsetOf(0, 0)).toBe(0)
      expect(offsetOf(0, 0.3)).toBeGreaterThan(offsetOf(0, 0.12))
      expect(offsetOf(0.2, 0.3)).toBeGreaterThan(offsetOf(0, 0.3))
      expect(offsetOf(0, 5)).toBeLessThanOrEqual(input.span / 2)
    }
  })
})
