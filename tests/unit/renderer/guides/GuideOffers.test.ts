import { disableAutoUnmount, enableAutoUnmount, mount } from '@vue/test-utils'
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import type { Finding, LinkCode } from '#core'
import GuideOffers from '../../../../renderer/guides/GuideOffers.vue'
import { rememberFocus } from '../../../../renderer/guides/returnFocus'
import { startPage } from '../page'

enableAutoUnmount(afterEach)
afterAll(disableAutoUnmount)
beforeEach(startPage)
afterEach(() => {
  vi.unstubAllGlobals()
  document.body.innerHTML = ''
})

describe('what is offered on a card', () => {
  const offersOf = (findings: readonly Finding[], link: LinkCode): readonly string[] =>
    mount(GuideOffers, { props: { findings, link } }).findAll('button').map((button) => button.text())

  it('is what would settle the findings, each once, a measure where one is missing', () => {
    const grip: Finding = { code: 'GRIP_UNTESTED', testMass: 14 }
    expect(offersOf([grip, { code: 'TEST_HANG_SLIP_UNSAID', most: 0.003 }], 'gatheringGrip')).toEqual(['Test hang, step by step'])
    expect(offersOf([{ code: 'ASSUMED_PART_FAILS', path: 'hook.wire', assumed: '4 mm' }, { code: 'ASSUMED_PART_HOLDS', path: 'hook.metal', assumed: 'steel' }], 'hook')).toEqual(['Measure it: Thickness of the hook’s wire'])
    expect(offersOf([{ code: 'CORD_UNKNOWN' }], 'leg')).toEqual(['Measure it: Weight of a measured length', 'How to pull-test cord safely'])
    expect(offersOf([{ code: 'SEAT_LOCKED' }], 'seat')).toEqual([])
  })
})

describe('the focus, once a guide is closed', () => {
  it('goes to what is nearest where the button that opened it is gone', () => {
    document.body.innerHTML = '<section><div><button id="offer">offer</button></div><button id="next">next</button></section><button id="far">far</button>'
    const byId = (id: string): HTMLElement | null => document.getElementById(id)
    byId('offer')?.focus()
    const giveBack = rememberFocus()
    byId('far')?.focus()
    byId('offer')?.remove()
    giveBack()
    expect(document.activeElement).not.toBe(byId('far'))
    expect(document.activeElement).toBe(byId('next'))
  })
})
