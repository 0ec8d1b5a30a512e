import { describe, expect, test } from 'vitest'
import { metres, newtons } from '../../../src/quantity/si'
import { solveBeam, type Beam, type BeamInput } from '../../../src/statics/beam'
import { railShare, sharedLoad, type RailShare } from '../../../src/statics/railShare'
import { seededRandom } from '../quantity/seededRandom'
import { randomStick } from './randomStick'

const random = seededRandom(1234)
const RAILS = Array.from({ length: 25 }, () => randomStick(random))

function solved(input: BeamInput): Beam {
  const beam = solveBeam(input)
  if (!beam.ok) throw new Error(beam.reason)
  return beam
}

function shared(input: BeamInput): RailShare {
  const rail = railShare(input)
  if (!rail.ok) throw new Error(rail.reason)
  return rail
}

/** Every choice of hangers left on the rail, solved one by one. */
function everyChoice(input: BeamInput): readonly Beam[] {
  return Array.from({ length: 2 ** input.loads.length }, (_, bits) => solved({ ...input, loads: input.loads.filter((_load, i) => (bits >> i) & 1) }))
}

describe('several hangers on one rail', () => {
  test('together load it as one stick', () => {
    for (const input of RAILS) shared(input).shares.forEach(({ together }, i) => expect(together).toBeCloseTo(solved(input).reactions[i]!, 9))
  })

  test('worst of all choices of hangers, tried one by one', () => {
    for (const input of RAILS) {
      const { shares, sagging, hogging } = shared(input)
      const choices = everyChoice(input)
      shares.forEach(({ most, least }, i) => {
        expect(most).toBeCloseTo(Math.max(...choices.map((beam) => beam.reactions[i]!)), 9)
        expect(least).toBeCloseTo(Math.min(...choices.map((beam) => beam.reactions[i]!)), 9)
      })
      expect(sagging.moment).toBeCloseTo(Math.max(...choices.map((beam) => beam.sagging.moment)), 9)
      expect(hogging.moment).toBeCloseTo(Math.min(...choices.map((beam) => beam.hogging.moment)), 9)
    }
  })

  test('an empty rail bears nothing; one held in a single place has no answer', () => {
    const [input] = RAILS
    expect(shared({ ...input!, loads: [] }).shares[0]).toEqual({ together: 0, most: 0, least: 0 })
    expect(railShare({ ...input!, supports: [metres(0.1), metres(0.1)] })).toEqual({ ok: false, reason: 'supportsCoincide' })
    expect(railShare({ ...input!, supports: [metres(0.1), metres(0.1)], loads: [] })).toEqual({ ok: false, reason: 'supportsCoincide' })
    expect(railShare({ ...input!, loads: [{ at: metres(9), force: newtons(4) }] })).toEqual({ ok: false, reason: 'offStick', at: 9 })
  })
})

describe('several fixings behind one part', () => {
  test('count as the two that bear first, or as the one there is', () => {
    expect([1, 2, 3, 6].map((n) => sharedLoad(newtons(84), n, 2))).toEqual([84, 42, 42, 42])
    expect(sharedLoad(newtons(84), 6, 6)).toBe(14)
  })
})
