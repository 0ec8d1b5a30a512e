import { describe, expect, test } from 'vitest'
import { checkHanger, strengthLadder, type Patch, type PullTestRow } from '#core'
import { cordStrengths } from '../../../src/check/cordStrength'
import type { RungCode } from '../../../src/check/cordRungs'
import { checkOf, hangerOf, ORDINARY } from '../hanger/hangerOf'
import { testedHanger } from '../hanger/testedHanger'
import { without } from '../hanger/without'
import { codesOf, linkIn, worstOfLink } from './linkOf'

const strength = (patch: Patch) => cordStrengths(hangerOf(patch)).leg.dry
const MANILA: Patch = { 'cord.fibre': 'manila', 'cord.make': 'rope' }
const lbf = (pounds: number): number => pounds * 0.45359237 * 9.80665

/** Ten-second pulls. */
const pulls = (newtons: readonly number[], typed: PullTestRow['typed']): readonly PullTestRow['typed'][] => newtons.map((n) => ({ load: `${n} N`, time: '10 s', ...typed }))
const FIVE = [210, 228, 199, 221, 215]
const factorsOf = (log: readonly PullTestRow['typed'][], code: 'dry' | 'watered') =>
  Object.fromEntries(linkIn(checkHanger(testedHanger({ ...ORDINARY, 'cord.fibre': 'jute' }, log)), 'leg', code).factors.map((f) => [f.code, f.value]))

describe('the ladder', () => {
  test('takes the first way that is open', () => {
    const all: Patch = { ...MANILA, 'cord.diameter': '8 mm', 'cord.linearDensity': '39.5 g/m' }
    const grades = [
      cordStrengths(testedHanger({ ...all, 'cord.rated': '3 kN' }, pulls(FIVE, {}))).leg.dry.grade,
      strength({ ...all, 'cord.rated': '3 kN' }).grade,
      strength(all).grade,
      strength({ ...all, 'cord.make': 'twisted' }).grade,
      strength({ 'cord.diameter': '8 mm' }).grade,
    ]
    expect(grades).toEqual(['tested', 'rated', 'table', 'weighed', 'diameter'])
  })

  test('lists every way with its force or why it is not open, and marks the one that counts', () => {
    const { rungs } = strengthLadder(hangerOf({ ...MANILA, 'cord.diameter': '8 mm', 'cord.linearDensity': '39.5 g/m' }))
    expect(rungs.map(({ code, strength: s, gap, counts }) => [code, s === null ? gap : Math.round(s.value), counts])).toEqual([
      ['pullTests', 'noTests', false], ['rated', 'notRated', false], ['ropeTable', Math.round(lbf(900)), true], ['weighed', Math.round(39.5 * 88), false], ['diameter', 15 * 64, false],
    ])
  })

  test.each<[Patch, Partial<Record<RungCode, string | null>>]>([
    [{}, { ropeTable: 'notRope', weighed: 'notWeighed', diameter: 'noDiameter' }],
    [{ 'cord.fibre': 'hemp', 'cord.make': 'rope', 'cord.diameter': '8 mm' }, { ropeTable: 'noTable', diameter: null }],
    [MANILA, { ropeTable: 'noDiameter' }],
    [{ ...MANILA, 'cord.diameter': '4 mm' }, { ropeTable: 'thinnerThanTable' }],
    [{ ...MANILA, 'cord.diameter': '8 mm', 'cord.linearDensity': '30 g/m' }, { ropeTable: 'lighterThanTable', weighed: null }],
    [{ ...MANILA, 'cord.diameter': '8 mm', 'cord.linearDensity': '300 g/m' }, { ropeTable: 'tooHeavy', weighed: 'tooHeavy', diameter: null }],
    [{ 'cord.linearDensity': '5 g/m' }, { weighed: 'noTenacity' }],
    [{ 'cord.fibre': 'cotton', 'cord.weighedMass': '1 g', 'cord.weighedLength': '20 cm' }, { weighed: 'pieceTooLight' }],
    [{ 'cord.fibre': 'cotton', 'cord.weighedMass': '48 g' }, { weighed: 'notWeighed' }],
  ])('%j: %j', (patch, gaps) => {
    const { rungs } = strengthLadder(hangerOf(patch))
    for (const [code, gap] of Object.entries(gaps)) expect([code, rungs.find((r) => r.code === code)?.gap]).toEqual([code, gap])
  })

  test('the one that counts is what the check counts with', () => {
    for (const patch of [ORDINARY, { ...ORDINARY, 'cord.rated': '300 N' }, { ...ORDINARY, ...MANILA, 'cord.diameter': '6 mm', 'cord.linearDensity': '28 g/m' }, without(ORDINARY, 'cord.linearDensity')]) {
      const counts = strengthLadder(hangerOf(patch)).rungs.find((r) => r.counts)
      expect(counts?.strength?.value).toBe(linkIn(checkOf(patch), 'leg', 'dry').capacity?.value)
    }
  })
})

describe('the rope table', () => {
  test.each([
    // Printed pounds-force of CI 1308-96 by inches; between two sizes the thinner one.
    ['3/16 in', 405], ['5 mm', 405], ['5.9 mm', 405], ['1/4 in', 540], ['5/16 in', 900], ['9 mm', 900], ['3/8 in', 1215], ['1/2 in', 2385], ['9/16 in', 3105],
  ])('manila of %s: %d lbf', (diameter, pounds) => {
    expect(strength({ ...MANILA, 'cord.diameter': diameter })).toMatchObject({ grade: 'table', findings: [] })
    expect(strength({ ...MANILA, 'cord.diameter': diameter }).capacity?.value).toBeCloseTo(lbf(pounds), 6)
  })

  test('says nothing of rope thinner than its thinnest', () => {
    const thin = strength({ ...MANILA, 'cord.diameter': '4.7 mm' })
    expect(thin.grade).toBe('diameter')
    expect(thin.findings.map((f) => f.code)).toEqual(['OUTSIDE_ROPE_TABLE', 'CORD_BY_DIAMETER'])
  })

  test('takes thicker rope for its thickest, and says so', () => {
    const thick = strength({ ...MANILA, 'cord.diameter': '18 mm' })
    expect(thick.capacity?.value).toBeCloseTo(lbf(3105), 6)
    expect(thick.findings.map((f) => f.code)).toEqual(['OUTSIDE_ROPE_TABLE'])
  })

  test('is left aside where the cord is lighter than its rope, less the tolerance', () => {
    // 2.64 lb/100 ft is 39.29 g/m; less 10 % 35.36. 3.79 is 56.40; less 8 % 51.89.
    const grade = (diameter: string, grams: number): string => strength({ ...MANILA, 'cord.diameter': diameter, 'cord.linearDensity': `${grams} g/m` }).grade
    expect([grade('8 mm', 35.3), grade('8 mm', 35.4), grade('10 mm', 51.8), grade('10 mm', 52)]).toEqual(['weighed', 'table', 'weighed', 'table'])
    expect(strength({ ...MANILA, 'cord.diameter': '8 mm', 'cord.linearDensity': '35.3 g/m' }).findings.map((f) => f.code)).toEqual(['CORD_LIGHTER_THAN_TABLE'])
  })
})

describe('a rope between two sizes', () => {
  test('counts with the thinner one’s strength and bends as the thinner one', () => {
    const rope = (diameter: string) => linkIn(checkOf({ ...without(ORDINARY, 'cord.linearDensity'), ...MANILA, 'make.build': 'plain', 'ring.wire': '33 mm', 'cord.diameter': diameter }), 'leg', 'dry')
    // 33 mm over 8 mm: 0.5 + 0.25 (33/8 - 2) / 13, for each of four strands.
    expect(rope('9 mm').factors.find((f) => f.code === 'effectiveStrands')?.value).toBeCloseTo(4 * (0.5 + (0.25 * (33 / 8 - 2)) / 13), 12)
    expect(rope('9 mm').allowable?.value).toBe(rope('8 mm').allowable?.value)
  })
})

describe('a weighed piece of cord', () => {
  test('counts with the low end of what scale and tape may be out', () => {
    const piece: Patch = { 'cord.fibre': 'cotton', 'cord.make': 'loose', 'cord.weighedMass': '48 g', 'cord.weighedLength': '10 m' }
    expect(strength(piece)).toMatchObject({ grade: 'weighed' })
    expect(strength(piece).capacity?.value).toBeCloseTo((40 * 47) / 10.1, 9)
    const { weighing } = strengthLadder(hangerOf(piece))
    expect(weighing?.counted).toBeCloseTo((40 * 47) / 10.1, 9)
    // 39 to 85.8 N for each g/m: recycled yarn of 6 cN/tex and good rotor yarn of 13.2, both at 0.65.
    expect(weighing?.low).toBeCloseTo((39 * 47) / 10.1, 9)
    expect(weighing?.high).toBeCloseTo((85.8 * 49) / 9.9, 9)
    expect(weighing?.perMetre).toMatchObject({ likely: expect.closeTo(0.0048, 12) as number })
  })

  test('yields to grams per metre as told', () => {
    expect(strength({ 'cord.fibre': 'cotton', 'cord.linearDensity': '6 g/m', 'cord.weighedMass': '48 g', 'cord.weighedLength': '10 m' }).capacity?.value).toBeCloseTo(240, 9)
  })

  test('of unknown fibre is told no strength', () => {
    expect(strengthLadder(hangerOf({ 'cord.linearDensity': '6 g/m' })).weighing).toBeNull()
    expect(strengthLadder(hangerOf({ 'cord.fibre': 'cotton' })).weighing).toBeNull()
  })
})

describe('own pull tests in a check', () => {
  test('dry ones keep the wet factor, soaked ones hold the wet already', () => {
    expect(factorsOf(pulls(FIVE, {}), 'watered')['wet']).toBe(0.8)
    expect(factorsOf(pulls(FIVE, { state: 'soaked' }), 'watered')).not.toHaveProperty('wet')
  })

  test('soaked ones alone count less for a dry cord', () => {
    const cord = cordStrengths(testedHanger(ORDINARY, pulls(FIVE, { state: 'soaked' })))
    expect(cord.leg.dry.capacity?.value).toBeCloseTo((cord.leg.wet.capacity?.value ?? NaN) / 1.2, 9)
  })

  test('straight ones keep the knots’ share, as tied do not, in the leg and at the turn', () => {
    expect(factorsOf(pulls(FIVE, {}), 'dry')['effectiveStrands']).toBeCloseTo(1.4, 12)
    expect(factorsOf(pulls(FIVE, { how: 'tied' }), 'dry')['effectiveStrands']).toBeCloseTo(1.8, 12)
    const turn = linkIn(checkHanger(testedHanger(ORDINARY, pulls(FIVE, { how: 'tied' }))), 'gatheringTurn', 'dry')
    expect(turn.factors.find((f) => f.code === 'strandsAtWraps')?.value).toBeCloseTo(3.6, 12)
  })

  test('the wraps, which are not tied, go by straight ones first', () => {
    const check = checkHanger(testedHanger(ORDINARY, [...pulls(FIVE, { how: 'tied' }), ...pulls(FIVE.map((n) => n * 2), {})]))
    expect(linkIn(check, 'wrapHoop', 'dry').capacity?.value).toBeCloseTo(2 * (linkIn(check, 'leg', 'dry').capacity?.value ?? NaN), 9)
  })

  test('the overall factor goes by the straight strand', () => {
    const factor = (log: readonly PullTestRow['typed'][]) => linkIn(checkHanger(testedHanger(ORDINARY, log)), 'leg', 'watered').overallFactor
    const straight = pulls(FIVE, {})
    expect(factor([...straight, ...pulls(FIVE.map((n) => n / 2), { how: 'tied' })])).toBeCloseTo(factor(straight) ?? NaN, 6)
  })

  test('a few, an outlier, one that held and a mass are told', () => {
    const said = (log: readonly PullTestRow['typed'][]) => codesOf(checkHanger(testedHanger(ORDINARY, log)), 'leg').filter((code) => code.includes('PULL_TEST'))
    expect(said(pulls(FIVE, {}))).toEqual([])
    expect(said(pulls([210, 221], {}))).toContain('FEW_PULL_TESTS')
    expect(said(pulls([...FIVE, 90], {}))).toContain('PULL_TEST_OUTLIER')
    expect(said(pulls(FIVE, { broke: 'no' }))).toContain('PULL_TEST_HELD')
    expect(said([...pulls(FIVE, {}), ...pulls(FIVE.map((n) => 4 * n), { how: 'tied' })])).toEqual(['PULL_TESTS_TIED_STRONGER'])
    expect(said([{ load: '12 kg' }, { load: '13 kg' }, { load: '11 kg' }])).toContain('PULL_TEST_IN_MASS')
  })

  test('a stronger strand is a stiffer one, and one tested as tied no softer than its weight tells', () => {
    const likely = (log: readonly PullTestRow['typed'][]): number => cordStrengths(testedHanger(ORDINARY, log)).likely ?? NaN
    expect(likely(pulls([400, 410, 420], {}))).toBeCloseTo((400 * 410 * 420) ** (1 / 3), 9)
    expect(likely(pulls([80, 82, 85], { how: 'tied' }))).toBe(likely([]))
  })
})

describe('what pull tests would settle', () => {
  const found = (patch: Patch) => checkOf(patch).links.flatMap((l) => l.findings.flatMap((f) => (f.code === 'PULL_TESTS_WOULD_SETTLE' ? [{ link: l.link, ...f }] : [])))
  const JUST: Patch = { ...ORDINARY, 'weighed.mass': '7.5 kg', 'hook.rated': '80 kgf' }

  test('is said of cord that was weighed and does not quite hold; pulls that come out so settle it', () => {
    expect(worstOfLink(checkOf(JUST), 'leg').verdict).not.toBe('holds')
    const asked = found(JUST).filter((f) => f.link === 'leg')
    expect(asked.length).toBeGreaterThan(0)
    const [first] = asked
    // Alike in every situation of the part.
    expect(new Set(asked.map((f) => f.mean)).size).toBe(1)
    const log = pulls([0.99, 1.01, 1, 0.995, 1.006].map((share) => share * (first?.mean ?? NaN) * 1.001), {})
    expect(log).toHaveLength(first?.tests ?? NaN)
    expect(worstOfLink(checkHanger(testedHanger(JUST, log)), 'leg').verdict).toBe('holds')
    const weaker = pulls([0.99, 1.01, 1, 0.995, 1.006].map((share) => share * (first?.mean ?? NaN) * 0.99), {})
    expect(worstOfLink(checkHanger(testedHanger(JUST, weaker)), 'leg').verdict).toBe('just holds')
  })

  test('is not said where the part holds, where no such cord could bear it, or where something else is wrong', () => {
    expect(found({ ...ORDINARY, 'weighed.mass': '2 kg' }).filter((f) => f.link === 'leg')).toEqual([])
    expect(found({ ...JUST, 'weighed.mass': '60 kg' }).filter((f) => f.link === 'leg')).toEqual([])
    expect(found({ ...JUST, 'make.joined': 'glued' }).filter((f) => f.link === 'leg')).toEqual([])
    expect(found({ ...JUST, 'cord.rated': '190 N' })).toEqual([])
  })
})
