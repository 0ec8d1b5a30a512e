import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { REFUSED_ANGLE, WIDE_ANGLE } from '../../../../src/catalogue/legs'
import { RATED_FOR_A_MOMENT, RATED_IN_ACCIDENT } from '../../../../src/catalogue/reserves'
import { WEAKEST_ACROSS } from '../../../../src/catalogue/sticks'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'
import { without } from '../../hanger/without'
import { codesOf, linkIn, worstOfLink } from '../linkOf'

const check = (patch: Patch) => checkOf({ ...ORDINARY, 'ring.inside': '45 mm', ...patch })
const TEST = { 'testHang.mass': '30 kg', 'testHang.time': '26 h', 'testHang.slip': '1 mm' } as const

describe('a wooden ring', () => {
  test('is not known: it breaks across the grain', () => {
    const wooden = check({ 'ring.metal': 'wood' })
    expect(worstOfLink(wooden, 'ring')).toMatchObject({ verdict: 'not enough known', utilisation: null })
    expect(codesOf(wooden, 'ring')).toEqual(['RING_UNRATED', 'RING_ACROSS_GRAIN'])
  })

  test('holds at rest by a test hang of twice the load', () => {
    const tested = check({ 'ring.metal': 'wood', ...TEST })
    expect(linkIn(tested, 'ring', 'watered')).toMatchObject({ verdict: 'holds', part: 'testHang' })
  })

  test('is not said to fail where its test hang was too light', () => {
    const light = check({ 'ring.metal': 'wood', ...TEST, 'testHang.mass': '3 kg' })
    expect(worstOfLink(light, 'ring').verdict).toBe('not enough known')
  })

  test('may have strands that slipped in that test, but not too short a one', () => {
    expect(linkIn(check({ 'ring.metal': 'wood', ...TEST, 'testHang.slip': '9 mm' }), 'ring', 'watered').verdict).toBe('holds')
    expect(linkIn(check({ 'ring.metal': 'wood', ...TEST, 'testHang.time': '23 h' }), 'ring', 'watered').verdict).toBe('not enough known')
  })

  test('is said to be asked too much across its grain only where it is: 6 W r / (pi b3)', () => {
    const bar = (millimetres: number) => {
      const of = check({ 'ring.metal': 'wood', 'ring.wire': `${millimetres} mm` })
      const [b, r] = [millimetres / 1000, (0.045 + millimetres / 1000) / 2]
      return { stress: (6 * of.solved.loads.watered.weight * r) / Math.PI / b ** 3, said: linkIn(of, 'ring', 'watered').findings.flatMap((f) => (f.code === 'RING_ACROSS_GRAIN' ? [f] : [])) }
    }
    const [thin, thick] = [bar(10), bar(30)]
    expect(thin.said).toHaveLength(1)
    expect(thin.said[0]?.asked).toBeCloseTo(thin.stress, 0)
    // What a weak piece bears is less than the mean of the weakest wood listed.
    expect(thin.said[0]?.bears).toBeLessThan(WEAKEST_ACROSS.value)
    expect(thick.stress).toBeLessThan(thin.said[0]?.bears ?? NaN)
    expect(thick.said).toEqual([])
  })

  test('holds by a rating', () => {
    expect(worstOfLink(check({ 'ring.metal': 'wood', 'ring.rated': '90 kgf' }), 'ring').verdict).toBe('holds')
  })
})

describe('a metal ring', () => {
  test('gives way by four hinges, less the reserve: by hand', () => {
    const watered = linkIn(check({ 'ring.metal': 'brass', 'place.beneath': 'people' }), 'ring', 'watered')
    // 5 mm wire, middle radius 25 mm, 100 N/mm2: 4 x 100 x 125 / 6 / 25 over 3.
    expect(watered.capacity?.value).toBeCloseTo((4 * 100 * 125) / 6 / 25, 9)
    expect(watered.allowable?.value).toBeCloseTo((4 * 100 * 125) / 6 / 25 / 3, 9)
  })

  test('is said to open slightly above its first yield, from there on only', () => {
    // First yield fy pi2 d3 / (32 R) = 154 N for 4 mm wire and a middle radius of 32 mm of 250 N/mm2.
    const ring: Patch = { 'ring.metal': 'steel', 'ring.wire': '4 mm', 'ring.inside': '60 mm' }
    const said = (mass: string) => check({ ...ring, 'weighed.mass': mass }).links.filter((l) => l.link === 'ring' && l.findings.some((f) => f.code === 'RING_MAY_OPEN')).map((l) => l.case)
    expect(said('3 kg').filter((code) => code !== 'drop')).toEqual([])
    expect(said('15 kg')).toEqual(expect.arrayContaining(['bump', 'setDown']))
    expect(said('15 kg')).not.toContain('dry')
  })
})

test('a bunched top has no ring', () => {
  expect(check({ 'make.top': 'bunched' }).links.map((l) => l.link)).not.toContain('ring')
})

test('wire that was not measured is not said to hold', () => {
  expect(worstOfLink(checkOf({ ...without(ORDINARY, 'ring.wire'), 'weighed.mass': '0.3 kg' }), 'ring').verdict).toBe('just holds')
})

test('a rating or a test hang stands without the wire being measured', () => {
  const unmeasured = without({ ...ORDINARY, 'ring.inside': '45 mm' }, 'ring.wire')
  for (const patch of [{ 'ring.rated': '90 kgf' }, { 'ring.metal': 'wood', ...TEST, 'testHang.mass': '90 kg' }] as const) {
    const found = checkOf({ ...unmeasured, ...patch })
    expect(worstOfLink(found, 'ring').verdict).toBe('holds')
    expect(codesOf(found, 'ring')).not.toContain('ASSUMED_PART_HOLDS')
  }
})

test('a rated ring bears its rating for good, and as many times that for a moment and in an accident as rated parts do', () => {
  const rated = check({ 'ring.rated': '60 kgf' })
  const allowable = (code: 'watered' | 'setDown' | 'drop') => linkIn(rated, 'ring', code).allowable?.value ?? NaN
  expect(allowable('setDown') / allowable('watered')).toBeCloseTo(RATED_FOR_A_MOMENT.value, 9)
  expect(linkIn(rated, 'ring', 'drop').factors.map((f) => f.value)).toContain(RATED_IN_ACCIDENT.value)
})

describe('a ring that lies level', () => {
  /** 60 mm from the axis to the middle of its bar. */
  const level = (patch: Patch) => check({ 'ring.lies': 'level', 'ring.metal': 'steel', 'ring.inside': '115 mm', 'ring.wire': '5 mm', 'ring.cords': '4', 'ring.cordStrands': '4', 'ring.rise': '80 mm', 'make.totalLength': '120 cm', ...patch })
  const cord = (patch: Patch, code: 'dry' | 'watered' = 'watered') => linkIn(level(patch), 'ringCord', code)

  test('is not known until tested, whatever it is of and whatever it is rated for', () => {
    for (const patch of [{}, { 'ring.metal': 'wood' }, { 'ring.rated': '90 kgf' }] as const) {
      expect(worstOfLink(level(patch), 'ring')).toMatchObject({ verdict: 'not enough known', capacity: null })
      expect(codesOf(level(patch), 'ring')).toEqual(['RING_LEVEL_UNTESTED'])
      expect(linkIn(level({ ...patch, ...TEST }), 'ring', 'watered')).toMatchObject({ part: 'testHang', verdict: 'holds' })
    }
  })

  test('asks of each of its cords W / (3 cos c), of two or three of as many as there are: a 3-4-5 triangle', () => {
    const { weight } = level({}).solved.loads.watered
    for (const cords of ['3', '4', '8']) expect(cord({ 'ring.cords': cords }).demand?.value).toBeCloseTo((weight / 3) * 1.25, 9)
  })

  test('has cords that break at their knot or bend, as many strands as they have: twice the strands, half the use', () => {
    expect((cord({}).utilisation ?? NaN) / (cord({ 'ring.cordStrands': '8' }).utilisation ?? NaN)).toBeCloseTo(2, 9)
    expect(cord({}).overallFactor).toBeCloseTo((4 * (cord({}, 'dry').capacity?.value ?? NaN)) / (cord({}).demand?.value ?? NaN), 9)
    expect(cord({ 'hook.wire': '2 mm' }).part).toBe('bend')
    expect(cord({ 'hook.wire': '12 mm' }).part).toBe('larksHead')
    expect(cord({ 'hook.wire': '2 mm' }).utilisation ?? NaN).toBeGreaterThan(cord({ 'hook.wire': '12 mm' }).utilisation ?? NaN)
  })

  test('is told to have wide cords from the angle on at which legs count as wide, refused from where they are refused', () => {
    const inDegrees = (angle: number) => (angle * 180) / Math.PI
    const [wide, refused] = [inDegrees(WIDE_ANGLE.value), inDegrees(REFUSED_ANGLE.value)]
    const at = (degrees: number) => cord({ 'ring.rise': `${60 / Math.tan((degrees * Math.PI) / 180)} mm`, 'ring.cordStrands': '24' })
    const told = (degrees: number) => at(degrees).findings.flatMap((f) => (f.code === 'RING_CORDS_WIDE' ? [f] : []))
    expect([wide - 0.1, wide + 0.1, refused - 0.1, refused + 0.1].map((d) => told(d).map((f) => f.refused))).toEqual([[], [false], [false], [true]])
    expect(told(wide + 1)[0]?.degrees).toBeCloseTo(wide + 1, 2)
    expect(at(refused + 0.1).verdict).toBe('fails')
    expect(at(wide + 0.1).verdict).toBe('just holds')
  })
})
