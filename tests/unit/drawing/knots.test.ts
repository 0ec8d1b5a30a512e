import { expect, test } from 'vitest'
import { aboveView, frontView, type Drawing, type Patch, type Point, type Shape } from '#core'
import { checkOf, ORDINARY } from '../hanger/hangerOf'
import { PANEL } from '../hanger/panelPatch'

const front = (patch: Patch): Drawing => frontView(checkOf({ ...ORDINARY, ...patch }), 'dry')
const lines = (shapes: readonly Shape[]): readonly Extract<Shape, { kind: 'line' }>[] => shapes.filter((s) => s.kind === 'line')

test('a panel’s strands are drawn together in fours, two bars to each square knot, in rows that alternate', () => {
  const cord = 0.004
  const { shapes } = frontView(checkOf(PANEL), 'dry')
  const strands = lines(shapes).filter((s) => s.link === 'leg' && s.width === cord && s.points.length > 4)
  expect(strands).toHaveLength(24)
  const bars = lines(shapes).filter((s) => s.link === 'leg' && Math.abs(s.width - 0.9 * cord) < 1e-12)
  const middle = ({ points }: { points: readonly Point[] }): number => (points[1] as Point)[0]
  const rows = [...new Set(bars.map((b) => Math.round((b.points[1] as Point)[1] * 1e4)))].sort((a, b) => b - a)
  const row = (i: number): readonly number[] => bars.filter((b) => Math.round((b.points[1] as Point)[1] * 1e4) === rows[i]).map(middle).sort((a, b) => a - b)
  // Two bars a knot: rows 0 and 1 are the first row of knots, 2 and 3 the second.
  expect(row(0)).toHaveLength(6)
  expect(row(2)).toHaveLength(5)
  row(2).forEach((x, i) => expect(x).toBeCloseTo(((row(0)[i] as number) + (row(0)[i + 1] as number)) / 2, 9))
  // In a knot its four strands lie side by side.
  const height = (rows[0] as number) / 1e4 - 0.55 * cord
  const there = strands.flatMap(({ points }) => points.filter(([, z]) => Math.abs(z - (height + 1.1 * cord)) < 2e-4).map(([x]) => x)).sort((a, b) => a - b)
  expect((there[3] as number) - (there[0] as number)).toBeCloseTo(3 * cord, 6)
})

test('knots of a leg run over the length that was told', () => {
  const marks = (patch: Patch): readonly number[] => lines(front(patch).shapes).filter((s) => s.link === 'leg' && s.leg === 1 && s.width === 0).map(({ points }) => (points[1] as Point)[1])
  const span = (patch: Patch): number => Math.max(...marks(patch)) - Math.min(...marks(patch))
  expect(span({ 'make.knotted': '10 cm' })).toBeLessThan(0.1)
  expect(span({ 'make.knotted': '30 cm' })).toBeGreaterThan(0.2)
  expect(span({ 'make.knotted': '30 cm' })).toBeLessThan(0.3)
  expect(marks({ 'make.build': 'plain' })).toEqual([])
})

test('lower pots are in pencil by their own answers', () => {
  const TIERS: Patch = { ...ORDINARY, 'make.arrangement': 'tiers', 'second.rim': '18 cm', 'second.height': '15 cm', 'second.base': '12 cm', 'second.strand': '60 cm', 'second.first': '9 cm', 'second.strands': '4' }
  const legs = (patch: Patch): readonly boolean[] => frontView(checkOf(patch), 'dry').shapes.flatMap((s) => (s.link === 'leg@2' && s.kind === 'cord' && s.leg !== null ? [s.pencil] : []))
  expect(legs(TIERS)).toEqual([false, false, false, false])
  const { 'second.strand': strand, ...less } = TIERS
  expect(strand).toBe('60 cm')
  expect(legs(less)).toEqual([true, true, true, true])
})

test('what is seen only from above is measured there', () => {
  expect(aboveView(checkOf(PANEL), 'dry').dimensions.map((d) => [d.path, d.value])).toEqual([['panel.behindWidth', 0.06]])
  expect(aboveView(checkOf(ORDINARY), 'dry').dimensions).toEqual([])
})

test('a net is pointed at by its knots, an open cradle where its strands turn over the base', () => {
  const dots = (kind: string): number => front({ 'cradle.kind': kind }).shapes.filter((s) => s.link === 'cradle' && s.kind === 'circle').length
  expect([dots('net'), dots('open')]).toEqual([4, 4])
})
