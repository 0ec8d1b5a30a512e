import { describe, expect, it } from 'vitest'
import { untested } from '../../../src/advice/untested'
import { checkPatched } from '../../../src/advice/evaluate'
import type { LinkCode } from '../../../src/check/linkResult'
import { DEMOS } from '../../../src/hanger/demos'
import { editField, patchDocument, type HangerDocument } from '../../../src/hanger/document'
import type { FieldPath } from '../../../src/hanger/fields'
import { parseDocument } from '../../../src/hanger/parse'
import { resolveDocument } from '../../../src/hanger/resolve'
import { pottedMass } from '../../../src/load/pottedMass'
import { AXES, axisOf, type Axis } from '../../../src/maps/axis'
import { cellAt, cellOf } from '../../../src/maps/cell'
import { inputLines, lineFields } from '../../../src/maps/inputLines'
import { mappedDocument } from '../../../src/maps/utilisationMap'
import { documentOf, hangerOf, ORDINARY } from '../hanger/hangerOf'

function demo(name: string): HangerDocument {
  const parsed = parseDocument(DEMOS.find(({ file }) => file.startsWith(name))?.text ?? '')
  if (!parsed.ok) throw new Error(name)
  return parsed.document
}
const FERN = demo('fern')
const ROPED = { ...FERN, pullTests: [{ typed: { load: '30 kg' }, extra: {} }] } as HangerDocument

describe('what was found of the hanger as it is says nothing of another', () => {
  it('so its test hang is left out of every map, and of a cord its pull tests', () => {
    const at = (map: 'cordByPot' | 'lengthByPot' | 'strandsByWeight', x: number, y: number): HangerDocument | null => mappedDocument({ document: ROPED, map }, x, y)
    const [cord, length, strands] = [at('cordByPot', 0.17, 0.004), at('lengthByPot', 0.17, 0.95), at('strandsByWeight', 3.4, 4)]
    for (const one of [cord, length, strands]) expect(Object.keys(one?.typed ?? {}).filter((path) => path.startsWith('testHang.'))).toEqual([])
    expect([cord, length, strands].map((one) => one?.pullTests.length)).toEqual([0, 1, 1])
    // The very weight and strands that it was tested with: the knot no longer "holds" for its test.
    expect(cellAt(patchDocument(FERN, { 'weighed.mass': '3.4 kg' }), 'gatheringGrip')?.verdict).toBe('holds')
    expect(cellAt(mappedDocument({ document: FERN, map: 'strandsByWeight' }, 3.4, 4), 'gatheringGrip')).toEqual(cellAt(untested(FERN), 'gatheringGrip'))
    expect(cellAt(untested(FERN), 'gatheringGrip')?.verdict).toBe('just holds')
  })

  it('nor along an input of the hanger itself; along its weight it counts', () => {
    const first = (field: FieldPath, link: LinkCode, document = FERN) => {
      const step = inputLines({ document, field }).next()
      return step.done === true ? null : step.value.links?.find((one) => one.link === link) ?? null
    }
    expect([first('make.strands', 'gatheringGrip')?.verdict, first('weighed.mass', 'gatheringGrip')?.verdict]).toEqual(['just holds', 'holds'])
    // Pulled in place a screw needs less reserve; one of another depth was not pulled.
    const unproved = editField(FERN, 'fixing.proof', null)
    expect(first('fixing.penetration', 'fixing')).toEqual(first('fixing.penetration', 'fixing', unproved))
    expect(first('weighed.mass', 'fixing')?.utilisation).toBeLessThan(first('weighed.mass', 'fixing', unproved)?.utilisation ?? 0)
  })

  it('and a rated cord is not offered by its diameter', () => {
    expect(lineFields(hangerOf(ORDINARY).answers)).toContain('cord.diameter')
    expect(lineFields(hangerOf({ ...ORDINARY, 'cord.rated': '300 N' }).answers)).not.toContain('cord.diameter')
  })
})

describe('axes', () => {
  const axesOf = (document: HangerDocument): readonly Axis[] => {
    const resolved = resolveDocument(document)
    if (!resolved.ok) throw new Error('unreadable')
    return AXES.flatMap((code) => axisOf(code, resolved.hanger, pottedMass(resolved.hanger.answers).watered.mass.high, 21)?.axis ?? [])
  }
  it.each([
    ['many strands, an odd number', { 'make.strands': '17' }], ['few', { 'make.strands': '1' }], ['most', { 'make.strands': '48' }],
    ['a tiny pot', { 'pot.rim': '5 cm', 'pot.base': '4 cm', 'pot.height': '5 cm', 'weighed.mass': '0.1 kg', 'weighed.state': 'watered' }],
    ['the heaviest', { 'weighed.mass': '150 kg', 'weighed.state': 'watered' }], ['thick cord', { 'cord.diameter': '30 mm' }], ['a long hanger', { 'make.totalLength': '5 m' }],
  ] as const)('hold the hanger as it is, evenly: %s', (_, patch) => {
    for (const { code, values, present } of axesOf(documentOf({ ...ORDINARY, ...patch }))) {
      const [least, most] = [values[0] ?? NaN, values.at(-1) ?? NaN]
      expect(present, code).toBeGreaterThanOrEqual(least)
      expect(present, code).toBeLessThanOrEqual(most)
      const step = (most - least) / (values.length - 1)
      values.forEach((value, i) => { expect(value, code).toBeCloseTo(least + i * step, 9) })
    }
  })

  it('mark no pot where there is none', () => {
    const marked = axesOf(documentOf({ ...ORDINARY, 'pot.have': 'no' })).filter(({ code }) => code === 'rim' || code === 'watered')
    expect(marked.map(({ present }) => present)).toEqual([null, null])
  })
})

describe('a point is no more certain than the check', () => {
  it('what the pot is made of stays open where it matters and was not said', () => {
    const said = (typed: Partial<Record<FieldPath, string>>): string | undefined => mappedDocument({ document: documentOf(typed), map: 'lengthByPot' }, 0.2, 1)?.typed['pot.material']
    const open = Object.fromEntries(Object.entries(ORDINARY).filter(([path]) => !['pot.material', 'weighed.mass', 'weighed.state'].includes(path)))
    expect([said(open), said({ ...open, 'pot.material': 'plastic' }), said({ ...open, 'weighed.mass': '6 kg' })]).toEqual([undefined, 'plastic', 'terracotta'])
  })

  it('the use told is that of the part that decides, and of no other', () => {
    const check = checkPatched(demo('order'), {})
    if (check === null) throw new Error('unreadable')
    expect(check.links.some(({ utilisation }) => utilisation !== null)).toBe(true)
    expect(cellOf(check, 'whole')).toEqual({ utilisation: null, verdict: 'not enough known', link: 'fixing' })
  })

  it('answers that do not go together are a gap', () => {
    const knotted = documentOf({ ...ORDINARY, 'make.legLength': '60 cm', 'make.knotted': '50 cm' })
    expect(cellAt(mappedDocument({ document: knotted, map: 'lengthByPot' }, 0.2, 0.4), 'hanger')).toBeNull()
    expect(cellAt(mappedDocument({ document: knotted, map: 'lengthByPot' }, 0.2, 0.6), 'hanger')).not.toBeNull()
  })
})
