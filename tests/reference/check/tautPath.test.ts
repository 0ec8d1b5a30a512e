import { describe, expect, test } from 'vitest'
import { metres } from '../../../src/quantity/si'
import { ON_AXIS, tautPath, tautPathTo, type ProfilePoint, type TautPath } from '../../../src/statics/tautPath'

function pathOf(profile: readonly ProfilePoint[], strand: number, upper = ON_AXIS): TautPath {
  const path = tautPath({ profile, upper, strand: metres(strand) })
  if (!path.ok) throw new Error(`needs ${path.least}`)
  return path
}

/** Profiles from the base edge up, m: tapered, upside down, straight, bellied, a bowl in six facets. */
const PROFILES: readonly (readonly [string, readonly ProfilePoint[]])[] = [
  ['tapered', [{ r: 0.07, z: 0 }, { r: 0.105, z: 0.185 }]],
  ['wider below', [{ r: 0.12, z: 0 }, { r: 0.07, z: 0.16 }]],
  ['straight', [{ r: 0.09, z: 0 }, { r: 0.09, z: 0.13 }]],
  ['bellied', [{ r: 0.05, z: 0 }, { r: 0.11, z: 0.09 }, { r: 0.065, z: 0.2 }]],
  ['bowl', [0, 1, 2, 3, 4, 5].map((i) => ({ r: 0.04 + 0.1 * Math.sin((i / 5) * 1.4), z: 0.12 * (1 - Math.cos((i / 5) * 1.4)) }))],
]

/**
 * The same independently: the profile is cut into a thousand points, the shortest way from the hook to the
 * knot round them is the edge of their convex hull, and the hook's height is halved down to the strand's length.
 */
function byHull(profile: readonly ProfilePoint[], strand: number, out: number): { top: number; angle: number } {
  const points: ProfilePoint[] = [{ r: 0, z: 0 }]
  profile.forEach((to, i) => {
    const from = profile[i - 1] ?? to
    for (let s = 1; s <= 250; s++) points.push({ r: from.r + ((to.r - from.r) * s) / 250, z: from.z + ((to.z - from.z) * s) / 250 })
  })
  const hull = (top: number): ProfilePoint[] => {
    const kept: ProfilePoint[] = []
    for (const p of [...points, { r: out, z: top }]) {
      while (kept.length > 1) {
        const [a, b] = [kept.at(-2), kept.at(-1)] as [ProfilePoint, ProfilePoint]
        // The outside is to the right of the way up: drop a point that does not bulge.
        if ((b.r - a.r) * (p.z - a.z) - (b.z - a.z) * (p.r - a.r) > 0) break
        kept.pop()
      }
      kept.push(p)
    }
    return kept
  }
  const lengthOf = (line: readonly ProfilePoint[]): number => line.slice(1).reduce((sum, p, i) => sum + Math.hypot(p.r - (line[i]?.r ?? 0), p.z - (line[i]?.z ?? 0)), 0)
  let [low, high] = [Math.max(...profile.map((p) => p.z)), strand]
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2
    if (lengthOf(hull(middle)) < strand) low = middle
    else high = middle
  }
  const last = hull(low).at(-2) as ProfilePoint
  return { top: low, angle: Math.abs(Math.atan2(last.r - out, low - last.z)) }
}

describe.each(PROFILES)('a %s pot', (_, profile) => {
  test.each([0.42, 0.55, 0.93, 1.7])('in a strand of %d m hangs where the shortest way round it ends', (strand) => {
    const path = pathOf(profile, strand)
    const independent = byHull(profile, strand, 0)
    expect(path.top).toBeCloseTo(independent.top, 9)
    expect(path.angle).toBeCloseTo(independent.angle, 9)
  })

  test.each([0.03, 0.08, 0.15])('from a level ring of %d m in radius hangs there too, whether it leans in or out', (out) => {
    for (const strand of [0.55, 0.93]) {
      const path = pathOf(profile, strand, { out, aside: 0 })
      const independent = byHull(profile, strand, out)
      expect(path.top).toBeCloseTo(independent.top, 9)
      expect(path.angle).toBeCloseTo(independent.angle, 9)
      expect(tautPathTo(profile, { out, aside: 0 }, path.top)).toEqual(path)
    }
  })

  // Held in its plane up to where it leaves the pot, a strand to an upper end aside of it is the shortest of all whose
  // free part keeps clear of the round pot; found by trying every point of the profile.
  test.each([[0.02, 0.06], [-0.04, 0.05], [0.11, 0.09]])('to an upper end %d m out and %d m aside leaves where it is shortest of all that keep clear of the pot', (out, aside) => {
    const path = pathOf(profile, 0.8, { out, aside })
    const radiusAt = (z: number): number => {
      const above = profile.findIndex((p) => p.z >= z)
      const [lower, upper] = [profile[above - 1], profile[above]]
      return !lower || !upper ? 0 : lower.r + ((upper.r - lower.r) * (z - lower.z)) / (upper.z - lower.z)
    }
    const keepsClear = ({ r, z }: ProfilePoint): boolean => [1e-4, 1e-3, ...Array.from({ length: 99 }, (_unused, i) => (i + 1) / 100)].every((s) => {
      const at = z + s * (path.top - z)
      return Math.hypot(r + s * (out - r), s * aside) > radiusAt(at) - 1e-9
    })
    let along = 0
    const lengths = profile.flatMap((to, i) => {
      const from = profile[i - 1]
      const points = from === undefined ? [to] : Array.from({ length: 200 }, (_unused, k) => ({ r: from.r + ((to.r - from.r) * (k + 1)) / 200, z: from.z + ((to.z - from.z) * (k + 1)) / 200 }))
      return points.map((p) => {
        along += from === undefined ? to.r : Math.hypot(to.r - from.r, to.z - from.z) / points.length
        return keepsClear(p) ? along + Math.hypot(p.r - out, aside, path.top - p.z) : Infinity
      })
    })
    expect(Math.min(...lengths)).toBeCloseTo(0.8, 9)
    // What is left out: so much of its pull goes aside.
    expect(aside / path.free).toBeLessThan(0.25)
  })

  test('the parts add up to the strand, and the turns at its corners to the turn', () => {
    const path = pathOf(profile, 0.71)
    expect(path.free + path.knotToLeave).toBeCloseTo(0.71, 12)
    expect(path.free).toBeCloseTo(Math.hypot(path.leave.r, path.top - path.leave.z), 12)
    // Corner by corner, from the free part down to the line under the base.
    const line = [{ r: 0, z: path.top }, ...path.touched, { r: 0, z: 0 }]
    const turns = line.slice(1, -1).map((p, i) => {
      const [before, after] = [line[i] as ProfilePoint, line[i + 2] as ProfilePoint]
      return Math.atan2(p.r - before.r, before.z - p.z) - Math.atan2(after.r - p.r, p.z - after.z)
    })
    expect(turns.reduce((sum, t) => sum + t, 0)).toBeCloseTo(path.turn, 12)
    for (const t of turns) expect(t).toBeGreaterThan(-1e-12)
  })

  test('a strand a millimetre longer than the least reaches, a millimetre shorter does not', () => {
    const none = tautPath({ profile, upper: ON_AXIS, strand: metres(0.05) })
    if (none.ok) throw new Error('reached')
    expect(tautPath({ profile, upper: ON_AXIS, strand: metres(none.least + 0.001) }).ok).toBe(true)
    expect(tautPath({ profile, upper: ON_AXIS, strand: metres(none.least - 0.001) }).ok).toBe(false)
  })
})

test('a tapered pot by hand', () => {
  // Rim 210, base 140, height 185 mm, strand 800 mm: side sqrt(35^2 + 185^2) = 188.28, free 800 - 70 - 188.28 =
  // 541.72, rise sqrt(541.72^2 - 105^2) = 531.44, top 716.44 mm, angle asin(105 / 541.72) = 11.177 degrees.
  const path = pathOf([{ r: 0.07, z: 0 }, { r: 0.105, z: 0.185 }], 0.8)
  expect(path.free * 1000).toBeCloseTo(541.72, 2)
  expect(path.top * 1000).toBeCloseTo(716.44, 2)
  expect((path.angle * 180) / Math.PI).toBeCloseTo(11.177, 2)
  expect(path.knotToBaseEdge).toBe(0.07)
  expect((path.turn * 180) / Math.PI).toBeCloseTo(101.177, 2)
})

test('a pot wider below is left at its base when the strand is long, at its rim when it is short', () => {
  const cone: readonly ProfilePoint[] = [{ r: 0.12, z: 0 }, { r: 0.1, z: 0.1 }]
  // Side and strand in line at a height of 0.12 / 0.2 = 0.6 m: strand 0.12 + sqrt(0.12^2 + 0.6^2) = 0.7319 m.
  expect(pathOf(cone, 0.74).leave.z).toBe(0)
  expect(pathOf(cone, 0.72).leave.z).toBe(0.1)
})
