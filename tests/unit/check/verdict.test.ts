import { describe, expect, test } from 'vitest'
import { isWorse, type Grade, type LinkResult, type Verdict } from '#core'
import { governingOf } from '../../../src/check/checkHanger'
import { assessLink, type Evidence } from '../../../src/check/linkResult'
import { verdictFor, weakerGrade, worse, worstOf } from '../../../src/check/verdict'

const ORDER: readonly Verdict[] = ['holds', 'just holds', 'not enough known', 'fails']

test('verdicts rise from holds to fails', () => {
  for (const [i, a] of ORDER.entries()) {
    for (const [j, b] of ORDER.entries()) {
      expect(isWorse(a, b)).toBe(i > j)
      expect(worse(a, b)).toBe(ORDER[Math.max(i, j)])
    }
  }
})

test('a whole is as bad as its worst part, and of nothing not enough is known', () => {
  expect(worstOf(['holds', 'not enough known', 'just holds'])).toBe('not enough known')
  expect(worstOf(['holds'])).toBe('holds')
  expect(worstOf([])).toBe('not enough known')
})

describe('the limit for "holds" by the weakest grade', () => {
  test.each<[Grade, number]>([['tested', 0.8], ['rated', 0.8], ['weighed', 0.65], ['table', 0.65], ['diameter', 0.4]])('%s: up to %d', (grade, limit) => {
    expect(verdictFor(limit, grade)).toBe('holds')
    expect(verdictFor(limit + 1e-6, grade)).toBe(grade === 'diameter' ? 'not enough known' : 'just holds')
    expect(verdictFor(1, grade)).toBe(grade === 'diameter' ? 'not enough known' : 'just holds')
    expect(verdictFor(1 + 1e-6, grade)).toBe('fails')
    expect(verdictFor(Infinity, grade)).toBe('fails')
  })

  test('a model without a published test just holds at best and never fails', () => {
    expect(verdictFor(0.01, 'model')).toBe('just holds')
    expect(verdictFor(1, 'model')).toBe('just holds')
    expect(verdictFor(1.0001, 'model')).toBe('not enough known')
    expect(verdictFor(40, 'model')).toBe('not enough known')
  })
})

test('the weaker of two grades is the later of the list', () => {
  expect(weakerGrade('rated', 'diameter')).toBe('diameter')
  expect(weakerGrade('table', 'weighed')).toBe('table')
  expect(weakerGrade('model', 'tested')).toBe('model')
})

const source = { basis: 'published', source: 'a test' } as const
const evidence: Evidence = {
  link: 'leg', part: 'fillers', side: 'hanger', case: 'dry', demand: { value: 30, unit: 'N' }, capacity: { value: 200, unit: 'N', ...source },
  factors: [{ code: 'ageing', value: 0.8, ...source }, { code: 'reserve', value: 0.5, ...source }], grade: 'weighed', overallFactor: 6.7, atLeast: 'holds', findings: [], terms: [],
}

describe('what a link is told', () => {
  test('by hand: 30 N of 200 x 0.8 x 0.5 = 80 N is 37.5 %', () => {
    const link = assessLink(evidence)
    expect(link.id).toBe('leg.fillers.dry')
    expect(link.allowable).toEqual({ value: 80, unit: 'N' })
    expect(link.utilisation).toBe(0.375)
    expect(link.verdict).toBe('holds')
  })

  test('an overall factor below 5 never holds, and is said', () => {
    const low = assessLink({ ...evidence, overallFactor: 4.99 })
    expect(low.verdict).toBe('just holds')
    expect(low.findings).toEqual([{ code: 'LOW_OVERALL_FACTOR', factor: 4.99, least: 5 }])
    expect(assessLink({ ...evidence, overallFactor: 5 }).verdict).toBe('holds')
  })

  test('a low overall factor does not soften what fails', () => {
    expect(assessLink({ ...evidence, demand: { value: 81, unit: 'N' }, overallFactor: 2.5 }).verdict).toBe('fails')
  })

  test('without a demand or a capacity not enough is known, whatever the rest', () => {
    expect(assessLink({ ...evidence, demand: null })).toMatchObject({ verdict: 'not enough known', utilisation: null })
    expect(assessLink({ ...evidence, capacity: null })).toMatchObject({ verdict: 'not enough known', utilisation: null, allowable: null, grade: null })
  })

  test('a part that may carry nothing fails, without a number that is not one', () => {
    expect(assessLink({ ...evidence, capacity: { value: 0, unit: 'N', ...source } })).toMatchObject({ verdict: 'fails', utilisation: null })
  })

  test('is at least as bad as was found otherwise', () => {
    expect(assessLink({ ...evidence, atLeast: 'fails' }).verdict).toBe('fails')
    expect(assessLink({ ...evidence, demand: { value: 200, unit: 'N' }, atLeast: 'just holds' }).verdict).toBe('fails')
  })
})

describe('the link that governs', () => {
  const result = (id: string, verdict: Verdict, utilisation: number | null): LinkResult => ({ ...assessLink(evidence), id, verdict, utilisation })

  test('has the worst verdict first, then the largest utilisation', () => {
    const links = [result('a', 'holds', 0.79), result('b', 'just holds', 0.4), result('c', 'just holds', 0.55), result('d', 'holds', 0.1)]
    expect(governingOf(links)?.id).toBe('c')
  })

  test('is one with a number before one without', () => {
    expect(governingOf([result('a', 'not enough known', null), result('b', 'not enough known', 0.02)])?.id).toBe('b')
  })

  test('is told apart in the last digit, however bad the verdict', () => {
    expect(governingOf([result('a', 'fails', 7.309137470625703), result('b', 'fails', 7.309137470625704)])?.id).toBe('b')
  })

  test('of no links is none', () => {
    expect(governingOf([])).toBeNull()
  })
})
