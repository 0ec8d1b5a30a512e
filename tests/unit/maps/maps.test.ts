import { describe, expect, it } from 'vitest'
import { checkPatched } from '../../../src/advice/evaluate'
import { potPatch, withoutPot } from '../../../src/advice/potsThatFit'
import { checkHanger, governingOf } from '../../../src/check/checkHanger'
import type { FieldPath } from '../../../src/hanger/fields'
import { resolveDocument } from '../../../src/hanger/resolve'
import { inputLines, lineFields, type LinesPoint } from '../../../src/maps/inputLines'
import { mappedDocument, utilisationMap, type MapCode, type MapOutcome, type MapStep } from '../../../src/maps/utilisationMap'
import { documentOf, ORDINARY } from '../hanger/hangerOf'

const ordinary = documentOf(ORDINARY)
const steps = (map: MapCode, most = Infinity, document = ordinary): { readonly steps: readonly MapStep[]; readonly end: MapOutcome | null } => {
  const job = utilisationMap({ document, map, scope: 'hanger' })
  const taken: MapStep[] = []
  while (taken.length < most) {
    const step = job.next()
    if (step.done === true) return { steps: taken, end: step.value }
    taken.push(step.value)
  }
  return { steps: taken, end: null }
}
const checkOf = (document = ordinary) => {
  const resolved = resolveDocument(document)
  if (!resolved.ok) throw new Error('unreadable')
  return checkHanger(resolved.hanger)
}
const ownLinks = (check: ReturnType<typeof checkOf>) => governingOf(check.links.filter(({ side }) => side === 'hanger'))

describe('a map', () => {
  // The present hanger, the coarse grid and its rows.
  const coarse = steps('cordByPot', 9).steps
  const grid = coarse.find((step) => step.kind === 'grid')

  it('tells the hanger as it is first, by its own check', () => {
    const governing = ownLinks(checkOf())
    expect(coarse[0]).toEqual({ kind: 'present', cell: { utilisation: governing?.utilisation, verdict: governing?.verdict, link: governing?.link } })
  })

  it('has in each cell what the check of the hanger with those two measures says', () => {
    const rows = coarse.filter((step) => step.kind === 'row')
    if (grid?.kind !== 'grid') throw new Error('no grid')
    expect(rows.map(({ row }) => row)).toEqual([0, 1, 2, 3, 4, 5, 6])
    const bare = withoutPot(ordinary)
    if (bare === null) throw new Error('unreadable')
    for (const [i, j] of [[1, 4], [6, 0]] as const) {
      const diameter = grid.up.values[j] ?? 0
      const check = checkPatched({ ...bare, pullTests: [] }, { ...potPatch(grid.along.values[i] ?? 0, 'terracotta'), 'cord.diameter': `${diameter * 1000} mm`, ...(ordinary.typed['cord.linearDensity'] === undefined ? {} : { 'cord.linearDensity': `${Number.parseFloat(ordinary.typed['cord.linearDensity']) * (diameter / 0.003) ** 2} g/m` }) })
      expect(rows[j]?.cells[i]?.utilisation ?? 0).toBeCloseTo((check === null ? null : ownLinks(check)?.utilisation) ?? NaN, 2)
    }
  })

  it('reaches over the hanger as it is, on both axes', () => {
    if (grid?.kind !== 'grid') throw new Error('no grid')
    for (const { values, present } of [grid.along, grid.up]) {
      expect(present).not.toBeNull()
      expect(present).toBeGreaterThanOrEqual(values[0] ?? Infinity)
      expect(present).toBeLessThanOrEqual(values.at(-1) ?? -Infinity)
    }
  })

  it('gives the document of a point that reads as that point', () => {
    const document = mappedDocument({ document: ordinary, map: 'lengthByPot' }, 0.2, 1.2)
    expect(document?.typed['pot.rim']).toBe('20 cm')
    expect(document === null ? null : checkOf(document).solved.hanger.answers['pot.rim']).toBe(0.2)
  })

  it('says why there is none', () => {
    expect(steps('cordByPot', 9, documentOf({ 'make.have': 'no' })).end).toEqual({ ok: false, why: 'noHanger' })
    expect(steps('cordByPot', 9, documentOf({ ...ORDINARY, 'pot.rim': 'wide' })).end).toEqual({ ok: false, why: 'unread' })
    expect(steps('cordByPot', 9, documentOf({ ...ORDINARY, 'cord.rated': '300 N' })).end).toEqual({ ok: false, why: 'notConcerned' })
  })
})

describe('all parts along one answer', () => {
  const along = (field: FieldPath): readonly LinesPoint[] => [...inputLines({ document: ordinary, field })]

  it('at its present value are as the check says, and legs of more pairs of strands work less', () => {
    const points = along('make.strands')
    const now = points.find(({ value }) => value === checkOf().solved.hanger.answers['make.strands'])
    const worst = governingOf(checkOf().links.filter(({ link }) => link === 'leg'))
    expect(now?.links?.find(({ link }) => link === 'leg')?.utilisation).toBe(worst?.utilisation)
    const leg = points.filter(({ value }) => value % 2 === 0).map(({ links }) => links?.find(({ link }) => link === 'leg')?.utilisation ?? NaN)
    expect(leg.length).toBeGreaterThan(2)
    expect(leg.every((use, i) => i === 0 || use <= (leg[i - 1] ?? 0))).toBe(true)
  })

  it('are offered for numbers that have a value and concern the hanger', () => {
    const fields = lineFields(checkOf().solved.hanger.answers)
    expect(fields).toContain('make.strands')
    expect(fields).not.toContain('panel.front')
    expect(fields).not.toContain('pot.material')
  })
})
