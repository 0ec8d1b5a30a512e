import { describe, expect, test } from 'vitest'
import { metres, newtons } from '../../../src/quantity/si'
import { solveBeam, type Beam, type BeamInput } from '../../../src/statics/beam'
import { largestSag, sagAt } from '../../../src/statics/deflection'
import { seededRandom } from '../quantity/seededRandom'
import { mirrored, randomStick } from './randomStick'

const random = seededRandom(71)
const STICKS = Array.from({ length: 40 }, () => randomStick(random))

function solved(input: BeamInput): Beam {
  const beam = solveBeam(input)
  if (!beam.ok) throw new Error(beam.reason)
  return beam
}

describe('sag of any stick', () => {
  test('is nothing at the supports', () => {
    for (const input of STICKS) sagAt(solved(input), 50, input.supports).forEach((sag) => expect(sag).toBeCloseTo(0, 12))
  })

  test('is nowhere larger than the largest told', () => {
    for (const input of STICKS) {
      const beam = solved(input)
      const { at, sag } = largestSag(beam, 50)
      expect(sagAt(beam, 50, [at])[0]).toBeCloseTo(sag, 14)
      const places = Array.from({ length: 2001 }, (_, i) => metres((i / 2000) * input.length))
      const most = Math.max(...sagAt(beam, 50, places).map(Math.abs))
      expect(most).toBeLessThanOrEqual(Math.abs(sag) * (1 + 1e-12))
      expect(most).toBeGreaterThan(Math.abs(sag) * (1 - 1e-4))
    }
  })

  test('is the same from behind, and half with twice the stiffness', () => {
    for (const input of STICKS) {
      const { at, sag } = largestSag(solved(input), 50)
      const behind = largestSag(solved(mirrored(input)), 100)
      expect(2 * behind.sag).toBeCloseTo(sag, 10)
      expect(behind.at).toBeCloseTo(input.length - at, 6)
    }
  })

  test('at x of a load at y is that at y of the load at x (Maxwell)', () => {
    const stick = (at: number): Beam => solved({ length: metres(0.9), supports: [metres(0.12), metres(0.71)], loads: [{ at: metres(at), force: newtons(23) }], heldDown: true })
    expect(sagAt(stick(0.05), 50, [metres(0.41)])[0]).toBeCloseTo(sagAt(stick(0.41), 50, [metres(0.05)])[0]!, 14)
  })
})
