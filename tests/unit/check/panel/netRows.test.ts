import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { netRows, netRuns, type NetKnot } from '../../../../src/check/panel/netRows'
import { hangerOf } from '../../hanger/hangerOf'
import { PANEL } from '../../hanger/panelPatch'

const rowsOf = (patch: Patch) => netRows(hangerOf({ ...PANEL, ...patch }).answers)
const asides = (row: readonly NetKnot[]): readonly number[] => row.map((knot) => Math.round(knot.aside * 1e9) / 1e9 + 0)

describe('a diamond of knots in front', () => {
  const three = rowsOf({ 'panel.knots': '3', 'panel.knotSpacing': '40 mm', 'cradle.first': '120 mm' })

  test('has one knot more in each row down to its widest, then one fewer', () => {
    expect(three.map((row) => row.length)).toEqual([1, 2, 3, 2, 1])
    expect(rowsOf({ 'panel.knots': '1' }).map((row) => row.length)).toEqual([1])
  })

  test('lies evenly about the middle, a spacing apart, each row half a spacing aside of the next', () => {
    expect(three.map(asides)).toEqual([[0], [-0.02, 0.02], [-0.04, 0, 0.04], [-0.02, 0.02], [0]])
  })

  test('starts at the first knot and comes down by equal steps to just above the gathering knot', () => {
    expect(three.map((row) => row[0]?.along ?? NaN).map((along) => Math.round(along * 1e9) / 1e9)).toEqual([0.12, 0.1, 0.08, 0.06, 0.04])
    for (const row of three) expect(new Set(row.map(({ along }) => along)).size).toBe(1)
  })

  test('is drawn as wide as its strands allow where nothing is told, and no wider than four fifths of the rim', () => {
    expect(Math.max(...rowsOf({ 'panel.front': '6' }).map((row) => row.length))).toBe(3)
    expect(Math.max(...rowsOf({ 'panel.front': '7' }).map((row) => row.length))).toBe(3)
    expect(rowsOf({ 'panel.front': '1' }).map((row) => row.length)).toEqual([1])
    const crowded = rowsOf({ 'panel.knots': '4', 'panel.knotSpacing': '200 mm', 'pot.rim': '160 mm' })
    const [left, right] = [crowded[3]?.[0]?.aside ?? NaN, crowded[3]?.[1]?.aside ?? NaN]
    expect(right - left).toBeCloseTo((0.8 * 0.16) / 4, 12)
  })

  test('is the first knot alone where there is no net', () => {
    expect(rowsOf({ 'cradle.kind': 'open', 'panel.knots': '3', 'cradle.first': '95 mm' })).toEqual([[{ along: 0.095, aside: 0 }]])
  })

  test('has strands from each knot to the two nearest of the longer row beside it, and to no others', () => {
    const runs = netRuns(three)
    expect(runs).toHaveLength(2 + 4 + 4 + 2)
    for (const [from, to] of runs) {
      expect(Math.abs(from.aside - to.aside)).toBeCloseTo(0.02, 12)
      expect(from.along - to.along).toBeCloseTo(0.02, 12)
    }
    expect(netRuns([[{ along: 0.1, aside: 0 }]])).toEqual([])
  })
})
