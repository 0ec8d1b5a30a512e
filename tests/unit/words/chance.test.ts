import { afterEach, describe, expect, test } from 'vitest'
import { chanceSentence, USUAL_HABITS, writeBy } from '#core'
import { chanceInterval } from '../../../src/chance/interval'
import { CHANCE_INPUTS } from '../../../src/chance/inputs'
import type { ChanceProblem } from '../../../src/chance/problem'
import { OUTSIDE_CHANCE, type StateChance } from '../../../src/chance/report'
import { LINKS } from '../../../src/check/linkResult'
import { failsText, inputRankText, leftOutText, nearestText, outsideText, RANK_EXPLAINED } from '../../../src/words/chance'
import { partText } from '../../../src/words/chanceCounts'
import { chanceProblemText } from '../../../src/words/chanceProblems'
import { faultsOf, sentenceFaultsOf } from './cleanSentence'

const state = (overloaded: number, hangers: number): StateChance => ({ case: 'watered', hangers, overloaded, chance: overloaded / hangers, interval: chanceInterval(overloaded, hangers) })
const said = (overloaded: number, hangers: number): string => chanceSentence(state(overloaded, hangers)).replaceAll('\u202f', ' ')

afterEach(() => { writeBy(USUAL_HABITS) })

describe('so many of so many', () => {
  test.each<[number, number, string]>([
    [0, 10_000, 'Of 10 000 hangers made like this, none would be overloaded just watered: the chance is fewer than 3 in 10 000.'],
    [0, 250, 'Of 250 hangers made like this, none would be overloaded just watered: the chance is fewer than 3 in 250.'],
    [0, 1, 'Of a single hanger made like this, none would be overloaded just watered: the chance is not yet known.'],
    [0, 5, 'Of 5 hangers made like this, none would be overloaded just watered: the chance is not yet known.'],
    [12, 10_000, 'Of 10 000 hangers made like this, 12 would be overloaded just watered: the chance is between 6.8 and 21 in 10 000.'],
    [2310, 10_000, 'Of 10 000 hangers made like this, 2 310 would be overloaded just watered: the chance is between 22 and 24 in 100.'],
    [10_000, 10_000, 'Of 10 000 hangers made like this, 10 000 would be overloaded just watered: the chance is between 99 and 100 in 100.'],
  ])('%i of %i', (overloaded, hangers, sentence) => {
    expect(said(overloaded, hangers)).toBe(sentence)
  })

  test('an interval is never told narrower than it is', () => {
    for (const [hits, draws] of [[1, 10_000], [7, 10_000], [40, 10_000], [625, 10_000], [3, 250], [199, 200_000]] as const) {
      const [, low, high, outOf] = /between ([\d.]+) and ([\d.]+) in ([\d ]+)\./.exec(said(hits, draws).replace(/(\d) (?=\d{3})/g, '$1'))!
      const interval = chanceInterval(hits, draws)
      expect(Number(low) / Number(outOf)).toBeLessThanOrEqual(interval.low + 1e-12)
      expect(Number(high) / Number(outOf)).toBeGreaterThanOrEqual(interval.high - 1e-12)
      expect(Number(high) / Number(outOf)).toBeLessThan(1.12 * interval.high)
    }
  })

  test('thousands are set apart by no mark that could be taken for the decimal one', () => {
    writeBy({ ...USUAL_HABITS, decimalMark: ',' })
    expect(said(1, 10_000)).toBe('Of 10 000 hangers made like this, 1 would be overloaded just watered: the chance is between 0,17 and 5,7 in 10 000.')
  })
})

test('every problem, part left out, input and limit is a clean sentence', () => {
  const problems: readonly ChanceProblem[] = [
    { code: 'BAD_SAMPLES', given: '', most: 200_000 }, { code: 'BAD_SEED', given: '-1', greatest: 9 },
    { code: 'NO_POT' }, { code: 'NO_HANGER' }, { code: 'LOAD_NOT_KNOWN', open: ['pot.rim', 'cord.fibre'] }, { code: 'LOAD_NOT_KNOWN', open: [] }, { code: 'LEGS_NOT_KNOWN' }, { code: 'LEGS_REFUSED' }, { code: 'NO_BALANCE' }, { code: 'NOTHING_KNOWN', links: ['hook', 'leg'] },
  ]
  for (const problem of problems) expect(sentenceFaultsOf(chanceProblemText(problem))).toEqual([])
  for (const code of OUTSIDE_CHANCE) expect(sentenceFaultsOf(outsideText(code))).toEqual([])
  for (const reason of ['notKnown', 'refused', 'fit', 'farStronger'] as const) expect(sentenceFaultsOf(leftOutText({ key: 'hook', link: 'hook', tier: 1, reason }))).toEqual([])
  for (const input of [...CHANCE_INPUTS, ...LINKS.map((link) => `strength.${link}` as const)]) expect(faultsOf(inputRankText({ input, total: 0.3 }))).toEqual([])
  expect(RANK_EXPLAINED).toContain('Jansen 1999')
})

test('parts by how often they fail first, the three most often', () => {
  const part = (link: 'hook' | 'leg' | 'ring' | 'seat', share: number) => ({ key: link, link, tier: 1, count: 1, share })
  const four = [part('leg', 0.6), part('hook', 0.3), part('ring', 0.096), part('seat', 0.004)]
  expect(failsText({ case: 'dry', fails: four })).toBe('What fails first dry: legs (60 %), hook (30 %), ring (10 %).')
  expect(failsText({ case: 'dry', fails: [] })).toBeNull()
  expect(nearestText({ case: 'bump', nearest: four.slice(3) })).toBe('What comes nearest to failing bumped and let swing: seat of the pot (under 1 %).')
  expect([partText(0), partText(0.005), partText(0.014), partText(1)]).toEqual(['0 %', 'under 1 %', '1 %', '100 %'])
})
