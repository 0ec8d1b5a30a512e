import { describe, expect, test } from 'vitest'
import { metres, newtons } from '../../../src/quantity/si'
import { diamondNet, strandsForDiamond, type DiamondNet } from '../../../src/statics/diamondNet'
import { ON_AXIS, tautPath } from '../../../src/statics/tautPath'
import { drawnKnot, type DrawnKnot, type DrawnKnotInput } from '../../../src/statics/tiers'
import { seededRandom } from '../quantity/seededRandom'

const random = seededRandom(63)
const between = (low: number, high: number): number => low + (high - low) * random()
const sum = (list: readonly number[]): number => list.reduce((total, x) => total + x, 0)

describe('a diamond of square knots', () => {
  const net = (strands: readonly number[]): DiamondNet => {
    const found = diamondNet({ strands: strands.map(newtons), spacing: metres(0.07), rowDistance: metres(0.05) })
    if (!found.ok) throw new Error(found.reason)
    return found
  }

  test.each([1, 2, 3, 5])('of %d knots at its widest: rows up and down again, all weight goes through, mirrored strands mirror it', (widest) => {
    const strands = Array.from({ length: strandsForDiamond(widest) }, () => between(0, 9))
    const { rows, below, tension } = net(strands)
    expect(rows.map((row) => row.length)).toEqual(Array.from({ length: 2 * widest - 1 }, (_, i) => Math.min(i + 1, 2 * widest - 1 - i)))
    expect(sum(below)).toBeCloseTo(sum(strands), 10)
    // The widest row takes up every strand.
    expect(sum(rows[widest - 1] ?? [])).toBeCloseTo(sum(strands), 10)
    const mirror = net([...strands].reverse())
    rows.forEach((row, i) => [...row].reverse().forEach((load, j) => expect(mirror.rows[i]?.[j]).toBeCloseTo(load, 10)))
    expect(mirror.tension).toBeCloseTo(tension, 10)
  })

  test('equal strands stay equal, so each knot passes on four of them', () => {
    const { rows, below, inclination, tension } = net(new Array<number>(12).fill(2.3))
    for (const load of rows.flat()) expect(load).toBeCloseTo(9.2, 12)
    for (const pull of below) expect(pull).toBeCloseTo(2.3, 12)
    expect(Math.tan(inclination)).toBeCloseTo(0.7, 12)
    expect(tension).toBeCloseTo(2.3 * Math.hypot(1, 0.7), 12)
  })

  test('of a single knot has no strands between rows to pull on', () => {
    expect(net([3, 1, 4, 6])).toMatchObject({ rows: [[14]], below: [3.5, 3.5, 3.5, 3.5], tension: 0 })
  })

  test('is refused where strands are not four for each knot or rows have no distance', () => {
    for (const count of [0, 3, 6]) expect(diamondNet({ strands: new Array<number>(count).fill(1).map(newtons), spacing: metres(0.07), rowDistance: metres(0.05) })).toEqual({ ok: false, reason: 'notInFours' })
    expect(diamondNet({ strands: [1, 2, 3, 4].map(newtons), spacing: metres(0.07), rowDistance: metres(0) })).toEqual({ ok: false, reason: 'noRowDistance' })
  })
})

describe('the knot under an upper pot', () => {
  const knot = (input: DrawnKnotInput): DrawnKnot => {
    const found = drawnKnot(input)
    if (!found.ok) throw new Error(`needs ${found.least}`)
    return found
  }
  const anyPot = (friction: number): DrawnKnotInput => {
    const [base, height] = [between(0.04, 0.1), between(0.1, 0.2)]
    const leave = base * between(1, 1.5)
    const side = Math.hypot(leave - base, height)
    return { strands: 4, own: newtons(between(10, 90)), lower: newtons(between(3, 90)), leaveRadius: metres(leave), baseRadius: metres(base), side: metres(side), strand: metres(side + base + leave + between(0.15, 1)), friction }
  }

  test('is in balance with pot and strands, and keeps the strands’ length', () => {
    for (let i = 0; i < 100; i++) {
      const input = anyPot(i % 2 === 0 ? 0 : between(-0.2, 0.2))
      const { angleAbove, angleBelow, tensionAbove, tensionBelow, drawn } = knot(input)
      expect(4 * tensionBelow * Math.cos(angleBelow)).toBeCloseTo(input.lower, 8)
      expect(4 * tensionAbove * Math.cos(angleAbove) - 4 * tensionBelow * Math.cos(angleBelow)).toBeCloseTo(input.own, 8)
      expect(tensionBelow).toBeCloseTo(tensionAbove * Math.exp(input.friction * (angleAbove + angleBelow)), 9)
      expect(input.leaveRadius / Math.sin(angleAbove) + input.side + Math.hypot(input.baseRadius, drawn)).toBeCloseTo(input.strand, 10)
    }
  })

  test('is steeper the more hangs from it, and flatter the more friction holds against being drawn down', () => {
    const pot = { ...anyPot(0), own: newtons(50) }
    const below = [2, 20, 80].map((lower) => knot({ ...pot, lower: newtons(lower) }).angleBelow)
    expect(below[0]).toBeGreaterThan(below[1] ?? 0)
    expect(below[1]).toBeGreaterThan(below[2] ?? 0)
    const [steep, free, flat] = [-0.2, 0, 0.2].map((friction) => knot({ ...pot, lower: newtons(30), friction }))
    expect(steep?.angleBelow).toBeLessThan(free?.angleBelow ?? 0)
    expect(free?.angleBelow).toBeLessThan(flat?.angleBelow ?? 0)
    expect(steep?.tensionBelow).toBeLessThan(free?.tensionBelow ?? 0)
    expect(free?.tensionBelow).toBeLessThan(flat?.tensionBelow ?? 0)
  })

  test('with nothing below it is the single pot’s, with nothing above and no friction the strands run straight on', () => {
    const pot: DrawnKnotInput = { ...anyPot(0), leaveRadius: metres(0.11), baseRadius: metres(0.07), side: metres(Math.hypot(0.04, 0.17)), strand: metres(0.94) }
    const single = tautPath({ profile: [{ r: 0.07, z: 0 }, { r: 0.11, z: 0.17 }], upper: ON_AXIS, strand: metres(0.94) })
    if (!single.ok) throw new Error(`needs ${single.least}`)
    const alone = knot({ ...pot, lower: newtons(0) })
    expect(alone.angleAbove).toBeCloseTo(single.angle, 12)
    expect(alone.turn).toBeCloseTo(single.turn, 12)
    expect(alone).toMatchObject({ drawn: 0, angleBelow: Math.PI / 2, held: expect.closeTo(4 * alone.tensionAbove, 10) as number })
    expect(knot({ ...pot, lower: newtons(1e-9) }).angleBelow).toBeCloseTo(Math.PI / 2, 8)
    const bare = knot({ ...pot, own: newtons(0) })
    expect(bare.angleBelow).toBeCloseTo(bare.angleAbove, 12)
  })

  test('has no answer where the strand is too short to reach round', () => {
    const pot = { ...anyPot(0), leaveRadius: metres(0.11), baseRadius: metres(0.07), side: metres(0.2) }
    expect(drawnKnot({ ...pot, strand: metres(0.38) })).toEqual({ ok: false, reason: 'strandTooShort', least: expect.closeTo(0.38, 12) as number })
    expect(knot({ ...pot, strand: metres(0.381) }).angleAbove).toBeGreaterThan(1)
  })
})
