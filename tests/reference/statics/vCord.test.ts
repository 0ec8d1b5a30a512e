import { describe, expect, test } from 'vitest'
import { metres, newtons } from '../../../src/quantity/si'
import { vCord, type VCord } from '../../../src/statics/vCord'
import { freeCord, heldCord, noSlipLoadOffset, type VCordOffset, type VCordOffsetOutcome } from '../../../src/statics/vCordOffset'

const RADIAN = Math.PI / 180

function symmetric(cord: number, span: number, weight: number): VCord {
  const hung = vCord({ cord: metres(cord), span: metres(span), weight: newtons(weight) })
  if (!hung.ok) throw new Error(hung.reason)
  return hung
}

function hangs(outcome: VCordOffsetOutcome): VCordOffset {
  if (!outcome.ok) throw new Error(outcome.reason)
  return outcome
}

const inputOf = (offset: number, depth: number) => ({ cord: metres(0.94), span: metres(0.62), weight: newtons(73), offset: metres(offset), depth: metres(depth) })
const MIDDLE = symmetric(0.94, 0.62, 73)

describe('a cord from both ends of a stick over one hook', () => {
  // Force over the weight by the angle from the horizontal, T = W / (2 sin q): printed so in rigging tables of two-leg slings.
  test.each([[10, 2.88], [15, 1.93], [20, 1.46], [30, 1], [45, 0.71], [60, 0.58]])('at %d degrees each half takes %d of the weight', (degrees, share) => {
    const hung = symmetric(0.62 / Math.cos(degrees * RADIAN), 0.62, 73)
    expect(hung.angle / RADIAN).toBeCloseTo(degrees, 10)
    expect(hung.tension / 73).toBeCloseTo(share, 2)
    expect(hung.thrust / 73).toBeCloseTo(1 / (2 * Math.tan(degrees * RADIAN)), 10)
  })
})

describe('a load off the middle', () => {
  test('held at the middle: tilt atan(e / (h + d)); halves by moments about each end', () => {
    const { tilt, lifts, tensions } = hangs(heldCord(inputOf(0.08, 0.05)))
    const h = MIDDLE.height
    expect(tilt).toBeCloseTo(Math.atan(0.08 / (h + 0.05)), 12)
    // Moments about one end: the weight's parts square to and along the stick, at e and d from the middle of it.
    const [square, along] = [73 * Math.cos(tilt), 73 * Math.sin(tilt)]
    expect(lifts[1]).toBeCloseTo((square * (0.31 + 0.08) - along * 0.05) / 0.62, 10)
    expect(lifts[0]).toBeCloseTo((square * (0.31 - 0.08) + along * 0.05) / 0.62, 10)
    expect(tensions[1] / lifts[1]).toBeCloseTo(0.47 / h, 10)
  })

  test('hung freely, it stays until the tensions are as e^(mu phi) (Euler and Eytelwein)', () => {
    for (const [depth, friction] of [[0, 0.12], [0.07, 0.24], [0.2, 0.5]] as const) {
      const offset = noSlipLoadOffset(MIDDLE, metres(0.62), metres(depth), friction)
      const { tensions, turn } = hangs(heldCord(inputOf(offset, depth)))
      expect(tensions[1] / tensions[0]).toBeCloseTo(Math.exp(friction * turn), 10)
    }
  })

  // Without friction the centre of gravity hangs as far below the hook as the cord's length lets it.
  function lowest(offset: number, depth: number): { readonly x: number; readonly below: number } {
    let best = { x: 0, below: -Infinity }
    for (let x = -0.46; x <= 0.46; x += 1e-5) {
      const y = MIDDLE.height * Math.sqrt(1 - (x / 0.47) ** 2)
      const below = Math.hypot(x - offset, y + depth)
      if (below > best.below) best = { x, below }
    }
    return best
  }

  test.each([[0, 0.31], [0.03, 0.4], [-0.05, 0.55], [0.09, 0.28]])('running freely, offset %d m and %d m below: where the centre of gravity is lowest, halves alike', (offset, depth) => {
    const { hookAt, tensions, tilt, height } = hangs(freeCord(inputOf(offset, depth)))
    expect(hookAt).toBeCloseTo(lowest(offset, depth).x, 3)
    expect(tensions[0]).toBeCloseTo(tensions[1], 9)
    expect(tilt).toBeCloseTo(Math.atan((offset - hookAt) / (height + depth)), 12)
    // Reflection at the hook: both halves at one angle to the plumb line.
    expect(tensions[0]).toBeCloseTo(73 / (2 * Math.sin(hangs(freeCord(inputOf(offset, depth))).turn / 2)), 9)
  })

  test('a middle load stays without friction only more than c2 / B below the stick', () => {
    const limit = 0.31 ** 2 / MIDDLE.height
    expect(freeCord(inputOf(0, limit * 0.999))).toEqual({ ok: false, reason: 'runs', depth: expect.closeTo(limit, 12) as number })
    expect(hangs(freeCord(inputOf(0, limit * 1.001))).tilt).toBeCloseTo(0, 12)
    // The same by the height of the centre of gravity to either side of the middle.
    const at = (x: number, depth: number): number => Math.hypot(x, MIDDLE.height * Math.sqrt(1 - (x / 0.47) ** 2) + depth)
    expect(at(0.01, limit * 0.98)).toBeGreaterThan(at(0, limit * 0.98))
    expect(at(0.01, limit * 1.02)).toBeLessThan(at(0, limit * 1.02))
  })
})
