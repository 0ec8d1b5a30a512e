import { describe, expect, it } from 'vitest'
import { pullTestSetText, pullTestSummary, resolveDocument, withPullTests, type PullTestColumn, type PullTestSet } from '#core'
import { documentOf, ORDINARY } from '../hanger/hangerOf'

type Typed = Readonly<Partial<Record<PullTestColumn, string>>>

function textOf(tests: readonly Typed[]) {
  const outcome = resolveDocument(withPullTests(documentOf(ORDINARY), tests.map((typed) => ({ typed, extra: {} }))))
  const set: PullTestSet | undefined = outcome.ok ? pullTestSummary(outcome.hanger.pullTests, 'cotton').sets[0] : undefined
  if (set === undefined) throw new Error('no set')
  return { set, text: pullTestSetText(set) }
}
const loads = (...texts: readonly string[]): readonly Typed[] => texts.map((load) => ({ load, time: '10 s' }))

describe('the words of a set of pull tests', () => {
  it('name how and in what state they were pulled, and count them', () => {
    expect(textOf([{ load: '18 kg' }]).text.title).toBe('Straight, dry: 1 test')
    expect(textOf([{ load: '18 kg', how: 'tied', state: 'soaked' }, { load: '17 kg', how: 'tied', state: 'soaked' }]).text.title).toBe('As tied, soaked: 2 tests')
  })

  it('say average, least and most, and the factor that goes with so few', () => {
    const { text: { why, counts }, set } = textOf(loads('18 kg', '24 kg', '21 kg'))
    // Geometric mean: the cube root of 18 x 24 x 21 is 20.86.
    expect(why[0]).toBe('Each brought to a pull of the same short time, they bore 20.9 kg (46 lb) on average, the least 18 kg (39.7 lb), the most 24 kg (52.9 lb).')
    expect(set.k).toBe(3.37)
    expect(why.join(' ')).toContain('That is 3.37 times the scatter below the average')
    expect(counts).toMatch(/^Of these \d.* counts: 19 of 20 strands bear more\.$/)
  })

  it('say whose scatter is taken: their own, or one that is always counted with', () => {
    expect(textOf(loads('18 kg')).text.why[1]).toMatch(/^One test cannot show how much the cord varies, so a large scatter is taken: 20 %\.$/)
    expect(textOf(loads('18 kg', '18.2 kg')).text.why[1]).toMatch(/two cannot show how much the cord varies: 20 % is taken/)
    expect(textOf(loads('18 kg', '18.2 kg', '18.4 kg')).text.why[1]).toMatch(/so close together may be luck, and 10 % is taken/)
    expect(textOf(loads('14 kg', '18 kg', '24 kg')).text.why[1]).toMatch(/^They scatter by \d+ %\.$/)
  })

  it('say which were not timed', () => {
    const timed: Typed = { load: '18 kg', time: '20 s' }
    const not: Typed = { load: '19 kg' }
    const last = (tests: readonly Typed[]): string => textOf(tests).text.why.at(-1) ?? ''
    expect(last([timed, timed])).not.toContain('timed')
    expect(last([not])).toMatch(/^It was not timed, so it counts as quick/)
    expect(last([not, not])).toMatch(/^None was timed, so all count as quick/)
    expect(last([timed, not])).toMatch(/^1 of them was not timed and counts as quick/)
    expect(last([timed, not, not])).toMatch(/^2 of them were not timed and count as quick/)
  })

  it('warn of an outlier and of what did not break', () => {
    expect(textOf(loads('18 kg', '18.4 kg', '18.2 kg', '17.9 kg', '8 kg')).text.warnings).toEqual([expect.stringMatching(/^Pull test 5 lies far from the others/)])
    expect(textOf([{ load: '18 kg', broke: 'no' }]).text.warnings).toEqual([expect.stringMatching(/did not end in a break/)])
    expect(textOf(loads('18 kg', '20 kg')).text.warnings).toEqual([])
  })

  it('say what two, five and ten more would give', () => {
    expect(textOf(loads('18 kg', '20 kg', '22 kg')).text.more).toMatch(/^If more come out like these, what counts becomes .* with 2 more, .* with 5 more, .* with 10 more\.$/)
  })
})
