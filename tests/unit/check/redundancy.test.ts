import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { redundancy } from '../../../src/check/redundancy'
import type { CaseSling, Solved } from '../../../src/check/solved'
import { checkOf, ORDINARY } from '../hanger/hangerOf'
import { without } from '../hanger/without'

const redundancyOf = (patch: Patch) => checkOf({ ...ORDINARY, ...patch }).redundancy

test('of three legs none can be spared, of eight one can', () => {
  expect(redundancyOf({ 'make.legs': '3' }).leg).toBe('falls')
  expect(redundancyOf({ 'make.legs': '8' }).leg).toBe('stays')
})

test('on weak cord the other legs part too', () => {
  expect(redundancyOf({ 'make.legs': '8', 'cord.linearDensity': '0.3 g/m' }).leg).toBe('falls')
})

test('one of four strands a leg can be spared', () => {
  expect(redundancyOf({ 'make.legs': '3' }).strand).toBe('stays')
})

test('where a leg has one carrying strand, the strand takes the leg with it', () => {
  for (const legs of ['3', '8']) {
    const { leg, strand } = redundancyOf({ 'make.legs': legs, 'make.strands': '2' })
    expect(strand).toBe(leg)
  }
})

describe('what cannot be said is not said', () => {
  test('of an unknown cord', () => {
    const check = checkOf(without({ ...ORDINARY, 'make.legs': '8' }, 'cord.diameter', 'cord.linearDensity'))
    expect(check.redundancy).toEqual({ leg: 'unknown', strand: 'unknown' })
  })

  test('of legs too short to reach round the pot', () => {
    expect(redundancyOf({ 'make.totalLength': '40 cm' })).toEqual({ leg: 'unknown', strand: 'unknown' })
  })
})

test('three legs are lost with any of them, whatever is known of the cord', () => {
  expect(checkOf(without({ ...ORDINARY, 'make.legs': '3' }, 'cord.diameter', 'cord.linearDensity')).redundancy.leg).toBe('falls')
})

test('is stated with every check, as a finding on the whole', () => {
  const check = checkOf({ ...ORDINARY, 'make.legs': '3' })
  expect(check.findings).toEqual(expect.arrayContaining([{ code: 'REDUNDANCY_LEG', outcome: 'falls' }, { code: 'REDUNDANCY_STRAND', outcome: 'stays' }]))
})

test('is a statement, no verdict: over furniture a hanger of three legs holds as well as its links do', () => {
  const { verdicts, links } = checkOf({ ...ORDINARY, 'make.legs': '3', 'testHang.mass': '20 kg', 'testHang.time': '25 h', 'testHang.slip': '1 mm' })
  expect(verdicts.hanger).toMatch(/^(holds|just holds)$/)
  expect(links.map((l) => l.case)).not.toContain('legParted')
})

test('along a stick the leg that is missed most need not be the one that leaves the hardest pull', () => {
  // Without an outer leg the pot tips; without an inner one a neighbour pulls harder, and the pot hangs nearly level.
  const check = checkOf({ ...ORDINARY, 'make.top': 'stick', 'stick.bunch': '280 mm', 'plant.height': '20 cm', 'plant.mass': '3 kg' })
  const drawn = check.solved.slings?.legParted.drawn
  expect(drawn !== undefined && 'tiltRadians' in drawn ? drawn.tiltRadians : NaN).toBeLessThan(0.2)
  expect(check.redundancy.leg).toBe('tips')
})

test('a leg that parts suddenly jolts the others by twice what they gain by it, as a load does that comes at once', () => {
  const tensions = ['4', '5', '6', '8'].map((legs) => {
    const { slings } = checkOf({ ...ORDINARY, 'make.legs': legs, 'make.tolerance': '0 mm', 'seat.offset': '0 mm' }).solved
    return [slings?.strandParted.tension, slings?.legParted.tension, slings?.legPartedSudden.tension].map((tension) => tension ?? Number.NaN)
  })
  for (const [intact, left, sudden] of tensions) {
    if (left !== undefined && !Number.isNaN(left)) expect(sudden).toBeCloseTo(Math.max(intact ?? Number.NaN, (intact ?? Number.NaN) + 2 * (left - (intact ?? Number.NaN))), 9)
  }
  expect(tensions.some(([intact = 0, left = 0]) => left > intact)).toBe(true)
})

describe('by what is left, whatever it was that went', () => {
  const { solved } = checkOf({ ...ORDINARY, 'make.legs': '8' })
  type Gone = Partial<Record<'legParted' | 'legPartedSudden' | 'strandParted', Partial<CaseSling>>>
  const outcome = (gone: Gone, of: Solved = solved) => {
    if (of.slings === null) throw new Error('no slings')
    const changed = Object.fromEntries(Object.entries(gone).map(([code, sling]) => [code, { ...of.slings?.[code as keyof Gone], ...sling }]))
    return redundancy({ ...of, slings: { ...of.slings, ...changed } })
  }

  test('a leg gone with no rest left, or none after the jolt, lets it fall; where none was found it is not known', () => {
    expect(outcome({}).leg).toBe('stays')
    expect(outcome({ legParted: { trouble: 'lost support' } }).leg).toBe('falls')
    expect(outcome({ legParted: { trouble: 'unstable' } }).leg).toBe('falls')
    expect(outcome({ legParted: { tension: null } }).leg).toBe('falls')
    expect(outcome({ legPartedSudden: { tension: null } }).leg).toBe('falls')
    expect(outcome({ legParted: { trouble: 'not converged' } }).leg).toBe('unknown')
  })

  test('the others are asked at rest and in the jolt: either is enough to part them', () => {
    expect(outcome({ legParted: { tension: 1e6 } }).leg).toBe('falls')
    expect(outcome({ legPartedSudden: { tension: 1e6 } }).leg).toBe('falls')
  })

  test('a strand is not known where the pull of its leg is not, and goes with its leg where the rest cannot carry it', () => {
    expect(outcome({ strandParted: { tension: null } }).strand).toBe('unknown')
    expect(outcome({ strandParted: { tension: 1e6 } }).strand).toBe('stays')
    expect(outcome({ strandParted: { tension: 1e6 }, legParted: { tension: 1e6 } }).strand).toBe('falls')
  })

  test('strands that are gone already leave fewer to spare', () => {
    const worn = (strands: number): Solved => ({ ...solved, hanger: { ...solved.hanger, inspections: [{ row: 0, date: '2026-03-01', what: 'strandGone', leg: 1, strands, note: null }] } })
    // Four strands in sinnets: two carry; with one gone the next takes the leg along.
    const strained = { strandParted: { tension: 1e6 }, legParted: { tension: 1e6 } }
    expect(outcome({}, worn(0)).strand).toBe('stays')
    expect(outcome({ legParted: { tension: 1e6 } }, worn(0)).strand).toBe('stays')
    expect(outcome({ legParted: { tension: 1e6 } }, worn(1)).strand).toBe('falls')
    expect(outcome(strained, worn(0)).strand).toBe('falls')
  })
})
