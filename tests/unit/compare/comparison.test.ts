import { describe, expect, test } from 'vitest'
import { checkHanger } from '../../../src/check/checkHanger'
import { betterOf } from '../../../src/compare/better'
import { compareVariants, type Comparison } from '../../../src/compare/comparison'
import { differences } from '../../../src/compare/differences'
import { variantOf, type Variant } from '../../../src/compare/variant'
import { cordPlan } from '../../../src/cordPlan/cordPlan'
import { comparedCord, differenceRow, massDifferenceText, partsComparedText } from '../../../src/words/compare'
import { documentOf, hangerOf, ORDINARY } from '../hanger/hangerOf'
import type { Patch } from '../../../src/hanger/document'

/** Without the heaviest pot, which takes many checks to find. */
function variant(patch: Patch): Variant {
  const { document, hanger } = said(patch)
  return { document, hanger, check: checkHanger(hanger), heaviest: null, pot: 'own', cord: cordPlan(hanger) }
}
const said = (patch: Patch) => ({ document: documentOf({ ...ORDINARY, ...patch }), hanger: hangerOf({ ...ORDINARY, ...patch }) })
const of = (comparison: Comparison, link: string) => comparison.parts.find((part) => part.link === link)

describe('which of two is better', () => {
  test.each([
    ['holds', 0.5, 'just holds', 0.4, 'first'],
    ['fails', 1.2, 'just holds', 0.9, 'second'],
    ['holds', 0.5, 'holds', 0.4, 'second'],
    ['holds', 0.5, 'holds', 0.502, 'alike'],
    ['not enough known', 0.1, 'just holds', 0.9, 'second'],
    ['not enough known', 0.1, 'fails', 1.3, 'untold'],
    ['not enough known', 0.1, 'not enough known', 0.9, 'untold'],
    ['holds', null, 'holds', 0.3, 'untold'],
  ] as const)('%s at %s against %s at %s: %s', (verdict, utilisation, otherVerdict, otherUtilisation, better) => {
    const [a, b] = [{ verdict, utilisation }, { verdict: otherVerdict, utilisation: otherUtilisation }]
    expect(betterOf(a, b)).toBe(better)
    expect(betterOf(b, a)).toBe(better === 'first' ? 'second' : better === 'second' ? 'first' : better)
  })
})

describe('two hangers side by side', () => {
  const first = variant({ 'cord.rollLength': '100 m', 'cord.rollPrice': '20' })

  test('a hanger differs in nothing from itself', () => {
    const same = compareVariants(first, first)
    expect(same.differences).toEqual([])
    expect(same.logs).toEqual([])
    expect(same.parts.filter(({ better }) => better !== 'alike' && better !== 'untold')).toEqual([])
    expect(same.weights.every(({ first: a, second: b }) => a.likely === b.likely)).toBe(true)
  })

  test('more strands: legs better, the whole heavier by its cord, more cords to cut', () => {
    const second = variant({ 'make.strands': '6', 'cord.rollLength': '100 m', 'cord.rollPrice': '20' })
    const comparison = compareVariants(first, second)
    expect(of(comparison, 'leg')?.better).toBe('second')
    expect(comparison.differences.map(({ path }) => path)).toContain('make.strands')
    const [dry] = comparison.weights
    expect(dry?.second.likely).toBeGreaterThan(dry?.first.likely ?? Infinity)
    expect(massDifferenceText(1, 1.5)).toBe('B heavier by 0.5 kg (1.1 lb)')
    const rows = comparedCord(first.cord, second.cord)
    const [count] = rows
    expect(Number(count?.second)).toBeGreaterThan(Number(count?.first))
    expect(rows.map(({ name }) => name)).toContain('Cost of the cord')
  })

  test('a stick in place of a ring: each part that only one has stands in its place, and is no better', () => {
    const comparison = compareVariants(first, variant({ 'make.top': 'stick' }))
    const links = comparison.parts.map(({ link }) => link)
    expect(of(comparison, 'stick')?.better).toBeNull()
    expect(of(comparison, 'ring')?.better).toBeNull()
    expect(links.indexOf('stick')).toBeLessThan(links.indexOf('leg'))
    expect(new Set(links).size).toBe(links.length)
    expect(partsComparedText(comparison.parts)).toMatch(/^Of \d+ parts: .*only in one of them\.$/)
  })

  test('a document that cannot be read gives its problems', () => {
    expect(variantOf(documentOf({ 'pot.rim': 'broad' }))).toMatchObject({ ok: false, problems: [{ path: 'pot.rim' }] })
  })
})

describe('what differs', () => {
  test('another way of writing the same is no difference', () => {
    expect(differences(said({ 'pot.rim': '20 cm' }), said({ 'pot.rim': '200 mm' }))).toEqual([])
  })

  test('what one says and the other assumes is told, and marked', () => {
    const [difference, ...others] = differences(said({ 'gathering.wraps': '12' }), { document: documentOf(without('gathering.wraps')), hanger: hangerOf(without('gathering.wraps')) })
    expect(others).toEqual([])
    expect(difference === undefined ? '' : differenceRow(difference).second).toMatch(/\(assumed\)$/)
  })

  test('what has a bearing on one alone is told so', () => {
    const found = differences(said({ 'make.top': 'stick', 'stick.diameter': '20 mm' }), said({}))
    const stick = found.find(({ path }) => path === 'stick.diameter')
    expect(stick).toMatchObject({ first: { how: 'said', text: '20 mm' }, second: { how: 'noBearing' } })
  })
})

function without(path: keyof typeof ORDINARY | 'gathering.wraps'): Patch {
  return Object.fromEntries(Object.entries(ORDINARY).filter(([key]) => key !== path))
}
