import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { cradledOutline, cradledProfile } from '../../../src/load/outline'
import { reachAt, sectionReach } from '../../../src/load/section'
import { metres } from '../../../src/quantity/si'
import { ON_AXIS, tautPath } from '../../../src/statics/tautPath'
import { hangerOf } from '../hanger/hangerOf'

const profileOf = (patch: Patch) => cradledProfile(cradledOutline(hangerOf(patch).answers), sectionReach)
const ROUND: Patch = { 'pot.rim': '202 mm', 'pot.base': '134 mm', 'pot.height': '176 mm' }
const BOWL: Patch = { ...ROUND, 'pot.shape': 'bowl', 'pot.base': '90 mm' }
const BELLIED: Patch = { ...ROUND, 'pot.shape': 'bellied', 'pot.belly': '248 mm', 'pot.bellyHeight': '97 mm' }

test('straight sides are two points', () => {
  expect(profileOf(ROUND)).toEqual([{ r: 0.067, z: 0 }, { r: 0.101, z: 0.176 }])
  expect(profileOf({ ...ROUND, 'pot.shape': 'cylinder' })).toEqual([{ r: 0.101, z: 0 }, { r: 0.101, z: 0.176 }])
})

test('a strand over the middle of a side lies over half the width or length, one beside it over more, up to the corner', () => {
  const trough = cradledOutline(hangerOf({ ...ROUND, 'pot.shape': 'trough', 'pot.length': '502 mm' }).answers)
  const rim = (angle: number): number | undefined => cradledProfile(trough, (section) => reachAt(section, angle))[1]?.r
  expect(rim(0)).toBeCloseTo(0.251, 12)
  expect(rim(Math.PI / 2)).toBeCloseTo(0.101, 12)
  expect(rim(2)).toBeCloseTo(0.101 / Math.sin(2), 12)
  expect(rim(Math.atan2(0.101, 0.251))).toBeCloseTo(Math.hypot(0.101, 0.251), 12)
})

test('square pots and troughs reach half their diagonal', () => {
  expect(profileOf({ ...ROUND, 'pot.shape': 'square' })[1]?.r).toBeCloseTo(0.101 * Math.SQRT2, 12)
  expect(profileOf({ ...ROUND, 'pot.shape': 'trough', 'pot.length': '502 mm' })[1]?.r).toBeCloseTo(Math.hypot(0.101, 0.251), 12)
})

describe.each([['bowl', BOWL], ['bellied', BELLIED]] as const)('a %s', (_, patch) => {
  const profile = profileOf(patch)

  test('is given by few points that bulge outwards', () => {
    expect(profile.length).toBeGreaterThan(7)
    expect(profile.length).toBeLessThanOrEqual(16)
    profile.slice(2).forEach((upper, i) => {
      const [lower, middle] = [profile[i], profile[i + 1]]
      if (!lower || !middle) throw new Error('too few')
      expect((middle.r - lower.r) * (upper.z - middle.z)).toBeGreaterThan((upper.r - middle.r) * (middle.z - lower.z))
    })
  })

  test('has its rim, base and widest level among them', () => {
    expect(profile[0]).toEqual({ r: patch === BOWL ? 0.045 : 0.067, z: 0 })
    const top = profile[profile.length - 1]
    expect(top?.z).toBeCloseTo(0.176, 12)
    expect(top?.r).toBeCloseTo(0.101, 12)
    expect(Math.max(...profile.map((p) => p.r))).toBeCloseTo(patch === BOWL ? 0.101 : 0.124, 12)
  })
})

describe('a taut strand', () => {
  test('leaves a bowl at its rim', () => {
    const path = tautPath({ profile: profileOf(BOWL), upper: ON_AXIS, strand: metres(0.83) })
    expect(path.ok && path.leave.z).toBeCloseTo(0.176, 12)
  })

  test('leaves a belly above its middle, where it just touches: length and angle by a curve of 40 000 points', () => {
    // Lower and upper ellipse through their own measures.
    const [a, level] = [0.124, 0.097]
    const lower = level / Math.sqrt(1 - (0.067 / a) ** 2)
    const upper = (0.176 - level) / Math.sqrt(1 - (0.101 / a) ** 2)
    const radius = (z: number): number => a * Math.sqrt(1 - ((z - level) / (z < level ? lower : upper)) ** 2)
    const curve = Array.from({ length: 40_001 }, (_unused, i) => ({ z: (0.176 * i) / 40_000, r: radius((0.176 * i) / 40_000) }))
    const [fine, coarse] = [tautPath({ profile: curve, upper: ON_AXIS, strand: metres(0.83) }), tautPath({ profile: profileOf(BELLIED), upper: ON_AXIS, strand: metres(0.83) })]
    if (!fine.ok || !coarse.ok) throw new Error('no path')
    expect(fine.leave.z).toBeGreaterThan(level)
    expect(fine.leave.z).toBeLessThan(0.176)
    expect(Math.abs(coarse.top - fine.top)).toBeLessThan(0.002)
    expect(Math.abs(coarse.angle - fine.angle)).toBeLessThan(0.006)
    expect(Math.abs(coarse.leave.r - fine.leave.r)).toBeLessThan(0.002)
  })

  test('leaves a narrow-mouthed pot at or below its rim on the way to a far point', () => {
    const path = tautPath({ profile: profileOf({ ...BELLIED, 'pot.rim': '90 mm' }), upper: ON_AXIS, strand: metres(0.9) })
    expect(path.ok && path.leave.z).toBeGreaterThan(0.097)
    expect(path.ok && path.leave.r).toBeGreaterThan(0.045)
  })
})

describe('what the pot stands in', () => {
  test('a saucer wider than the base is what strands turn round, its hollow to the rim bridged', () => {
    const [edge, ...rest] = profileOf({ ...ROUND, 'saucer.width': '170 mm', 'saucer.depth': '20 mm', 'pot.wall': '3 mm' })
    expect(edge?.r).toBeGreaterThan(0.085)
    expect(rest[rest.length - 1]).toEqual({ r: 0.101, z: 0.176 })
  })

  test('the saucer of a square pot or a trough is as wide inside as said, with walls, and as much longer as the trough', () => {
    const levels = cradledOutline(hangerOf({ ...ROUND, 'pot.shape': 'trough', 'pot.length': '502 mm', 'pot.material': 'plastic', 'saucer.width': '210 mm', 'saucer.depth': '24 mm' }).answers).saucer
    expect(levels?.map(({ z }) => z)).toEqual([0, 0.024])
    for (const { round, across, along } of levels ?? []) {
      expect(round).toBe(false)
      // Half of 210 mm and of 300 mm more, walls of plastic 2 mm.
      expect(across).toBeCloseTo(0.107, 12)
      expect(along).toBeCloseTo(0.257, 12)
    }
  })

  test('a cover pot is the body in the cradle, with walls of 7 mm of stoneware', () => {
    const profile = profileOf({ ...ROUND, 'cover.inside': '230 mm', 'cover.height': '190 mm' })
    expect(profile).toHaveLength(2)
    expect(profile[0]?.r).toBeCloseTo(0.122, 12)
    expect(profile[1]).toEqual({ r: profile[0]?.r, z: 0.19 })
  })
})
