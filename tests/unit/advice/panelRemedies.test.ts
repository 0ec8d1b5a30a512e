import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { heaviestPot } from '../../../src/advice/heaviestPot'
import { findRemedies } from '../../../src/advice/remedies'
import { checkOf, documentOf } from '../hanger/hangerOf'
import { PANEL } from '../hanger/panelPatch'
import { without } from '../hanger/without'

/** Stiffer strands jolt the hook more in a drop: one that bears it. */
const SHORT_HOOK = { 'hook.projection': '15 mm' } as const

describe('what mends a wall planter', () => {
  const remedy = (patch: Patch, code: string): Patch | undefined => {
    const document = documentOf({ ...PANEL, ...patch })
    return findRemedies(document, checkOf({ ...PANEL, ...patch })).find((r) => r.code === code)?.patch
  }

  test('a panel that is too narrow is made wider, one with too few cords gets more', () => {
    expect(remedy({ ...SHORT_HOOK, 'panel.width': '180 mm' }, 'widerPanel')).toEqual({ 'panel.width': '220 mm' })
    expect(remedy({ 'panel.cords': '5' }, 'panelCords')).toEqual({ 'panel.cords': '6' })
  })

  test('with no pot yet the heaviest is found once its strands were said', () => {
    const noPot = { ...PANEL, 'pot.have': 'no', 'testHang.mass': '30 kg', 'testHang.time': '24 h', 'testHang.slip': '1 mm' } as const
    const watered = heaviestPot(documentOf(without(noPot, 'weighed.mass')))?.watered ?? NaN
    expect(watered).toBeGreaterThan(3)
    expect(watered).toBeLessThan(12)
    expect(heaviestPot(documentOf(without(without(noPot, 'weighed.mass'), 'panel.front')))).toBeNull()
  })

  test('weak strands are joined by more of them', () => {
    expect(remedy({ ...SHORT_HOOK, 'weighed.mass': '5 kg', 'cord.linearDensity': '6 g/m' }, 'panelStrands')).toHaveProperty(['panel.front'])
  })
})
