import { describe, expect, test } from 'vitest'
import { checkHanger, pullTestSummary, type PullTestSet, type PullTestRow } from '#core'
import { choosePullTests } from '../../../src/check/pullTests'
import { ORDINARY } from '../hanger/hangerOf'
import { testedHanger } from '../hanger/testedHanger'
import { seededRandom } from '../quantity/seededRandom'
import { linkIn } from './linkOf'

type Typed = PullTestRow['typed']
const summaryOf = (log: readonly Typed[]) => pullTestSummary(testedHanger({ 'cord.fibre': 'cotton' }, log).pullTests, 'cotton')

/** The set of pulls of ten seconds, straight and dry, of these newtons. */
function setOf(newtons: readonly number[], typed: Typed): PullTestSet {
  const [set] = summaryOf(newtons.map((n) => ({ load: `${n} N`, time: '10 s', ...typed }))).sets
  if (set === undefined) throw new Error('no set')
  return set
}

describe('one set of tests', () => {
  test('by hand: 90, 100, 120 and 113 N', () => {
    const set = setOf([90, 100, 120, 113], {})
    const logs = [90, 100, 120, 113].map(Math.log)
    const mean = logs.reduce((a, b) => a + b, 0) / 4
    const deviation = Math.sqrt(logs.reduce((sum, x) => sum + (x - mean) ** 2, 0) / 3)
    expect(deviation).toBeCloseTo(0.128, 3)
    expect(set).toMatchObject({ n: 4, k: 2.63, least: 90, greatest: 120 })
    expect(set.mean).toBeCloseTo((90 * 100 * 120 * 113) ** 0.25, 9)
    expect(set.scatter).toBeCloseTo(Math.sqrt(Math.exp(deviation ** 2) - 1), 12)
    expect(set.characteristic).toBeCloseTo(Math.exp(mean - 2.63 * deviation), 9)
  })

  test('tests that happen to lie close are counted with a scatter of 0.10', () => {
    const set = setOf([100, 101, 99, 100, 100], {})
    expect(set.measuredScatter).toBeLessThan(0.01)
    expect(set.scatter).toBe(0.1)
    expect(set.characteristic / set.mean).toBeCloseTo(Math.exp(-2.33 * Math.sqrt(Math.log(1.01))), 12)
  })

  test('one or two are counted with a scatter of 0.20, known beforehand', () => {
    expect(setOf([140], {})).toMatchObject({ n: 1, k: 2.31, scatter: 0.2, measuredScatter: null })
    expect(setOf([140], {}).characteristic).toBeCloseTo(140 * Math.exp(-2.31 * Math.sqrt(Math.log(1.04))), 9)
    expect(setOf([140, 150], {})).toMatchObject({ n: 2, k: 2.01, scatter: 0.2 })
  })

  test('two that lie far apart are counted with what they show', () => {
    expect(setOf([100, 240], {}).scatter).toBeGreaterThan(0.6)
  })

  test('a jerk counts less than it read, a slow pull more; what was not timed counts as a quick pull', () => {
    const counted = (time: Typed): number => setOf([100], time).pulls[0]?.counted ?? NaN
    expect(counted({ time: '0.5 s' })).toBeCloseTo(100 / (1 + 0.088 * Math.log10(20)), 9)
    expect(counted({ time: '90 s' })).toBeCloseTo(100 / (1 - 0.088 * Math.log10(9)), 9)
    const [untimed] = summaryOf([{ load: '100 N' }]).sets
    expect(untimed?.pulls[0]?.counted).toBeCloseTo(100 / (1 + 0.088 * Math.log10(2)), 9)
    expect(untimed?.untimed).toBe(1)
  })

  test('what did not break counts as its load, and is told', () => {
    expect(setOf([100, 110, 120], { broke: 'no' })).toMatchObject({ held: 3 })
    expect(setOf([100, 110, 120], { broke: 'no' }).characteristic).toBe(setOf([100, 110, 120], {}).characteristic)
  })

  test('a load given as a mass is its pull, and is told', () => {
    const [set] = summaryOf([{ load: '110 N', time: '10 s' }, { load: '12 kg', time: '10 s' }]).sets
    expect(set?.inMass).toMatchObject({ row: 1, force: 12 * 9.80665 })
    expect(setOf([110], {}).inMass).toBeNull()
  })
})

describe('a test that lies far from the others', () => {
  test('is warned of by its row, and counts all the same', () => {
    const set = setOf([100, 104, 97, 101, 99, 55], {})
    expect(set.outliers).toEqual([5])
    expect(set.n).toBe(6)
    expect(set.least).toBe(55)
    expect(setOf([100, 104, 97, 101, 99, 180], {}).outliers).toEqual([5])
  })

  test.each([[[100, 104, 97, 101, 99, 93]], [[100, 120, 85, 140, 70]], [[100, 100, 100, 100, 100, 101]], [[100, 100, 300]], [[100, 300]], [[100]]])('none in %j', (newtons) => {
    expect(setOf(newtons, {}).outliers).toEqual([])
  })
})

describe('what more tests would give', () => {
  test('of four: their own mean and scatter, counted with more tests', () => {
    const set = setOf([90, 100, 120, 113], {})
    const deviation = Math.sqrt(Math.log(1 + set.scatter ** 2))
    expect(set.more.map((m) => m.tests)).toEqual([2, 5, 10])
    expect(set.more[0]?.characteristic).toBeCloseTo(set.mean * Math.exp(-2.18 * deviation), 9)
    // Nine: between 2.00 at eight and 1.92 at ten. Fourteen: four tenths of the way from ten to twenty.
    expect(set.more[1]?.characteristic).toBeCloseTo(set.mean * Math.exp(-1.96 * deviation), 9)
    expect(set.more[2]?.characteristic).toBeCloseTo(set.mean * Math.exp(-(1.92 - 0.4 * 0.16) * deviation), 9)
  })

  test('of one or two that agree: each further step pays', () => {
    for (const newtons of [[140], [140, 150]]) {
      const set = setOf(newtons, {})
      const steps = [set.characteristic, ...set.more.map((m) => m.characteristic)]
      expect(steps).toEqual([...steps].sort((a, b) => a - b))
      expect(new Set(steps).size).toBe(4)
    }
  })
})

describe('one that held', () => {
  test('for a month counts for no more than it bore, one that broke after a month for what it would have borne for ten seconds', () => {
    const month = { time: '30 days' }
    // By hand: log10(2,592,000 s / 10 s) = 5.4137; 100 / (1 - 0.088 x 5.4137).
    expect(setOf([100], month).mean).toBeCloseTo(100 / (1 - 0.088 * 5.4137), 2)
    expect(setOf([100], { ...month, broke: 'no' }).mean).toBeCloseTo(100, 9)
  })

  test('after a jerk counts for less than it bore, as if it had broken', () => {
    expect(setOf([100], { time: '1 s', broke: 'no' }).mean).toBeCloseTo(100 / 1.088, 9)
  })
})

describe('whatever the tests', () => {
  const random = seededRandom(41)
  const SETS = Array.from({ length: 60 }, () => Array.from({ length: 3 + Math.floor(random() * 10) }, () => Math.round(60 + 120 * random())))

  test('all stronger by a share: what counts is stronger by that share', () => {
    for (const newtons of SETS) expect(setOf(newtons.map((n) => n * 1.5), {}).characteristic / setOf(newtons, {}).characteristic).toBeCloseTo(1.5, 9)
  })

  test('one more test at their mean never lowers what counts', () => {
    for (const newtons of SETS) {
      const set = setOf(newtons, {})
      expect(setOf([...newtons, set.mean], {}).characteristic).toBeGreaterThanOrEqual(set.characteristic * (1 - 1e-12))
    }
  })

  test('what counts lies below every mean, and below the weakest of few', () => {
    for (const newtons of SETS) {
      const set = setOf(newtons, {})
      expect(set.characteristic).toBeLessThan(set.mean)
      // One of n lies at most (n - 1) / sqrt(n) standard deviations off, which up to six is less than k.
      if (set.n <= 6) expect(set.characteristic).toBeLessThan(set.least)
    }
  })

  test('their order does not matter', () => {
    for (const newtons of SETS) expect(setOf([...newtons].reverse(), {}).characteristic).toBeCloseTo(setOf(newtons, {}).characteristic, 9)
  })
})

describe('the set that counts', () => {
  const row = (count: number, how: string, state: string): readonly Typed[] => Array.from({ length: count }, (_, i) => ({ load: `${100 + 7 * i} N`, how, state, time: '10 s' }))
  const chosen = (log: readonly Typed[], how: 'tied' | 'straight', wet: boolean): string | null => {
    const set = choosePullTests(summaryOf(log), how, wet)
    return set === null ? null : `${set.how} ${set.state}`
  }
  const FULL = [...row(3, 'tied', 'dry'), ...row(3, 'tied', 'soaked'), ...row(3, 'straight', 'dry'), ...row(3, 'straight', 'soaked')]

  test('an empty log has none', () => {
    expect(summaryOf([]).sets).toEqual([])
    expect(chosen([], 'tied', false)).toBeNull()
  })

  test('tests as tied that bore more than straight ones are left aside: a whole leg of four was pulled for one strand', () => {
    const whole = [400, 430, 410].map((n): Typed => ({ load: `${n} N`, how: 'tied', state: 'dry', time: '10 s' }))
    expect(chosen([...whole, ...row(3, 'straight', 'dry')], 'tied', false)).toBe('straight dry')
    expect(chosen([...whole, ...row(1, 'straight', 'dry')], 'tied', true)).toBe('straight dry')
    // Where nothing was pulled straight in that state there is nothing to hold against it.
    expect(chosen([...whole, ...row(3, 'straight', 'soaked')], 'tied', false)).toBe('tied dry')
    // A little more may be chance.
    expect(chosen([...row(3, 'tied', 'dry').map((typed) => ({ ...typed, load: '118 N' })), ...row(3, 'straight', 'dry')], 'tied', false)).toBe('tied dry')
  })

  test('the way that is asked for, in the matching state', () => {
    expect(chosen(FULL, 'tied', true)).toBe('tied soaked')
    expect(chosen(FULL, 'tied', false)).toBe('tied dry')
    expect(chosen(FULL, 'straight', true)).toBe('straight soaked')
  })

  test('as tied before the matching state', () => {
    expect(chosen([...row(3, 'tied', 'dry'), ...row(3, 'straight', 'soaked')], 'tied', true)).toBe('tied dry')
  })

  test('three and more before fewer', () => {
    expect(chosen([...row(2, 'tied', 'soaked'), ...row(3, 'straight', 'dry')], 'tied', true)).toBe('straight dry')
    expect(chosen([...row(2, 'tied', 'soaked'), ...row(1, 'straight', 'dry')], 'tied', true)).toBe('tied soaked')
  })
})

test('what counts of pull tests says how they were made', () => {
  const sourceOf = (how: string): string | undefined => {
    const rows = ['131 N', '118 N', '140 N', '126 N'].map((load) => ({ load, how, state: 'dry', time: '20 s' }))
    return linkIn(checkHanger(testedHanger(ORDINARY, rows)), 'leg', 'dry').capacity?.source
  }
  expect(sourceOf('tied')).toContain('as tied')
  expect(sourceOf('straight')).toContain('straight')
})
