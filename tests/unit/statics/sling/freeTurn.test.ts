import { describe, expect, it } from 'vitest'
import { freeTurn } from '../../../../src/statics/sling/freeTurn'
import type { Balance, SlingInput, Vec3 } from '../../../../src/statics/sling/result'
import { slingRests } from '../../../../src/statics/sling/slingRests'
import { solveSling } from '../../../../src/statics/sling/solveSling'

// A pot on one hook with its centre of gravity off the axis: it hangs tilted and turns freely.
const hook: Vec3 = [0.3, -0.4, 1.6]
const rim = { z: 0.18, r: 0.13 }
const hanger = (d: number): SlingInput => ({
  A: [hook, hook, hook, hook], B: [0, 1, 2, 3].map((i): Vec3 => [0.11 * Math.cos(1.6 * i), 0.11 * Math.sin(1.6 * i), 0.15]),
  L0: [0.8, 0.81, 0.8, 0.79], EA: [2500, 3000, 2700, 2900], mass: 4, cg: [0.02, -0.015, 0.09], ell: 0.11, gravity: 9.80665,
  wall: { n: [0.6, 0.8, 0], d, contacts: [{ type: 'circle', ...rim }, { type: 'circle', z: 0, r: 0.08 }] },
})
function balanceOf(input: SlingInput): Balance {
  const result = solveSling(input)
  if (!('T' in result)) throw new Error(result.status)
  return result
}

/** The rim's greatest distance from the vertical through the hook, from many points of it. */
function reach(rest: Balance): number {
  let most = 0
  for (let i = 0; i < 20_000; i++) {
    const angle = (2 * Math.PI * i) / 20_000
    const point = [rim.r * Math.cos(angle) - 0.02, rim.r * Math.sin(angle) + 0.015, rim.z - 0.09] as const
    const [x, y] = [0, 1].map((row) => rest.cg[row]! + rest.R[row]![0] * point[0] + rest.R[row]![1] * point[1] + rest.R[row]![2] * point[2])
    most = Math.max(most, Math.hypot(x! - hook[0], y! - hook[1]))
  }
  return most
}

describe('freeTurn', () => {
  const toHook = 0.6 * hook[0] + 0.8 * hook[1]

  it('comes as near to the wall as the rim reaches out from under the hook', () => {
    const rest = balanceOf(hanger(5))
    const { clearance } = freeTurn(hanger(toHook + 0.3), rest)!
    expect(clearance).toBeCloseTo(0.3 - reach(rest), 8)
    expect(reach(rest)).toBeGreaterThan(rim.r + 1e-3)
  })

  it('tells that the pot would meet the wall on the way round, though it hangs clear now', () => {
    const rest = balanceOf(hanger(5))
    const far = reach(rest)
    const near = hanger(toHook + far - 1e-3)
    expect(freeTurn(near, rest)!.clearance).toBeCloseTo(-1e-3, 8)
    // What the wall turns back is no other rest, unless it comes to lean there.
    for (const one of slingRests(near).rests.slice(1)) expect(one.wallN.some((N) => N > 0)).toBe(true)
  })

  it('has nothing to tell without a wall, without a free turn, or of a pot that leans already', () => {
    const rest = balanceOf(hanger(5))
    expect(freeTurn({ ...hanger(5), wall: null }, rest)).toBeNull()
    expect(freeTurn(hanger(5), { ...rest, zeroIsSymmetry: false })).toBeNull()
    expect(freeTurn(hanger(5), { ...rest, wallN: [1, 0] as unknown as Balance['wallN'] })).toBeNull()
  })
})
