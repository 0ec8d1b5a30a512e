import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { findRemedies } from '../../../src/advice/remedies'
import { checkOf, documentOf } from '../hanger/hangerOf'
import { PANEL } from '../hanger/panelPatch'

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

  test('weak strands are joined by more of them', () => {
    expect(remedy({ ...SHORT_HOOK, 'weighed.mass': '5 kg', 'cord.linearDensity': '6 g/m' }, 'panelStrands')).toHaveProperty(['panel.front'])
  })
})
