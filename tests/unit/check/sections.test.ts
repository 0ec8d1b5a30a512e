import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { bendEfficiency, legSections, weakestSection, wrapSection } from '../../../src/check/sections'
import { checkOf, hangerOf, ORDINARY } from '../hanger/hangerOf'
import { linkIn } from './linkOf'

const sectionsOf = (patch: Patch, parted: number) => legSections(hangerOf(patch).answers, parted)
const effectiveOf = (patch: Patch, parted: number): number => weakestSection(sectionsOf(patch, parted)).effective

describe('effective strands of a leg', () => {
  test('four strands in sinnets: two fillers x 0.7 = 1.4', () => {
    expect(effectiveOf({ 'make.strands': '4', 'make.build': 'sinnet' }, 0)).toBeCloseTo(1.4, 12)
  })

  test.each([
    // By hand, the least of: lark's head n x 0.5; plain n x 0.9; knotted: whole filler cords x 0.7; tied: carrying x 0.45.
    { strands: 6, build: 'plain', joined: 'no', effective: 3, part: 'larksHead' },
    { strands: 7, build: 'alternating', joined: 'no', effective: 2.1, part: 'fillers' },
    { strands: 8, build: 'spiral', joined: 'no', effective: 2.8, part: 'fillers' },
    { strands: 6, build: 'plain', joined: 'yes', effective: 2.7, part: 'tiedStrands' },
    { strands: 10, build: 'sinnet', joined: 'yes', effective: 2.25, part: 'tiedStrands' },
  ])('$strands strands, $build, tied in their length: $joined: $effective in $part', ({ strands, build, joined, effective, part }) => {
    const weakest = weakestSection(sectionsOf({ 'make.strands': String(strands), 'make.build': build, 'make.joined': joined }, 0))
    expect(weakest.effective).toBeCloseTo(effective, 12)
    expect(weakest.part).toBe(part)
  })

  test('factors that never meet in one section are never multiplied: it is the least section, not the product', () => {
    const sections = sectionsOf({ 'make.strands': '9', 'make.build': 'sinnet', 'make.joined': 'yes', 'make.top': 'ring' }, 0)
    expect(sections).toHaveLength(3)
    for (const { strands, efficiency, effective } of sections) expect(effective).toBe(strands * efficiency.value)
    expect(weakestSection(sections).effective).toBe(Math.min(...sections.map((s) => s.effective)))
  })

  test('in a check that least section is the only factor of strands', () => {
    const leg = linkIn(checkOf({ ...ORDINARY, 'make.strands': '9', 'make.joined': 'yes' }), 'leg', 'watered')
    const factors = leg.factors.filter((f) => f.code === 'effectiveStrands')
    expect(factors.map((f) => f.value)).toEqual([4 * 0.45])
    expect(leg.factors.map((f) => f.code).sort()).toEqual(['ageing', 'duration', 'effectiveStrands', 'reserve', 'wet'])
  })

  test('a knotted leg has at least one strand that carries, and no half ones', () => {
    expect(effectiveOf({ 'make.strands': '1', 'make.build': 'sinnet' }, 0)).toBeCloseTo(0.5, 12)
    expect(effectiveOf({ 'make.strands': '5', 'make.build': 'sinnet' }, 0)).toBe(effectiveOf({ 'make.strands': '4', 'make.build': 'sinnet' }, 0))
  })

  test('a parted strand is missing where it carried, and never less than none is left', () => {
    expect(effectiveOf({ 'make.strands': '6', 'make.build': 'sinnet' }, 1)).toBeCloseTo(1.4, 12)
    expect(effectiveOf({ 'make.strands': '2', 'make.build': 'sinnet' }, 1)).toBe(0)
    expect(effectiveOf({ 'make.strands': '1', 'make.build': 'plain' }, 1)).toBe(0)
  })
})

test('at the turn into the wraps every strand of the leg counts half', () => {
  expect(wrapSection(hangerOf({ 'make.strands': '7', 'make.build': 'sinnet' }).answers).effective).toBeCloseTo(3.5, 12)
})

describe('cords bent over a bar', () => {
  test.each([
    // 0.5 at a ratio of 1, 0.75 at 2, 0.95 at 8 and above; straight between, in proportion below.
    [0.5, 0.25], [1, 0.5], [1.4, 0.6], [2, 0.75], [5, 0.85], [8, 0.95], [30, 0.95],
  ])('bar over cord %d: %d', (ratio, efficiency) => {
    expect(bendEfficiency(ratio).value).toBeCloseTo(efficiency, 12)
  })

  test('decide a bunched top by the hook’s wire over the cord', () => {
    const [section] = sectionsOf({ 'make.top': 'bunched', 'make.strands': '6', 'cord.diameter': '4 mm', 'hook.wire': '5.6 mm' }, 0)
    expect(section).toMatchObject({ part: 'bend', strands: 6 })
    expect(section?.effective).toBeCloseTo(6 * 0.6, 12)
  })

  test('a cord of unknown thickness is taken for a thick one', () => {
    const bunched: Patch = { 'make.top': 'bunched', 'hook.wire': '5 mm' }
    const [unknown] = sectionsOf({ ...bunched, 'cord.rated': '600 N' }, 0)
    const [thin] = sectionsOf({ ...bunched, 'cord.rated': '600 N', 'cord.diameter': '3 mm' }, 0)
    expect(unknown?.effective).toBeLessThan(thin?.effective ?? NaN)
  })
})
