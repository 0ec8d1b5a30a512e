import { describe, expect, it } from 'vitest'
import { checkHanger, resolveDocument, withInspections, type CheckResult, type InspectionRow } from '#core'
import { wearOf } from '../../../src/check/inspected'
import { readInspection } from '../../../src/hanger/inspection'
import { documentOf, ORDINARY } from '../hanger/hangerOf'
import { PANEL } from '../hanger/panelPatch'

const rows = (...entries: readonly InspectionRow['typed'][]): readonly InspectionRow[] => entries.map((typed) => ({ typed, extra: {} }))
const wear = (...entries: readonly InspectionRow['typed'][]): ReturnType<typeof wearOf> => wearOf(rows(...entries).flatMap((row, i) => readInspection(row, i).inspection ?? []))
function check(patch: Parameters<typeof documentOf>[0], ...entries: readonly InspectionRow['typed'][]): CheckResult {
  const read = resolveDocument(withInspections(documentOf(patch), rows(...entries)))
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return checkHanger(read.hanger)
}
const leg = (result: CheckResult): CheckResult['links'][number] => {
  const found = result.links.find((l) => l.link === 'leg' && l.case === 'watered')
  if (!found) throw new Error('no leg')
  return found
}

describe('what a log leaves open', () => {
  it('counts strands in the leg that lost most, and those of no leg with it', () => {
    expect(wear({ what: 'strandGone', leg: '1' }, { what: 'strandGone', leg: '3', strands: '2' }, { what: 'strandGone' })).toMatchObject({ gone: 3, leg: 3, damage: [] })
  })

  it('is ended by a repair in its leg, or everywhere', () => {
    const before = [{ what: 'frayed', leg: '1' }, { what: 'strandGone', leg: '2' }] as const
    expect(wear(...before, { what: 'repaired', leg: '2' })).toMatchObject({ gone: 0, damage: [{ what: 'frayed' }] })
    expect(wear(...before, { what: 'repaired' })).toMatchObject({ gone: 0, damage: [] })
    expect(wear({ what: 'repaired' }, ...before)).toMatchObject({ gone: 1, damage: [{ leg: 1 }] })
  })

  it('is nothing after a look and a note', () => {
    expect(wear({ what: 'looked' }, { note: 'a new hook' })).toEqual({ damage: [], gone: 0, leg: null })
  })
})

describe('the check of a hanger that was looked at', () => {
  const sound = check(ORDINARY)
  const without = (patch: typeof ORDINARY | typeof PANEL, ...entries: readonly InspectionRow['typed'][]): CheckResult['links'][number] => leg(check(patch, ...entries))

  it('reckons the legs without a strand that is gone, and says so', () => {
    // Two of four strands carry as fillers, two as all in the lark's head less one: whichever is weakest, one less.
    const gone = without(ORDINARY, { what: 'strandGone', leg: '2' })
    const effective = (l: CheckResult['links'][number]): number => l.factors.find(({ code }) => code === 'effectiveStrands')?.value ?? 0
    expect(effective(leg(sound))).toBeCloseTo(2 * 0.7, 9)
    expect(effective(gone)).toBeCloseTo(1 * 0.7, 9)
    expect(gone.findings).toContainEqual({ code: 'INSPECTION_STRAND_GONE', strands: 1, leg: 2, reckoned: true })
    expect(gone.utilisation).toBeCloseTo(2 * (leg(sound).utilisation ?? 0), 9)
  })

  it('counts a strand that is gone when it asks what one more would do', () => {
    const three = { ...ORDINARY, 'make.legs': '3' }
    expect(check(three).redundancy.strand).toBe('stays')
    expect(check(three, { what: 'strandGone', leg: '2' }).redundancy.strand).toBe('falls')
    // Of four carrying strands three bear more than two: some pot tells the one from the other.
    const wide = { ...three, 'make.strands': '6', 'weighed.state': 'watered' }
    const outcomes = [6, 10, 14, 20, 28, 40].map((mass) => {
      const heavy = { ...wide, 'weighed.mass': `${mass} kg` }
      return [check(heavy).redundancy.strand, check(heavy, { what: 'strandGone', leg: '2' }).redundancy.strand]
    })
    expect(outcomes).toContainEqual(['stays', 'falls'])
    expect(outcomes).not.toContainEqual(['falls', 'stays'])
  })

  it('fails once no strand of a leg is left', () => {
    expect(without(ORDINARY, { what: 'strandGone', leg: '2', strands: '2' }).verdict).toBe('fails')
  })

  it('knows too little of a leg that was noted as frayed, until it is mended', () => {
    expect(leg(sound).verdict).toBe('just holds')
    expect(without(ORDINARY, { what: 'frayed', date: '2027-02-01', leg: '4' })).toMatchObject({ verdict: 'not enough known' })
    expect(without(ORDINARY, { what: 'frayed', leg: '4' }, { what: 'repaired', leg: '4' })).toEqual(leg(sound))
    const slipped = check(ORDINARY, { what: 'slipped' })
    expect(leg(slipped)).toEqual(leg(sound))
    expect(slipped.links.find((l) => l.link === 'gatheringGrip')?.findings).toContainEqual({ code: 'INSPECTION_OPEN', what: 'slipped', date: null, leg: null })
  })

  it('does not pretend to know a panel without one of its strands', () => {
    const panel = without(PANEL, { what: 'strandGone' })
    expect(panel.verdict).toBe('not enough known')
    expect(panel.findings).toContainEqual({ code: 'INSPECTION_STRAND_GONE', strands: 1, leg: null, reckoned: false })
  })
})

it('a strand that is gone from a leg that can spare it is reckoned, and leaves the verdict to the numbers', () => {
  const strong = { ...ORDINARY, 'make.legs': '8', 'weighed.mass': '2 kg', 'weighed.state': 'watered' } as const
  const spared = leg(check(strong, { what: 'strandGone', leg: '2' }))
  expect(spared.findings.map((f) => f.code)).toContain('INSPECTION_STRAND_GONE')
  expect(spared.verdict).toBe(leg(check(strong)).verdict)
  expect(spared.verdict).toMatch(/holds/)
})
