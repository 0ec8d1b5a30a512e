import { describe, expect, test } from 'vitest'
import { chanceBasisTexts, chanceReport, chanceSentence, DEMOS, failsText, leftOutText, mergeTallies, nearestText, parseDocument, useSpreadText, weightSpreadText, type HangerDocument, type Patch } from '#core'
import { ORDINARY } from '../hanger/hangerOf'
import { sentenceFaultsOf } from '../words/cleanSentence'
import { outcomeOf, reportOf, reportOfDocument, without } from './drawn'

const codesOf = (patch: Patch): readonly string[] => {
  const outcome = outcomeOf(patch, 10)
  return outcome.ok ? [] : outcome.problems.map(({ code }) => code)
}
function demo(name: string): HangerDocument {
  const parsed = parseDocument(DEMOS.find(({ file }) => file === name)?.text ?? '')
  if (!parsed.ok) throw new Error(name)
  return parsed.document
}
const middle = (patch: Patch): number => reportOf(patch, { samples: 50 }).cases.find((c) => c.case === 'watered')!.use.quantiles.p50
const RATED = { ...ORDINARY, 'cord.rated': '300 N', 'testHang.mass': '60 kg', 'testHang.slip': '1 mm' } as const

describe('hangers drawn', () => {
  const whole = reportOf(ORDINARY, { samples: 500 })

  test('the same seed draws the same, however chunks are shared and merged; another seed draws others', () => {
    expect(reportOf(ORDINARY, { samples: 500, workers: 2 })).toEqual(whole)
    const [one, other] = [1, 2].map((seed) => reportOf(ORDINARY, { samples: 5, seed }).watered)
    expect(one).not.toEqual(other)
  })

  test('no hanger is drawn twice and each is counted once', () => {
    expect([whole.hangers, whole.complete]).toEqual([500, true])
    for (const { nearest, fails, overloaded, use } of whole.cases) {
      expect(nearest.reduce((sum, { count }) => sum + count, 0)).toBe(500)
      expect(fails.reduce((sum, { count }) => sum + count, 0)).toBe(overloaded)
      expect(use.counts.reduce((sum, count) => sum + count, 0)).toBe(500)
    }
    const outcome = outcomeOf(ORDINARY, 260)
    const tally = outcome.ok ? outcome.tally : null
    expect(new Set(tally!.chunks.flatMap((chunk) => chunk.watered)).size).toBe(260)
    expect(chanceReport({ ...tally!, chunks: tally!.chunks.slice(0, 1) })).toMatchObject({ hangers: 250, complete: false })
    expect(chanceReport({ ...tally!, chunks: [] })).toBeNull()
    expect(mergeTallies({ ...tally!, chunks: tally!.chunks.slice(1) }, { ...tally!, chunks: tally!.chunks.slice(0, 1) })).toEqual(tally)
  })

  test('nine of ten weigh between the low and the high of the check, about', () => {
    const { p05, p50, p95 } = whole.watered.quantiles
    // Weighed flooded; just watered some of its water has run out.
    expect([p05 > 3, p50 < 6.2, p95 < whole.frame.checkedWeight * 1.05]).toEqual([true, true, true])
  })

  test('shares of the inputs lie between nought and all, most decisive first', () => {
    const totals = whole.inputs.map(({ total }) => total)
    expect(totals).toEqual([...totals].sort((a, b) => b - a))
    expect(whole.inputs.every(({ total, alone }) => alone >= 0 && alone < 1.3 && total >= 0 && total < 1.3)).toBe(true)
    expect(totals.reduce((sum, total) => sum + total, 0)).toBeGreaterThan(0.9)
  })

  test('a heavier pot and a weaker cord are used harder', () => {
    const masses = ['4 kg', '8 kg', '16 kg'].map((mass) => middle({ ...ORDINARY, 'weighed.mass': mass }))
    expect(masses).toEqual([...masses].sort((a, b) => a - b))
    const [weak, strong] = ['120 N', '480 N'].map((rated) => reportOf({ ...RATED, 'weighed.mass': '14 kg', 'cord.rated': rated! }, { samples: 100 }))
    expect(weak!.atRest.overloaded).toBeGreaterThan(strong!.atRest.overloaded + 25)
    expect(weak!.cases[0]!.fails[0]!.link).toMatch(/leg|gatheringTurn|wrapHoop/)
  })

  test('what is beneath sets a reserve, and changes nothing that is drawn', () => {
    const [nothing, people] = ['nothing', 'people'].map((beneath) => reportOf({ ...RATED, 'place.beneath': beneath }, { samples: 50 }))
    expect(people!.frame.parts).toEqual(nothing!.frame.parts)
    expect(people!.cases).toEqual(nothing!.cases)
  })

  test('a longer service life leaves less', () => {
    expect(middle({ ...RATED, 'weighed.mass': '14 kg', 'place.life': '10 years' })).toBeGreaterThan(middle({ ...RATED, 'weighed.mass': '14 kg', 'place.life': '1 year' }))
  })
})

describe('what is not known', () => {
  test.each<[string, Patch, readonly string[]]>([
    ['no pot yet', { ...ORDINARY, 'pot.have': 'no' }, ['NO_POT']],
    ['no hanger yet', { ...ORDINARY, 'make.have': 'no' }, ['NO_HANGER']],
    ['cord of which nothing is known', without(ORDINARY, 'cord.diameter', 'cord.linearDensity'), ['LEGS_NOT_KNOWN']],
    ['strands too short', { ...ORDINARY, 'make.totalLength': '30 cm', 'make.fringe': '5 cm' }, ['NO_BALANCE']],
    ['natural cord outdoors over people', { ...RATED, 'place.exposure': 'outdoors', 'place.beneath': 'people' }, ['LEGS_REFUSED']],
    ['no width of the pot', without(ORDINARY, 'pot.rim'), ['LOAD_NOT_KNOWN']],
    ['an answer that cannot be read', { ...ORDINARY, 'pot.rim': '3 kg' }, ['UNREADABLE']],
  ])('%s: no figure', (_, patch, codes) => {
    expect(codesOf(patch)).toEqual(codes)
  })

  test('a part of the place that is not known, or refused, is left out by name, and the rest is told', () => {
    const { leftOut, parts } = reportOf({ ...ORDINARY, 'place.substrate': 'unknown' }, { samples: 20 }).frame
    expect(leftOut).toContainEqual({ key: 'fixing', link: 'fixing', tier: 1, reason: 'notKnown' })
    expect([parts.includes('fixing'), parts.includes('leg')]).toEqual([false, true])
    const jute = reportOf({ ...RATED, 'cord.rated': '2000 N', 'cord.fibre': 'jute', 'pot.drainage': 'hole', 'place.watering': 'daily' }, { samples: 20 }).frame
    expect(jute.leftOut).toContainEqual({ key: 'gatheringTurn', link: 'gatheringTurn', tier: 1, reason: 'refused' })
    const refused = reportOf({ ...ORDINARY, 'place.substrate': 'ceilingTileOrGrid' }, { samples: 20 }).frame
    expect(refused.leftOut).toContainEqual({ key: 'fixing', link: 'fixing', tier: 1, reason: 'refused' })
  })

  test.each(DEMOS.map(({ file }) => file))('%s: every part gets numbers, and every sentence is clean', (file) => {
    const report = reportOfDocument(demo(file), { samples: 10 })
    const { frame, cases } = report
    expect(frame.slings).toBe(file.startsWith('spider-plant') ? 'scaled' : 'solved')
    expect(frame.parts.includes('leg@2')).toBe(file.startsWith('two-tiers'))
    expect(cases.every(({ use }) => use.least > 0.01 && use.most < 3)).toBe(true)
    const texts = [report.atRest, ...cases].map(chanceSentence)
    texts.push(...cases.flatMap((one) => [nearestText(one), useSpreadText(one), failsText(one) ?? 'None fails.']), weightSpreadText(report), ...frame.leftOut.map(leftOutText), ...chanceBasisTexts(report))
    for (const text of texts) expect(sentenceFaultsOf(text)).toEqual([])
  })
})

describe('numbers that cannot be asked for', () => {
  test.each([[0, 1, 'BAD_SAMPLES'], [1.5, 1, 'BAD_SAMPLES'], [NaN, 1, 'BAD_SAMPLES'], [200_001, 1, 'BAD_SAMPLES'], [10, -1, 'BAD_SEED'], [10, 0.5, 'BAD_SEED'], [10, 2 ** 31, 'BAD_SEED']])('%f hangers from seed %f', (samples, seed, code) => {
    const outcome = outcomeOf(ORDINARY, samples, seed)
    expect(outcome.ok ? [] : outcome.problems.map((p) => p.code)).toEqual([code])
  })
})
