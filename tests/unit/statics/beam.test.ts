import { describe, expect, test } from 'vitest'
import { metres, newtons } from '../../../src/quantity/si'
import { momentAt, solveBeam, type Beam, type BeamInput } from '../../../src/statics/beam'
import { seededRandom } from '../quantity/seededRandom'
import { mirrored, randomStick } from './randomStick'

const random = seededRandom(305)
const STICKS = Array.from({ length: 60 }, () => randomStick(random))

function solved(input: BeamInput): Beam {
  const beam = solveBeam(input)
  if (!beam.ok) throw new Error(beam.reason)
  return beam
}

const OVERHUNG: BeamInput = { length: metres(0.7), supports: [metres(0.25), metres(0.6)], loads: [{ at: metres(0.05), force: newtons(35) }, { at: metres(0.4), force: newtons(14) }], heldDown: false }

describe('any stick', () => {
  test('is in balance: forces, and moments about a point of no account', () => {
    for (const input of STICKS) {
      const { forces, reactions } = solved(input)
      const total = input.loads.reduce((sum, { force }) => sum + force, 0)
      expect(reactions[0] + reactions[1]).toBeCloseTo(total, 9)
      expect(forces.reduce((sum, { at, force }) => sum + force * (at - 0.137), 0)).toBeCloseTo(0, 9)
      expect(momentAt(forces, input.length)).toBeCloseTo(0, 9)
    }
  })

  test('bends and shears nowhere more than at the peaks told', () => {
    for (const input of STICKS) {
      const { forces, sagging, hogging, shear } = solved(input)
      expect(momentAt(forces, sagging.at)).toBeCloseTo(sagging.moment, 12)
      expect(momentAt(forces, hogging.at)).toBeCloseTo(hogging.moment, 12)
      for (let i = 0; i <= 500; i++) {
        const x = metres((i / 500) * input.length)
        const moment = momentAt(forces, x)
        expect(moment).toBeLessThanOrEqual(sagging.moment + 1e-9)
        expect(moment).toBeGreaterThanOrEqual(hogging.moment - 1e-9)
        expect(Math.abs(forces.reduce((sum, f) => sum + (f.at <= x ? f.force : 0), 0))).toBeLessThanOrEqual(Math.abs(shear.force) + 1e-9)
      }
    }
  })

  test('is the same from behind', () => {
    for (const input of STICKS) {
      const [front, behind] = [solved(input), solved(mirrored(input))]
      behind.reactions.forEach((r, i) => expect(r).toBeCloseTo(front.reactions[i]!, 9))
      expect(behind.sagging.moment).toBeCloseTo(front.sagging.moment, 9)
      expect(behind.hogging.moment).toBeCloseTo(front.hogging.moment, 9)
      expect(Math.abs(behind.shear.force)).toBeCloseTo(Math.abs(front.shear.force), 9)
    }
  })

  test('bears three times the load with three times the force and moment, and on twice the length twice the moment', () => {
    for (const input of STICKS) {
      const once = solved(input)
      const grown = solved({ length: metres(2 * input.length), supports: [metres(2 * input.supports[0]), metres(2 * input.supports[1])], loads: input.loads.map(({ at, force }) => ({ at: metres(2 * at), force: newtons(3 * force) })), heldDown: true })
      expect(grown.reactions[1]).toBeCloseTo(3 * once.reactions[1], 9)
      expect(grown.sagging.moment).toBeCloseTo(6 * once.sagging.moment, 9)
      expect(grown.shear.force).toBeCloseTo(3 * once.shear.force, 9)
    }
  })
})

describe('a stick that only rests', () => {
  test('lifts where an overhanging load is too much, saying which support and by how much', () => {
    // 35 N 0.2 m left of the first support; 14 N 0.15 m right of it: (35 * 0.2 - 14 * 0.15) / 0.35 too much.
    expect(solveBeam(OVERHUNG)).toEqual({ ok: false, reason: 'lifts', support: 1, holdDown: expect.closeTo(14, 12) as number })
    expect(solveBeam({ ...OVERHUNG, supports: [metres(0.6), metres(0.25)] })).toMatchObject({ reason: 'lifts', support: 0 })
    expect(solved({ ...OVERHUNG, heldDown: true }).reactions[1]).toBeCloseTo(-14, 12)
  })

  test('stays with a load straight over one support, or where the last is not quite lifted', () => {
    expect(solved({ ...OVERHUNG, loads: [{ at: metres(0.25), force: newtons(61.3) }] }).reactions).toEqual([expect.closeTo(61.3, 12), expect.closeTo(0, 12)])
    const balanced = (extra: number): BeamInput => ({ ...OVERHUNG, loads: [{ at: metres(0.05), force: newtons(30) }, { at: metres(0.45), force: newtons(30 + extra) }] })
    expect(solveBeam(balanced(0.001)).ok).toBe(true)
    expect(solveBeam(balanced(-0.001)).ok).toBe(false)
  })

  test('is not lifted by rounding: two even loads just balance about one support', () => {
    const pair = [0.07, 0.49].map((at) => ({ at: metres(at), force: newtons(24.5) }))
    expect(solved({ length: metres(0.6), supports: [metres(0.28), metres(0.53)], loads: pair, heldDown: false }).reactions[1]).toBeCloseTo(0, 12)
  })

  test('has no answer on supports in one place, or off the stick', () => {
    expect(solveBeam({ ...OVERHUNG, supports: [metres(0.3), metres(0.3)] })).toEqual({ ok: false, reason: 'supportsCoincide' })
    expect(solveBeam({ ...OVERHUNG, supports: [metres(0.3), metres(0.71)] })).toEqual({ ok: false, reason: 'offStick', at: 0.71 })
    expect(solveBeam({ ...OVERHUNG, loads: [{ at: metres(-0.01), force: newtons(5) }] })).toEqual({ ok: false, reason: 'offStick', at: -0.01 })
  })

  test('without loads bears nothing', () => {
    expect(solved({ ...OVERHUNG, loads: [] })).toMatchObject({ reactions: [0, 0], shear: { force: 0 }, sagging: { moment: 0 }, hogging: { moment: 0 } })
  })

  test('is not sheared between forces in one place', () => {
    const beam = solved({ ...OVERHUNG, loads: [{ at: metres(0.25), force: newtons(500) }, { at: metres(0.425), force: newtons(12) }] })
    expect(Math.abs(beam.shear.force)).toBeCloseTo(6, 10)
  })
})
