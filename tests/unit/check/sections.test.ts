import { describe, expect, test } from 'vitest'
import { checkHanger, legSectionTable, type Patch } from '#core'
import { bendEfficiency, larksHeadEfficiency, legSections, thickestCord, weakestSection, wrapSection } from '../../../src/check/sections'
import { checkOf, hangerOf, ORDINARY } from '../hanger/hangerOf'
import { testedHanger } from '../hanger/testedHanger'
import { linkIn } from './linkOf'

const UNTESTED = { tied: false, size: null }
/** A ring twice as thick as the cord, unless the patch says otherwise. */
const answersOf = (patch: Patch) => hangerOf({ 'cord.diameter': '3 mm', 'ring.wire': '6 mm', ...patch }).answers
const sectionsOf = (patch: Patch, parted: number) => legSections(answersOf(patch), parted, UNTESTED)
const effectiveOf = (patch: Patch, parted: number): number => weakestSection(sectionsOf(patch, parted)).effective

describe('effective strands of a leg', () => {
  test('four strands in sinnets: two fillers x 0.7 = 1.4', () => {
    expect(effectiveOf({ 'make.strands': '4', 'make.build': 'sinnet' }, 0)).toBeCloseTo(1.4, 12)
  })

  test.each<[Patch, number, string]>([
    // By hand, the least of: lark's head n x 0.5; plain n x 0.9; knotted: whole filler cords x 0.7; tied: carrying x 0.45;
    // spliced: carrying x 0.9; sharp edge of 2 mm under 3 mm cord: n x 0.5 x 2/3, under 5 mm n x 0.5 x 0.4.
    [{ 'make.strands': '6', 'make.build': 'plain' }, 3, 'larksHead'],
    [{ 'make.strands': '7', 'make.build': 'sinnet' }, 2.1, 'fillers'],
    [{ 'make.strands': '7', 'make.build': 'alternating' }, 2.1, 'alternatingKnots'],
    [{ 'make.strands': '8', 'make.build': 'spiral' }, 2.8, 'spiralKnots'],
    [{ 'make.strands': '6', 'make.build': 'plain', 'ring.wire': '40 mm', 'cord.diameter': '2 mm' }, 4.5, 'larksHead'],
    [{ 'make.strands': '6', 'make.build': 'plain', 'make.joined': 'yes' }, 2.7, 'tiedStrands'],
    [{ 'make.strands': '10', 'make.build': 'sinnet', 'make.joined': 'yes' }, 2.25, 'tiedStrands'],
    [{ 'make.strands': '10', 'make.build': 'sinnet', 'make.joined': 'splice' }, 3.5, 'fillers'],
    [{ 'make.strands': '9', 'make.build': 'sinnet', 'make.fillers': '3' }, 2.1, 'fillers'],
    [{ 'make.strands': '9', 'make.build': 'sinnet', 'make.fillers': '7' }, 4.5, 'larksHead'],
    [{ 'make.strands': '6', 'make.build': 'plain', 'pot.edge': 'sharp' }, 2, 'potEdge'],
    [{ 'make.strands': '6', 'make.build': 'plain', 'pot.edge': 'sharp', 'cord.diameter': '5 mm' }, 1.2, 'potEdge'],
  ])('%j: %d, in %s', (patch, effective, part) => {
    const weakest = weakestSection(sectionsOf(patch, 0))
    expect(weakest.effective).toBeCloseTo(effective, 12)
    expect(weakest.part).toBe(part)
  })

  test('factors that never meet in one section are never multiplied: it is the least section, not the product', () => {
    const sections = sectionsOf({ 'make.strands': '9', 'make.build': 'sinnet', 'make.joined': 'yes', 'make.top': 'ring', 'pot.edge': 'sharp' }, 0)
    expect(sections.map((s) => s.part)).toEqual(['larksHead', 'fillers', 'tiedStrands', 'potEdge'])
    // Each by its own factor alone: 9 x 0.5, 4 x 0.7, 4 x 0.45, 9 x 1/3. Any two of them together would give less.
    expect(sections.map((s) => s.effective)).toEqual([4.5, 2.8, 1.8, 3].map((x) => expect.closeTo(x, 12) as number))
    expect(weakestSection(sections).effective).toBeCloseTo(1.8, 12)
  })

  test('in a check that least section is the only factor of strands', () => {
    const leg = linkIn(checkOf({ ...ORDINARY, 'make.strands': '9', 'make.joined': 'yes' }), 'leg', 'watered')
    const factors = leg.factors.filter((f) => f.code === 'effectiveStrands')
    expect(factors.map((f) => f.value)).toEqual([4 * 0.45])
    expect(leg.factors.map((f) => f.code).sort()).toEqual(['ageing', 'duration', 'effectiveStrands', 'reserve', 'wet'])
  })

  test('a knotted leg has at least one strand that carries, and no half ones', () => {
    expect(effectiveOf({ 'make.strands': '1', 'make.build': 'sinnet' }, 0)).toBeCloseTo(0.5, 12)
    expect(effectiveOf({ 'make.strands': '3', 'make.build': 'spiral' }, 0)).toBeCloseTo(0.7, 12)
    expect(effectiveOf({ 'make.strands': '5', 'make.build': 'sinnet' }, 0)).toBe(effectiveOf({ 'make.strands': '4', 'make.build': 'sinnet' }, 0))
  })

  test('a parted strand is missing where it carried, and never less than none is left', () => {
    expect(effectiveOf({ 'make.strands': '6', 'make.build': 'sinnet' }, 1)).toBeCloseTo(1.4, 12)
    expect(effectiveOf({ 'make.strands': '2', 'make.build': 'sinnet' }, 1)).toBe(0)
    expect(effectiveOf({ 'make.strands': '1', 'make.build': 'plain' }, 1)).toBe(0)
  })
})

test('at the turn into the wraps every strand of the leg that is not gone counts half', () => {
  expect(wrapSection(answersOf({ 'make.strands': '7', 'make.build': 'sinnet' }), 3, false).effective).toBeCloseTo(4 * 0.5, 12)
})

describe('a lark’s head', () => {
  test.each([
    // 0.40 with no bar at all, 0.5 from a bar as thick as the cord to twice that, then rising to 0.75 at fifteen times.
    [0, 0.4], [0.5, 0.45], [1, 0.5], [1.6, 0.5], [2, 0.5], [8.5, 0.625], [15, 0.75], [40, 0.75],
  ])('bar over cord %d: %d', (ratio, efficiency) => {
    expect(larksHeadEfficiency(ratio).value).toBeCloseTo(efficiency, 12)
  })

  test('decides by the ring’s wire over the cord', () => {
    const [section] = sectionsOf({ 'make.strands': '6', 'cord.diameter': '4 mm', 'ring.wire': '34 mm' }, 0)
    expect(section).toMatchObject({ part: 'larksHead', strands: 6 })
    expect(section?.effective).toBeCloseTo(6 * 0.625, 12)
  })
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
    const [unknown] = legSections(hangerOf({ ...bunched, 'cord.rated': '600 N' }).answers, 0, UNTESTED)
    const [thin] = sectionsOf({ ...bunched, 'cord.rated': '600 N', 'cord.diameter': '3 mm' }, 0)
    expect(unknown?.effective).toBeLessThan(thin?.effective ?? NaN)
  })
})

describe('pulled as tied', () => {
  const FIVE = ['97 N', '104 N', '110 N', '92 N', '101 N']
  const leg = (patch: Patch) => linkIn(checkHanger(testedHanger({ ...ORDINARY, ...patch }, FIVE.map((load) => ({ load, how: 'tied', time: '10 s' })))), 'leg', 'dry')

  test('a strand holds its knots’ share already: only unequal sharing is left', () => {
    // Two fillers of four strands, nothing for knots, joins or the ring.
    for (const joined of ['no', 'yes', 'splice', 'glued']) {
      const factor = leg({ 'make.joined': joined }).factors.find((f) => f.code === 'effectiveStrands')
      expect(factor?.value).toBeCloseTo(2 * 0.9, 12)
    }
  })

  test('no such strand went over the pot’s edge, which still counts', () => {
    expect(leg({ 'pot.edge': 'sharp' })).toMatchObject({ part: 'potEdge' })
    expect(leg({ 'pot.edge': 'sharp' }).factors.find((f) => f.code === 'effectiveStrands')?.value).toBeCloseTo((4 * 0.5 * 2) / 3, 12)
  })

  test('into the wraps the same', () => {
    expect(wrapSection(answersOf({ 'make.strands': '7' }), 0, true).effective).toBeCloseTo(6.3, 12)
  })
})

describe('a glued join', () => {
  test('is not known, and says what would tell', () => {
    const glued = linkIn(checkOf({ ...ORDINARY, 'make.joined': 'glued' }), 'leg', 'watered')
    expect(glued.verdict).toBe('not enough known')
    expect(glued.findings.map((f) => f.code)).toContain('JOIN_UNKNOWN')
    expect(linkIn(checkOf(ORDINARY), 'leg', 'watered').findings.map((f) => f.code)).not.toContain('JOIN_UNKNOWN')
  })
})

describe('all sections of a leg as listed', () => {
  const table = (patch: Patch) => legSectionTable(hangerOf({ ...ORDINARY, 'make.strands': '6', ...patch }))

  test('from the ring to the wraps, the weakest marked', () => {
    expect(table({ 'make.joined': 'splice', 'pot.edge': 'sharp' }).map(({ part, strands, effective, weakest }) => [part, strands, effective, weakest])).toEqual([
      ['larksHead', 6, expect.closeTo(6 * 0.5, 12), false],
      ['fillers', 3, expect.closeTo(3 * 0.7, 12), false],
      ['splicedStrands', 3, expect.closeTo(3 * 0.9, 12), false],
      ['potEdge', 6, expect.closeTo((6 * 0.5 * 2) / 3, 12), true],
      ['turn', 6, 3, false],
    ])
  })

  test('a glued join stands among them without a figure', () => {
    expect(table({ 'make.joined': 'glued' }).find((row) => row.part === 'gluedStrands')).toEqual({ part: 'gluedStrands', strands: 3, efficiency: null, effective: null, weakest: false })
  })

  test('the marked one is the one the check names', () => {
    for (const patch of [{}, { 'make.build': 'plain' }, { 'make.joined': 'yes' }, { 'pot.edge': 'sharp' }, { 'make.top': 'bunched', 'make.build': 'plain' }]) {
      const marked = table(patch).filter((row) => row.weakest && row.part !== 'turn')
      for (const row of marked) expect(linkIn(checkOf({ ...ORDINARY, 'make.strands': '6', ...patch }), 'leg', 'watered').part).toBe(row.part)
    }
  })
})

test('a cord that was weighed and not measured bends as the thickest of that weight: a third of its round is fibre', () => {
  const { answers } = hangerOf({ 'cord.fibre': 'cotton', 'cord.linearDensity': '8.5 g/m' })
  expect(thickestCord(answers)).toBeCloseTo(Math.sqrt((0.0085 * 4) / (Math.PI * 0.35 * 1520)), 12)
  expect(thickestCord(hangerOf({ 'cord.linearDensity': '8.5 g/m', 'cord.diameter': '3 mm' }).answers)).toBe(0.003)
  expect(thickestCord(hangerOf({}).answers)).toBe(0.01)
})

test('a glued strand is listed among the others: after the top and the run, of unknown strength', () => {
  const table = (patch: Patch) => legSectionTable(hangerOf({ ...ORDINARY, 'pot.edge': 'sharp', ...patch }))
  const [whole, glued] = [table({}), table({ 'make.joined': 'glued' })]
  expect(glued).toHaveLength(whole.length + 1)
  expect(glued[2]).toMatchObject({ part: 'gluedStrands', efficiency: null, effective: null, weakest: false })
  expect(glued.filter((_, i) => i !== 2)).toEqual(whole)
})
