import { describe, expect, test } from 'vitest'
import { frontView, loupes, partKey, sideView, type CheckResult, type Dimension, type Drawing, type Point, type Shape } from '#core'
import { randomPatch } from '../check/randomPatch'
import { checkOf } from '../hanger/hangerOf'
import { DRAWN } from './drawnHangers'

/** Random hangers beside those that are drawn by name: every third of these seeds has a place of its own. */
const RANDOM = Array.from({ length: 9 }, (_, i) => [`random ${3 * i + (i % 2)}`, checkOf(randomPatch(3 * i + (i % 2)))] as const)
const ALL: readonly (readonly [string, CheckResult])[] = [...DRAWN, ...RANDOM]

const pointsOf = (shape: Shape): readonly Point[] => {
  switch (shape.kind) {
    case 'label': return [shape.at]
    case 'circle': return [shape.centre]
    case 'cord': return [...shape.axis, ...shape.strands.flat()]
    case 'line': case 'area': return shape.points
  }
}

const everyPoint = (d: Drawing): readonly Point[] => [
  ...d.shapes.flatMap(pointsOf), ...d.dimensions.flatMap((m) => [m.from, m.to, m.number]), ...Object.values(d.captions), ...d.legs.flatMap((l) => l ?? []),
]

const outside = (d: Drawing): readonly Point[] => {
  const { left, right, bottom, top } = d.bounds
  return everyPoint(d).filter(([x, y]) => !(x >= left && x <= right && y >= bottom && y <= top))
}

/** The room a number takes, as the bounds of a view count it; `unit` is a fortieth of the height drawn. */
function roomOf({ number: [x, y], side }: Dimension, unit: number): { readonly x: readonly [number, number]; readonly y: readonly [number, number] } {
  const [left, right] = { left: [4, 0], middle: [1.9, 1.9], right: [0, 4] }[side] as [number, number]
  return { x: [x - left * unit, x + right * unit], y: [y - 0.55 * unit, y + 0.55 * unit] }
}

const meet = ([a, b]: readonly [number, number], [c, d]: readonly [number, number]): boolean => Math.min(b, d) - Math.max(a, c) > 1e-9

function overlaps({ dimensions }: Drawing, unit: number): readonly string[] {
  const rooms = dimensions.map((d) => roomOf(d, unit))
  return dimensions.flatMap((a, i) => dimensions.slice(i + 1).flatMap((b, k) => {
    const [one, other] = [rooms[i], rooms[i + 1 + k]]
    const numbers = one !== undefined && other !== undefined && meet(one.x, other.x) && meet(one.y, other.y)
    return numbers || along(a, b) ? [`${a.path} ${b.path}`] : []
  }))
}

/** Whether two lines run over one another. */
function along(a: Dimension, b: Dimension): boolean {
  const axis = (d: Dimension): 0 | 1 | null => (Math.abs(d.from[0] - d.to[0]) < 1e-9 ? 1 : Math.abs(d.from[1] - d.to[1]) < 1e-9 ? 0 : null)
  const on = axis(a)
  if (on === null || axis(b) !== on) return false
  const across = on === 0 ? 1 : 0
  const range = (d: Dimension): readonly [number, number] => [Math.min(d.from[on], d.to[on]), Math.max(d.from[on], d.to[on])]
  return Math.abs(a.from[across] - b.from[across]) < 1e-6 && meet(range(a), range(b))
}

describe.each(ALL)('%s', (_, check) => {
  const front = frontView(check, 'watered')
  const details = loupes(check, 'watered')

  test.each(['watered', 'legParted', 'bump', 'gust'] as const)('from the side, %s, every point is a number within the bounds', (code) => {
    const side = sideView(check, code)
    expect(everyPoint(side).length).toBeGreaterThan(20)
    expect(outside(side)).toEqual([])
  })

  test('through every loupe, every point is a number within the bounds', () => {
    for (const { code, of, drawing } of details) {
      expect(outside(drawing), code).toEqual([])
      expect(drawing.shapes.length, code).toBeGreaterThan(1)
      expect(of.right - of.left, code).toBeGreaterThan(0)
      expect(of.top - of.bottom, code).toBeGreaterThan(0)
    }
    expect(new Set(details.map(({ code, link }) => `${code} ${link}`)).size).toBe(details.length)
  })

  test('each part that was checked is drawn in one of the views', () => {
    if (!check.solved.geometry.path.ok) return
    const drawn = new Set([front, sideView(check, 'watered')].flatMap(({ shapes }) => shapes.map(({ link }) => link)))
    for (const { link, tier } of check.links) expect(drawn.has(partKey(link, tier)), partKey(link, tier)).toBe(true)
  })

  test('front and side show every leg at the same heights; where the pot leans on a wall, turned about the hook', () => {
    const side = sideView(check, 'watered')
    expect(side.legs).toHaveLength(front.legs.length)
    front.legs.forEach((leg, i) => {
      const seen = side.legs[i] ?? null
      expect(seen === null).toBe(leg === null)
      if (leg === null || seen === null) return
      // A turn keeps lengths, so a leg is never drawn longer from the side than it is.
      const { upper, lower } = check.solved.plan?.legs[i] ?? { upper: [0, 0, 0], lower: [0, 0, 0] }
      expect(Math.hypot(seen[0][0] - seen[1][0], seen[0][1] - seen[1][1])).toBeLessThanOrEqual(1.05 * Math.hypot(upper[0] - lower[0], upper[1] - lower[1], upper[2] - lower[2]))
      if (['wallHook', 'bracket', 'swingArm'].includes(check.solved.hanger.answers['place.support'])) return
      expect(seen[0][1]).toBeCloseTo(leg[0][1], 12)
      expect(seen[1][1]).toBeCloseTo(leg[1][1], 12)
    })
  })

  test('no dimension line or number covers another, and each is of its field’s length', () => {
    const unit = (front.bounds.top - front.bounds.bottom) / 50
    const views: readonly (readonly [Drawing, number])[] = [[front, unit], [sideView(check, 'watered'), unit], ...details.map(({ drawing: d }) => [d, Math.max(d.bounds.right - d.bounds.left, d.bounds.top - d.bounds.bottom) / 34] as const)]
    for (const [drawing, size] of views) {
      expect(overlaps(drawing, size)).toEqual([])
      expect(new Set(drawing.dimensions.map((d) => d.path)).size).toBe(drawing.dimensions.length)
      for (const { path, from, to, value } of drawing.dimensions) {
        if (path.startsWith('second.') || path.startsWith('third.') || check.solved.tiers.length === 0) expect(value, path).toBeCloseTo(check.solved.hanger.answers[path] as number, 9)
        expect(Math.abs(Math.hypot(from[0] - to[0], from[1] - to[1]) - value), path).toBeLessThan(1e-3)
      }
    }
  })
})
