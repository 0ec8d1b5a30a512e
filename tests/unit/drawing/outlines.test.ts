import { describe, expect, test } from 'vitest'
import { aboveView, frontView, type Patch, type Point, type Shape } from '#core'
import { checkOf, ORDINARY } from '../hanger/hangerOf'

const front = (patch: Patch) => frontView(checkOf({ ...ORDINARY, ...patch }), 'watered')
const potAreas = (shapes: readonly Shape[]): readonly (readonly Point[])[] => shapes.flatMap((s) => (s.ink === 'pot' && s.kind === 'area' ? [s.points] : []))
/** Width of an upright outline at a height. */
function widthAt(points: readonly Point[], z: number): number {
  const crossings = points.flatMap((a, i) => {
    const b = points[(i + 1) % points.length] as Point
    return a[1] <= z === b[1] <= z ? [] : [a[0] + ((b[0] - a[0]) * (z - a[1])) / (b[1] - a[1])]
  })
  return Math.max(...crossings) - Math.min(...crossings)
}
const outline = (patch: Patch): readonly Point[] => potAreas(front(patch).shapes)[0] ?? []
const dimensions = (patch: Patch): readonly string[] => front(patch).dimensions.map((d) => d.path)

describe('the outline of the pot', () => {
  // The pot sinks a little as the legs stretch: heights are taken from its base.
  const base = (points: readonly Point[]): number => Math.min(...points.map(([, z]) => z))
  const width = (patch: Patch, z: number): number => widthAt(outline(patch), base(outline(patch)) + z)

  test('of a cylinder is as wide at its base as at its rim', () => {
    const cylinder: Patch = { 'pot.shape': 'cylinder', 'pot.rim': '17 cm' }
    for (const z of [0.001, 0.09, 0.184]) expect(width(cylinder, z)).toBeCloseTo(0.17, 3)
  })

  test('of a bowl and of a belly is that of their ellipse', () => {
    const bowl: Patch = { 'pot.shape': 'bowl', 'pot.rim': '26 cm', 'pot.base': '10 cm', 'pot.height': '12 cm' }
    // A zone of a ball of 13 cm: 6 cm below its middle it is sqrt(13^2 - 6^2) = 11.53 cm in radius.
    expect(Math.abs(width(bowl, 0.06) - 2 * 0.1153)).toBeLessThan(0.002)
    const bellied: Patch = { 'pot.shape': 'bellied', 'pot.rim': '14 cm', 'pot.base': '11 cm', 'pot.belly': '21 cm', 'pot.bellyHeight': '9 cm' }
    expect(width(bellied, 0.0901)).toBeCloseTo(0.21, 3)
    expect(width(bellied, 0.184)).toBeLessThan(0.15)
  })

  test('of a pot in a saucer or cover pot shows that too', () => {
    expect(potAreas(front({ 'saucer.width': '21 cm' }).shapes)).toHaveLength(potAreas(front({}).shapes).length + 1)
    expect(potAreas(front({ 'cover.inside': '24 cm', 'make.totalLength': '120 cm' }).shapes)).toHaveLength(potAreas(front({}).shapes).length + 1)
  })
})

test('each shape has the lines of its own measures', () => {
  expect(dimensions({ 'pot.shape': 'cylinder' })).not.toContain('pot.base')
  expect(dimensions({ 'pot.shape': 'bellied', 'pot.rim': '15 cm', 'pot.base': '12 cm' })).toContain('pot.belly')
  expect(dimensions({})).not.toContain('pot.belly')
})

test('strands bend round a belly with it', () => {
  const bellied: Patch = { 'pot.shape': 'bellied', 'pot.rim': '14 cm', 'pot.base': '11 cm', 'pot.belly': '21 cm', 'pot.bellyHeight': '9 cm', 'cradle.kind': 'open' }
  const check = checkOf({ ...ORDINARY, ...bellied })
  const cords = frontView(check, 'watered').shapes.filter((s) => s.kind === 'cord' && s.link === 'seat')
  expect(cords.length).toBeGreaterThanOrEqual(4)
  for (const cord of cords) if (cord.kind === 'cord' && cord.leg !== null) expect(cord.axis.length).toBeGreaterThan(6)
})

test('from above a square pot has corners, one at each of four legs', () => {
  const check = checkOf({ ...ORDINARY, 'pot.shape': 'square', 'pot.rim': '16 cm', 'pot.base': '12 cm' })
  const view = aboveView(check, 'watered')
  const rim = potAreas(view.shapes)[0] ?? []
  expect(rim).toHaveLength(4)
  for (const leg of view.legs) {
    const end = leg?.[1] ?? [NaN, NaN]
    expect(Math.min(...rim.map((p) => Math.hypot(p[0] - end[0], p[1] - end[1])))).toBeLessThan(0.002)
  }
})
