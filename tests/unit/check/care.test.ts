import { describe, expect, test } from 'vitest'
import type { Care, Patch } from '#core'
import { DAY, MONTH, YEAR } from '../../../src/catalogue/duration'
import { CARE_REASONS } from '../../../src/check/care'
import { checkOf, ORDINARY } from '../hanger/hangerOf'
import { without } from '../hanger/without'
import { randomPatch } from './randomPatch'

const careOf = (patch: Patch): Care => checkOf({ ...ORDINARY, ...patch }).care
const codesOf = (patch: Patch): readonly string[] => careOf(patch).reasons.map((r) => r.code)

describe('when to replace it', () => {
  test('indoors after its service life, chosen or assumed', () => {
    expect(careOf({})).toMatchObject({ life: 3 * YEAR, replaceAfter: 3 * YEAR })
    expect(careOf({}).reasons[0]).toEqual({ code: 'SERVICE_LIFE', life: 3 * YEAR, chosen: false })
    expect(careOf({ 'place.life': '5 years' }).reasons[0]).toEqual({ code: 'SERVICE_LIFE', life: 5 * YEAR, chosen: true })
    expect(careOf({ 'place.life': '5 years' }).replaceAfter).toBe(5 * YEAR)
  })

  test('natural cord outdoors after one season, however long was chosen, and that is said', () => {
    const outdoors = careOf({ 'place.exposure': 'outdoors', 'place.life': '4 years' })
    expect(outdoors).toMatchObject({ life: 4 * YEAR, replaceAfter: YEAR })
    expect(outdoors.reasons).toEqual(expect.arrayContaining([{ code: 'LIFE_TOO_LONG', life: 4 * YEAR, most: YEAR }, { code: 'NATURAL_OUTDOORS', most: YEAR, left: 0.3 }]))
    expect(codesOf({ 'place.exposure': 'outdoors', 'place.life': '8 months', 'pot.drainage': 'none' })).toEqual(['SERVICE_LIFE', 'NATURAL_OUTDOORS'])
    expect(careOf({ 'place.exposure': 'outdoors', 'place.life': '8 months' }).replaceAfter).toBe(8 * MONTH)
  })

  test('polyester and nylon outdoors after no longer than they were ever tested', () => {
    const polyester: Patch = { 'cord.fibre': 'polyester', 'place.exposure': 'outdoors' }
    expect(careOf({ ...polyester, 'place.life': '2 years' })).toMatchObject({ replaceAfter: 2 * YEAR })
    expect(careOf({ ...polyester, 'place.life': '2 years' }).reasons).toContainEqual({ code: 'SYNTHETIC_OUTDOORS', most: 36 * MONTH, left: expect.closeTo(0.49, 12) as number })
    expect(careOf({ ...polyester, 'cord.fibre': 'nylon', 'place.life': '7 years' }).replaceAfter).toBe(36 * MONTH)
    expect(codesOf({ ...polyester, 'place.life': '7 years' })).toContain('LIFE_TOO_LONG')
  })

  test.each(['polypropylene', 'viscose', 'unknown'])('%s outdoors: no time can be promised', (fibre) => {
    const care = careOf({ 'cord.fibre': fibre, 'place.exposure': 'outdoors', 'make.date': '2026-03-21' })
    expect(care).toMatchObject({ replaceAfter: null, replaceBy: null })
    expect(care.reasons.map((r) => r.code)).toContain('OUTDOOR_LOSS_UNKNOWN')
  })

  test('natural cord whose gathering knot never dries after a year, synthetic cord not sooner', () => {
    expect(careOf({ 'place.watering': 'daily' }).replaceAfter).toBe(YEAR)
    expect(codesOf({ 'place.watering': 'daily' })).toEqual(['SERVICE_LIFE', 'LIFE_TOO_LONG', 'ALWAYS_WET', 'KNOT_DAMP', 'KNOT_NEVER_DRY'])
    expect(careOf({ 'place.watering': 'daily', 'cord.fibre': 'polyester' }).replaceAfter).toBe(3 * YEAR)
    expect(codesOf({ 'place.watering': 'daily', 'pot.drainage': 'none' })).toEqual(['SERVICE_LIFE', 'ALWAYS_WET'])
  })

  test('jute that gets wet after a year, jute that stays damp never', () => {
    expect(careOf({ 'cord.fibre': 'jute' }).replaceAfter).toBe(YEAR)
    expect(careOf({ 'cord.fibre': 'jute', 'pot.drainage': 'none' }).replaceAfter).toBe(3 * YEAR)
    expect(careOf({ 'cord.fibre': 'jute', 'place.exposure': 'steamy' })).toMatchObject({ replaceAfter: null, reasons: expect.arrayContaining([{ code: 'JUTE_NEVER_DRY', lost: 2.5 * MONTH }]) as unknown })
  })

  test('a damp knot and a steamy room are told with the share of strength that is counted on', () => {
    expect(careOf({ 'place.exposure': 'steamy', 'cord.fibre': 'polyester' }).reasons).toEqual(expect.arrayContaining([{ code: 'STEAMY', left: 0.7 }, { code: 'KNOT_DAMP', left: 0.7 }]))
    expect(codesOf({ 'pot.drainage': 'none' })).toEqual(['SERVICE_LIFE'])
    expect(codesOf({ 'cover.inside': '26 cm' })).not.toContain('KNOT_DAMP')
    expect(codesOf({ 'saucer.width': '16 cm' })).not.toContain('KNOT_DAMP')
  })

  test('is never later than the service life, whatever the hanger', () => {
    for (let seed = 700; seed < 780; seed += 1) {
      const { life, replaceAfter } = checkOf(randomPatch(seed)).care
      expect(replaceAfter === null || (replaceAfter > 0 && replaceAfter <= life), `seed ${seed}`).toBe(true)
    }
  })
})

describe('the day to replace it', () => {
  test.each([
    ['2026-03-21', '3 years', '2029-03-21'],
    ['2028-02-29', '1 year', '2029-02-28'],
    ['2026-08-31', '18 months', '2028-02-29'],
    ['2026-11-25', '100 days', '2027-03-05'],
    ['2027-12-15', '11 weeks', '2028-03-01'],
    ['2026-01-31', '10 years', '2036-01-31'],
  ])('made on %s for %s: %s', (made, life, by) => {
    expect(careOf({ 'make.date': made, 'place.life': life }).replaceBy).toBe(by)
  })

  test('is not told where it is not said when it was made', () => {
    expect(careOf({}).replaceBy).toBeNull()
  })

  test('counts from the making also where weather allows less than was chosen', () => {
    expect(careOf({ 'make.date': '2027-05-04', 'place.exposure': 'outdoors', 'place.life': '6 years' }).replaceBy).toBe('2028-05-04')
  })
})

describe('when to look at it', () => {
  test.each([
    [{}, 6, ['indoors']],
    [{ 'place.exposure': 'steamy' }, 3, ['steamy']],
    [{ 'place.watering': 'daily' }, 3, ['alwaysWet']],
    [{ 'place.beneath': 'people' }, 3, ['peopleBeneath']],
    [{ 'place.beneath': 'public', 'place.exposure': 'steamy', 'place.watering': 'daily' }, 3, ['steamy', 'alwaysWet', 'peopleBeneath']],
    [{ 'place.beneath': 'wayThrough' }, 6, ['indoors']],
    [{ 'place.exposure': 'outdoors', 'place.beneath': 'people' }, 1, ['outdoors']],
    [{ 'cord.fibre': 'jute' }, 1, ['juteDamp']],
    [{ 'cord.fibre': 'jute', 'pot.drainage': 'none' }, 6, ['indoors']],
  ] as const)('%j: after a month, then every %d, for %j', (patch, every, reasons) => {
    expect(careOf(patch).inspect).toEqual({ first: 1, every, reasons })
  })
})

test('every reason comes up in some hanger, and no other', () => {
  const some: readonly Patch[] = [
    { 'place.exposure': 'outdoors' }, { 'place.exposure': 'outdoors', 'cord.fibre': 'nylon', 'place.watering': 'daily' }, { 'place.exposure': 'outdoors', 'cord.fibre': 'viscose' },
    { 'place.exposure': 'steamy' }, { 'cord.fibre': 'jute' }, { 'cord.fibre': 'jute', 'place.watering': 'daily' },
  ]
  expect([...new Set(some.flatMap(codesOf))].sort()).toEqual([...CARE_REASONS].sort())
})

test('what hangs beneath nothing known is looked at as over people', () => {
  expect(checkOf(without(ORDINARY, 'place.beneath')).care.inspect.reasons).toEqual(['peopleBeneath'])
})

test('a day is a day: a life in days that is no whole number of months counts in days', () => {
  expect(careOf({ 'place.life': '31 days', 'make.date': '2026-02-14' })).toMatchObject({ replaceAfter: 31 * DAY, replaceBy: '2026-03-17' })
})
