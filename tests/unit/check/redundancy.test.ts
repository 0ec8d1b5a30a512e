import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
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
