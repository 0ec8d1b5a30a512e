import { disableAutoUnmount, enableAutoUnmount, mount } from '@vue/test-utils'
import { afterAll, afterEach, describe, expect, it } from 'vitest'
import { massText, STATES, weightMakeup, type Patch } from '#core'
import { barsOf, type Bar } from '../../../../renderer/weight/bars'
import WeightBar from '../../../../renderer/weight/WeightBar.vue'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'

enableAutoUnmount(afterEach)
afterAll(disableAutoUnmount)

/** The ordinary hanger with a pot that was never weighed and holds water. */
const ESTIMATED: Patch = { ...Object.fromEntries(Object.entries(ORDINARY).filter(([path]) => !path.startsWith('weighed.'))), 'pot.drainage': 'none' }
const makeupsOf = (patch: Patch) => {
  const { potted, hangerMass } = checkOf(patch).solved
  return weightMakeup(potted, hangerMass)
}
const widthOf = ({ stretches }: Bar): number => stretches.reduce((sum, { solid, water }) => sum + solid + water, 0)

describe('the bars of what it weighs', () => {
  const makeups = makeupsOf(ESTIMATED)
  const { bars, parts, ticks } = barsOf(makeups, 1)

  it('are as long as the likely totals, on one scale that begins at nothing and holds the heaviest', () => {
    expect(bars.map(({ state }) => state)).toEqual(STATES)
    for (const bar of bars) {
      expect(widthOf(bar)).toBeCloseTo(bar.likely, 12)
      expect(bar.likely / (bars[0]?.likely ?? NaN)).toBeCloseTo(makeups[bar.state].total.likely / makeups.dry.total.likely, 9)
      expect(bar.low).toBeLessThan(bar.likely)
      expect(bar.high).toBeGreaterThan(bar.likely)
      expect(bar.high).toBeLessThanOrEqual(1)
    }
    expect((ticks[1]?.mass ?? NaN) / (ticks[1]?.along ?? NaN)).toBeCloseTo(makeups.dry.total.likely / (bars[0]?.likely ?? NaN), 9)
  })

  it('set their stretches end to end', () => {
    for (const { stretches } of bars) stretches.reduce((end, { from, solid, water }) => {
      expect(from).toBeCloseTo(end, 12)
      return from + solid + water
    }, 0)
  })

  it('show how much of each part is water', () => {
    const [dry, watered] = bars
    const mix = watered?.stretches.find(({ part }) => part === 'mix')
    const segment = makeups.watered.segments.find(({ part }) => part === 'mix')
    expect((mix?.water ?? NaN) / ((mix?.water ?? NaN) + (mix?.solid ?? NaN))).toBeCloseTo((segment?.water ?? NaN) / (segment?.mass.likely ?? NaN), 9)
    expect(dry?.water).toBe(0)
    expect(watered?.water).toBeCloseTo(makeups.watered.segments.reduce((sum, { water }) => sum + water, 0), 9)
  })

  it('give each part a letter of its own', () => {
    expect(new Set(parts.map(({ letter }) => letter)).size).toBe(parts.length)
    expect(parts.map(({ part }) => part)).toContain('standingWater')
    expect(parts.filter(({ onlyWater }) => onlyWater).map(({ part }) => part)).toEqual(['standingWater'])
  })
})

describe('what it weighs, on the page', () => {
  it('tells the core’s totals and their range, state by state', () => {
    const check = checkOf(ESTIMATED)
    const page = mount(WeightBar, { props: { check, stale: false } })
    const makeups = weightMakeup(check.solved.potted, check.solved.hangerMass)
    expect(page.findAll('.state .total').map((total) => total.text())).toEqual(STATES.map((state) => massText(makeups[state].total.likely)))
    const totals = page.get('tr.total').findAll('td').map((cell) => cell.text().replaceAll('\u00a0', ' '))
    expect(totals).toEqual(STATES.map((state) => massText(makeups[state].total.likely)))
  })

  it('fills no two parts alike, and has a filling for each', () => {
    const page = mount(WeightBar, { props: { check: checkOf({ ...ESTIMATED, 'layer.depth': '3 cm', 'topping.depth': '1 cm', 'saucer.width': '18 cm', 'cover.inside': '25 cm', 'cover.mass': '900 g' }), stale: false } })
    const fillings = page.findAll('pattern').map((pattern) => pattern.element.innerHTML + (pattern.attributes('patterntransform') ?? pattern.attributes('patternTransform') ?? ''))
    expect(new Set(fillings).size).toBe(fillings.length)
    const ids = new Set(page.findAll('pattern').map((pattern) => `url(#${pattern.attributes('id') ?? ''})`))
    const used = page.findAll('rect.solid, rect.water, rect.filling').map((rect) => rect.attributes('fill') ?? '')
    expect(used.length).toBeGreaterThan(8)
    expect(used.filter((fill) => !ids.has(fill))).toEqual([])
  })

  it('says that the pot is only taken for granted where there is none yet', () => {
    const said = (have: string): string => mount(WeightBar, { props: { check: checkOf({ ...ESTIMATED, 'pot.have': have }), stale: false } }).text()
    expect(said('no')).toContain('There is no pot yet')
    expect(said('yes')).not.toContain('no pot yet')
  })

  it('says which state was weighed, and calls what is only water so', () => {
    const page = mount(WeightBar, { props: { check: checkOf({ ...ORDINARY, 'weighed.mass': '3.4 kg', 'weighed.state': 'watered', 'pot.drainage': 'hole' }), stale: false } })
    expect(page.findAll('.state .name').map((name) => name.text())).toEqual(['dry', 'just watered, as you weighed it', 'standing in water'])
    expect(page.text()).toContain('potting mix, further water')
  })
})
