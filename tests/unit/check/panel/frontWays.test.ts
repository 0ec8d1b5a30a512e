import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import type { PanelGeometry } from '../../../../src/check/panel/panelGeometry'
import { netRows } from '../../../../src/check/panel/netRows'
import { metres, radians } from '../../../../src/quantity/si'
import type { Vec3 } from '../../../../src/statics/sling/result'
import { radiusAt, slantOf, unroll } from '../../../../src/statics/unrolled'
import { checkOf, hangerOf } from '../../hanger/hangerOf'
import { PANEL } from '../../hanger/panelPatch'

const panelOf = (patch: Patch): PanelGeometry => {
  const { panel } = checkOf({ ...PANEL, ...patch }).solved.geometry
  if (!panel?.ok) throw new Error(JSON.stringify(panel?.finding))
  return panel
}
const NET = { 'panel.width': '260 mm', 'panel.front': '6', 'panel.knots': '3', 'panel.knotSpacing': '30 mm', 'cradle.first': '130 mm', 'panel.cords': '16' } as const

describe.each([['a cone', {}], ['a cylinder', { 'pot.shape': 'cylinder', 'cradle.first': '150 mm' }]] as const)('a net in front of %s', (_, patch) => {
  const told = { ...NET, ...patch }
  const panel = panelOf(told)
  const { side } = panel.side
  const rows = netRows(hangerOf({ ...PANEL, ...told }).answers)
  /** Its place along from the gathering knot and aside of the very front, over the side. */
  const unrolled = ([x, y, z]: Vec3): { along: number, aside: number } => ({ along: side.baseRadius + z / Math.cos(slantOf(side)), aside: Math.atan2(x, y) * Math.hypot(x, y) })
  const onSide = rows.flat().filter(({ along }) => along > side.baseRadius)

  test('lies on its side, all of it', () => {
    const { strands, knots, runs } = panel.ways
    for (const [x, y, z] of [...strands.flat(), ...knots, ...runs.flat()]) {
      expect(Math.hypot(x, y)).toBeCloseTo(radiusAt(side, metres(z)), 9)
      expect(z).toBeGreaterThanOrEqual(-1e-12)
    }
  })

  test('has its knots where they were told, those under the base left out', () => {
    expect(onSide.length).toBeGreaterThan(3)
    expect(onSide.length).toBeLessThan(rows.flat().length)
    expect(panel.ways.knots).toHaveLength(onSide.length)
    for (const [i, knot] of panel.ways.knots.entries()) {
      expect(unrolled(knot).along).toBeCloseTo(onSide[i]?.along ?? NaN, 9)
      expect(unrolled(knot).aside).toBeCloseTo(onSide[i]?.aside ?? NaN, 9)
    }
  })

  test('has strands from where they touch the pot on the right, one to the outermost knot of each row down to the widest', () => {
    const { strands } = panel.ways
    const [x, y, z] = panel.points.front.touch
    expect(strands).toHaveLength(3)
    for (const [row, strand] of strands.entries()) {
      expect(strand).toHaveLength(13)
      const [start, end] = [strand[0] as Vec3, strand.at(-1) as Vec3]
      const touch: Vec3 = [x, y - panel.points.axisFromWall, z]
      for (const i of [0, 1, 2] as const) expect(start[i]).toBeCloseTo(touch[i], 9)
      const knot = rows[row]?.at(-1)
      expect(unrolled(end).along).toBeCloseTo(Math.max(side.baseRadius, knot?.along ?? NaN), 9)
      expect(unrolled(end).aside).toBeCloseTo(knot?.aside ?? NaN, 9)
    }
  })

  test('goes no longer a way than the straight line on the side laid flat', () => {
    for (const strand of panel.ways.strands) {
      const walked = strand.slice(1).reduce((sum, p, i) => sum + Math.hypot(...p.map((c, k) => c - (strand[i]?.[k] ?? NaN))), 0)
      const [start, end] = [strand[0] as Vec3, strand.at(-1) as Vec3]
      const flat = ([x, y, z]: Vec3) => unroll(side, metres(z), radians(Math.atan2(start[0], start[1]) - Math.atan2(x, y)))
      const [from, to] = [flat(start), flat(end)]
      const straight = Math.hypot(to.along - from.along, to.up - from.up)
      // Twelve chords are a trifle shorter than the curve.
      expect(walked / straight).toBeLessThanOrEqual(1 + 1e-9)
      expect(walked / straight).toBeGreaterThan(0.99)
    }
  })

  test('has runs down from every knot on the side, the lowest ones to the base edge', () => {
    const { runs } = panel.ways
    for (const [from, to] of runs) expect(from[2]).toBeGreaterThan(to[2])
    const knots = new Set(panel.ways.knots.map((k) => k.join()))
    for (const [from] of runs) expect(knots.has(from.join())).toBe(true)
    for (const knot of panel.ways.knots) expect(runs.some(([from]) => from.join() === knot.join())).toBe(true)
    expect(runs.some(([, to]) => to[2] === 0)).toBe(true)
  })
})

test('a knot far aside is drawn no farther round than the front shows', () => {
  const panel = panelOf({ ...NET, 'pot.base': '40 mm', 'pot.rim': '170 mm', 'panel.knots': '4', 'panel.front': '8', 'panel.cords': '20', 'panel.knotSpacing': '100 mm', 'cradle.first': '60 mm' })
  const turns = panel.ways.knots.map(([x, y]) => Math.atan2(x, y))
  expect(Math.max(...turns)).toBeCloseTo(1.2, 9)
  expect(Math.min(...turns)).toBeCloseTo(-1.2, 9)
})

test('without a net only the first knot is drawn, and one run from it to the base edge straight below', () => {
  const { ways, side } = panelOf({ 'cradle.kind': 'open' })
  expect(ways.knots).toHaveLength(1)
  expect(ways.runs).toHaveLength(1)
  expect(ways.strands).toHaveLength(1)
  const [[, to]] = ways.runs as [readonly [Vec3, Vec3]]
  expect(to).toEqual([0, side.side.baseRadius, 0])
})
