import { describe, expect, test } from 'vitest'
import { metres, newtons } from '../../../src/quantity/si'
import { wallHook, type WallHook, type WallHookInput } from '../../../src/statics/wallHook'

const POT: WallHookInput = { weight: newtons(71), centreFromWall: metres(0.12), projection: metres(0.03), drop: metres(0.45) }

function solved(change: Partial<WallHookInput>): WallHook {
  const found = wallHook({ ...POT, ...change })
  if (!found.ok) throw new Error(found.reason)
  return found
}

describe('a pot on a wall hook', () => {
  test('pulls out less from a longer cord or a longer hook, more from a fatter pot', () => {
    const { pull } = solved({})
    expect(solved({ drop: metres(0.9) }).pull).toBeCloseTo(pull / 2, 12)
    expect(solved({ projection: metres(0.05) }).pull).toBeLessThan(pull)
    expect(solved({ centreFromWall: metres(0.15) }).pull).toBeGreaterThan(pull)
  })

  test('is in balance: the cord’s pull is the weight and the wall’s push together', () => {
    const { resultant, angle, pull, shear } = solved({})
    expect(resultant * Math.cos(angle)).toBeCloseTo(71, 10)
    expect(resultant * Math.sin(angle)).toBeCloseTo(pull, 10)
    expect(shear).toBe(71)
  })

  test('hangs clear of the wall from a hook that reaches its middle or beyond', () => {
    for (const projection of [0.12, 0.2]) expect(solved({ projection: metres(projection) })).toEqual({ ok: true, leans: false, pull: 0, shear: 71, resultant: 71, angle: 0, moment: expect.closeTo(71 * projection, 12) as number })
    expect(solved({ projection: metres(0.1199) }).leans).toBe(true)
  })

  test('has no answer leaning below its own hook’s height of nothing, and needs none hanging clear', () => {
    for (const drop of [0, -0.1]) expect(wallHook({ ...POT, drop: metres(drop) })).toEqual({ ok: false, reason: 'noDrop' })
    expect(solved({ drop: metres(0), projection: metres(0.13) }).pull).toBe(0)
  })
})
