import { describe, expect, test } from 'vitest'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'
import { FIBRE_PROPERTIES } from '../../../../src/catalogue/cords'
import { edgeSlip, leastLever } from '../../../../src/check/links/seat/edgeSlip'
import type { Patch } from '#core'

const FRICTION = FIBRE_PROPERTIES.cotton.onPot.value
const SQUARE = { ...ORDINARY, 'pot.shape': 'square' } as const
const TROUGH = { ...ORDINARY, 'pot.shape': 'trough', 'pot.rim': '140 mm', 'pot.base': '110 mm', 'pot.length': '420 mm', 'make.totalLength': '180 cm' } as const
const solvedOf = (patch: Patch) => checkOf(patch).solved
const anglesOf = (patch: Patch): readonly number[] => solvedOf(patch).geometry.legs.map(({ angle }) => angle)

/** How far round from the middle of the side it lies on, of a square pot. */
const fromMiddle = (angle: number): number => Math.min(...[0, 1, 2, 3, 4].map((quarter) => Math.abs(angle - (quarter * Math.PI) / 2)))

describe('strands over a straight edge', () => {
  test('stay in the middle of their sides, and slip from corners whose angle asks for more than friction', () => {
    expect(Math.tan(Math.PI / 4)).toBeGreaterThan(FRICTION)
    expect(edgeSlip(solvedOf({ ...SQUARE, 'pot.strandsAt': 'corners' }))).toEqual({ legs: [1, 2, 3, 4], atCorners: true })
    expect(edgeSlip(solvedOf({ ...SQUARE, 'pot.strandsAt': 'sides' }))).toBeNull()
  })

  test.each(['3', '5', '6', '7'])('of %s legs on a square pot those slip that need more friction than there is', (legs) => {
    const patch = { ...SQUARE, 'make.legs': legs }
    const slipping = anglesOf(patch).flatMap((angle, i) => (Math.tan(fromMiddle(angle)) > FRICTION ? [i + 1] : []))
    expect(edgeSlip(solvedOf(patch))?.legs ?? []).toEqual(slipping)
    if (slipping.length > 0) expect(edgeSlip(solvedOf(patch))?.atCorners).toBe(false)
  })

  test('slip from the corners of a trough by the worse of its two sides', () => {
    expect(edgeSlip(solvedOf(TROUGH))).toEqual({ legs: [1, 2, 3, 4], atCorners: true })
  })

  test('slip from the corners of a trough so long that along its ends alone they would stay', () => {
    const long = { ...TROUGH, 'pot.length': '700 mm', 'make.totalLength': '260 cm' } as const
    const rim = solvedOf(long).geometry.outline.pot.at(-1)
    expect((rim?.across ?? NaN) / (rim?.along ?? NaN)).toBeLessThan(FRICTION)
    expect(edgeSlip(solvedOf(long))).toEqual({ legs: [1, 2, 3, 4], atCorners: true })
  })

  test('are not said to lie on the corners where some slip elsewhere', () => {
    // Twelve legs every 30 degrees round a trough whose corners stand at 30 degrees.
    const twelve = edgeSlip(solvedOf({ ...TROUGH, 'pot.rim': '150 mm', 'pot.length': `${150 * Math.sqrt(3)} mm`, 'make.legs': '12' }))
    expect(twelve?.legs).toEqual([2, 3, 5, 6, 8, 9, 11, 12])
    expect(twelve?.atCorners).toBe(false)
  })

  test('do not slip round a pot without edges', () => {
    expect(edgeSlip(solvedOf(ORDINARY))).toBeNull()
  })
})

describe('the lever of the strands', () => {
  test('of a round pot is as it was told', () => {
    expect(leastLever(solvedOf(ORDINARY), 0.083)).toBe(0.083)
  })

  test('of a trough is across it, of a square at its sides the distance to them', () => {
    const { geometry } = solvedOf(TROUGH)
    const across = Math.max(...geometry.legs.map(({ angle, path }) => Math.abs(path.leave.r * Math.sin(angle))))
    const along = Math.max(...geometry.legs.map(({ angle, path }) => Math.abs(path.leave.r * Math.cos(angle))))
    expect(along).toBeGreaterThan(2 * across)
    expect(leastLever(solvedOf(TROUGH), 1)).toBeCloseTo(across, 12)
    const sides = solvedOf({ ...SQUARE, 'pot.strandsAt': 'sides' })
    expect(leastLever(sides, 1)).toBeCloseTo(sides.geometry.legs[0]?.path.leave.r ?? NaN, 9)
  })
})
