import { describe, expect, it } from 'vitest'
import { pullTestSummary, resolveDocument, STANDARD_GRAVITY, withPullTests, type PullTestSet } from '#core'
import { plotOf } from '../../../../renderer/strength/plotScale'
import { documentOf, hangerOf, ORDINARY } from '../../hanger/hangerOf'

function setOf(loads: readonly string[]): PullTestSet {
  const outcome = resolveDocument(withPullTests(documentOf(ORDINARY), loads.map((load) => ({ typed: { load, time: '10 s' }, extra: {} }))))
  const set = outcome.ok ? pullTestSummary(outcome.hanger.pullTests, hangerOf(ORDINARY).answers['cord.fibre']).sets[0] : undefined
  if (set === undefined) throw new Error('no set')
  return set
}

describe('the plot of a set of pull tests', () => {
  const set = setOf(['18 kg', '24 kg', '21 kg', '18.1 kg'])
  const plot = plotOf(set, STANDARD_GRAVITY)
  const dot = (row: number) => plot.dots.find((one) => one.row === row)

  it('sets every test, the average and what counts to one scale that begins at nothing', () => {
    expect((dot(1)?.along ?? NaN) / (dot(0)?.along ?? NaN)).toBeCloseTo(24 / 18, 9)
    expect(plot.mean / (dot(2)?.along ?? NaN)).toBeCloseTo(set.mean / (21 * STANDARD_GRAVITY), 9)
    expect(plot.counted / plot.mean).toBeCloseTo(set.characteristic / set.mean, 9)
    expect(Math.max(...plot.dots.map(({ along }) => along))).toBeLessThan(1)
  })

  it('sets dots that would touch one above the other', () => {
    expect([dot(0)?.above, dot(3)?.above]).toEqual([0, 1])
    expect([dot(1)?.above, dot(2)?.above]).toEqual([0, 0])
    expect(plot.tallest).toBe(2)
    // The third touches the second, not the first.
    expect(plotOf(setOf(['18 kg', '18.8 kg', '19.6 kg']), STANDARD_GRAVITY).dots.map(({ above }) => above)).toEqual([0, 1, 0])
  })

  it('marks round masses', () => {
    expect(plot.ticks.map(({ mass }) => mass)).toEqual([0, 5, 10, 15, 20, 25])
    expect((plot.ticks[4]?.along ?? NaN) / (dot(1)?.along ?? NaN)).toBeCloseTo(20 / 24, 9)
    expect(plotOf(setOf(['400 g']), STANDARD_GRAVITY).ticks.map(({ mass }) => Number(mass.toFixed(6)))).toEqual([0, 0.1, 0.2, 0.3, 0.4])
  })
})
