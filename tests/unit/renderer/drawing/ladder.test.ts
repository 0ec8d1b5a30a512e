import { mount, type DOMWrapper, type VueWrapper } from '@vue/test-utils'
import { describe, expect, it } from 'vitest'
import { LINK_NAMES, LINKS, percentText, type LinkCode } from '#core'
import LoadGauge from '../../../../renderer/drawing/LoadGauge.vue'
import PartsLadder from '../../../../renderer/drawing/PartsLadder.vue'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'

const check = checkOf(ORDINARY)
const ladderOf = (props: Partial<InstanceType<typeof PartsLadder>['$props']>): VueWrapper =>
  mount(PartsLadder, { props: { check, selected: null, stale: false, ...props }, attachTo: document.body })
const rung = (page: VueWrapper, link: LinkCode): DOMWrapper<HTMLButtonElement> => page.find<HTMLButtonElement>(`button[data-link="${link}"]`)
const focused = (): string | null | undefined => document.activeElement?.getAttribute('data-link')

describe('the ladder of parts', () => {
  it('has one rung for each part that was checked, from the building down, the place before the hanger', () => {
    const page = ladderOf({})
    const present = LINKS.filter((link) => check.links.some((result) => result.link === link))
    expect(page.findAll('button').map((button) => button.attributes('data-link'))).toEqual(present)
    expect(page.findAll('h3').map((head) => head.text())).toEqual(['The place', 'The hanger'])
    expect(page.findAll('section')[0]?.findAll('button').map((button) => button.attributes('data-link'))).toEqual(['fixing', 'hook', 'hookShank'])
    page.unmount()
  })

  it('shows each part’s worst situation, number and verdict', () => {
    const page = ladderOf({})
    for (const link of new Set(check.links.map((result) => result.link))) {
      const text = rung(page, link).text()
      const results = check.links.filter((result) => result.link === link)
      expect(text).toContain(LINK_NAMES[link])
      const largest = Math.max(...results.map((result) => result.utilisation ?? 0))
      if (results.every((result) => result.verdict === results[0]?.verdict)) expect(text).toContain(percentText(largest))
    }
    expect(page.findAll('button').filter((button) => button.text().includes('this part decides')).map((button) => button.attributes('data-link'))).toEqual([check.governing?.link])
    page.unmount()
  })

  it('says that a part is not known, and refuses a figure where the part is refused', () => {
    const page = ladderOf({ check: checkOf({ ...ORDINARY, 'place.substrate': 'unknown' }) })
    expect(rung(page, 'fixing').text()).toContain('not known')
    page.unmount()
    const refused = ladderOf({ check: checkOf({ ...ORDINARY, 'place.substrate': 'plasterboard' }) })
    expect(rung(refused, 'fixing').text()).toMatch(/fails.*no figure/s)
    refused.unmount()
  })

  it('is one stop of the tab key, moved along by the arrow keys', async () => {
    const page = ladderOf({ selected: 'ring' })
    const stops = (): readonly (string | undefined)[] => page.findAll('button[tabindex="0"]').map((button) => button.attributes('data-link'))
    expect(stops()).toEqual(['ring'])
    rung(page, 'ring').element.focus()
    await rung(page, 'ring').trigger('keydown', { key: 'ArrowDown' })
    expect(focused()).toBe('leg')
    expect(stops()).toEqual(['leg'])
    await rung(page, 'leg').trigger('keydown', { key: 'ArrowUp' })
    await rung(page, 'ring').trigger('keydown', { key: 'ArrowUp' })
    expect(focused()).toBe('hookShank')
    await rung(page, 'hookShank').trigger('keydown', { key: 'End' })
    expect(focused()).toBe('gatheringGrip')
    await rung(page, 'gatheringGrip').trigger('keydown', { key: 'ArrowDown' })
    expect(focused()).toBe('gatheringGrip')
    await rung(page, 'gatheringGrip').trigger('keydown', { key: 'Home' })
    expect(focused()).toBe('fixing')
    expect(page.emitted('select')).toBeUndefined()
    page.unmount()
  })

  it('chooses a part and shows which one is chosen', async () => {
    const page = ladderOf({ selected: 'leg' })
    expect(page.findAll('[aria-pressed="true"]').map((button) => button.attributes('data-link'))).toEqual(['leg'])
    await rung(page, 'hook').trigger('click')
    expect(page.emitted('select')).toEqual([['hook']])
    page.unmount()
  })
})

describe('a gauge', () => {
  const gauge = (share: number | null, holdsTo: number | null): VueWrapper => mount(LoadGauge, { props: { share, holdsTo, fails: false, doubtful: false } })
  const length = (page: VueWrapper): number => Number.parseFloat(page.find('.load').attributes('width') ?? 'NaN')
  const spacing = (page: VueWrapper): number => Number(page.find('pattern').attributes('width'))

  it('grows longer and is hatched more densely the harder a part works', () => {
    const gauges = [0.1, 0.35, 0.62, 0.97].map((share) => gauge(share, 0.65))
    const rising = gauges.map(length)
    const closing = gauges.map(spacing)
    expect(rising).toEqual([...rising].sort((a, b) => a - b))
    expect(closing).toEqual([...closing].sort((a, b) => b - a))
    expect(new Set(rising).size).toBe(4)
    expect(new Set(closing).size).toBe(4)
  })

  it('has ticks where the part holds and at all it may carry, to the scale of its length', () => {
    const page = gauge(0.5, 0.65)
    const ticks = page.findAll('.tick').map((tick) => Number.parseFloat(tick.attributes('x1') ?? 'NaN'))
    expect(ticks).toHaveLength(2)
    expect((ticks[0] ?? NaN) / length(page)).toBeCloseTo(0.65 / 0.5, 9)
    expect((ticks[1] ?? NaN) / length(page)).toBeCloseTo(1 / 0.5, 9)
  })

  it('tells the number, never better than it is', () => {
    expect(gauge(0.6201, 0.8).text()).toBe('63 %')
    expect(gauge(2.5, 0.8).text()).toBe('250 %')
    expect(gauge(2.5, 0.8).find('.over').exists()).toBe(true)
    expect(gauge(1.2, 0.8).find('.over').exists()).toBe(false)
  })

  it('is an open outline where nothing is known', () => {
    const page = gauge(null, null)
    expect(page.text()).toBe('not known')
    expect(page.find('.load').exists()).toBe(false)
    expect(page.find('.open').exists()).toBe(true)
  })
})
