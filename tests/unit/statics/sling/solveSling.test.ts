import { describe, expect, it } from 'vitest'
import type { Balance, SlingInput, SlingResult, Vec3 } from '../../../../src/statics/sling/result'
import { solveSling } from '../../../../src/statics/sling/solveSling'
import { seededRandom } from '../../quantity/seededRandom'
import { imbalance, length, plus, turned } from './imbalance'
import { randomHanger } from './randomHanger'

const hangers = (count: number, seed: number, leaning: boolean): SlingInput[] => {
  const random = seededRandom(seed)
  return Array.from({ length: count }, () => randomHanger(random, leaning))
}
const balanceOf = (result: SlingResult): Balance | null => ('T' in result ? result : result.status === 'UNSTABLE' ? result.upright : null)
const total = (list: readonly number[]): number => list.reduce((sum, x) => sum + x, 0)

function expectElastic({ A, B, L0, EA, cg }: SlingInput, balance: Balance): void {
  A.forEach((top, i) => {
    const l = length(plus(top, plus(balance.cg, turned(balance, plus(B[i]!, cg, -1)), 1), -1))
    expect(Math.abs(balance.T[i]! - EA[i]! * Math.max(0, l / L0[i]! - 1))).toBeLessThan(1e-8)
  })
}

describe.each([['free', false, 1000, 0], ['leaning on a wall', true, 500, 0]] as const)('random hangers, %s', (_, leaning, count, mostLost) => {
  const inputs = hangers(count, 29, leaning)
  const results = inputs.map(solveSling)

  it(`are in balance by forces and moments computed anew; not converged: ${mostLost}`, () => {
    expect(results.filter(({ status }) => status === 'NOT_CONVERGED')).toHaveLength(mostLost)
    let checked = 0
    results.forEach((result, i) => {
      const balance = balanceOf(result)
      if (balance === null) return
      checked++
      expect(imbalance(inputs[i]!, balance)).toBeLessThanOrEqual(1e-9)
      expectElastic(inputs[i]!, balance)
    })
    expect(checked).toBeGreaterThan(0.9 * count)
  })

  it('are of every kind', () => {
    const kinds = new Set(results.map(({ status }) => status))
    for (const status of ['OK', 'OK_WITH_SLACK', 'OK_NEUTRAL_TWIST', 'LOST_SUPPORT']) expect(kinds).toContain(status)
    if (leaning) expect(results.some((result) => 'wallN' in result && result.wallN.filter((N) => N > 0).length === 2)).toBe(true)
  })

  it('answer alike in mirror image, turned about the vertical, and enlarged', () => {
    const mirror = ([x, y, z]: Vec3): Vec3 => [-x, y, z]
    const [c, s] = [Math.cos(0.7), Math.sin(0.7)]
    const turn = ([x, y, z]: Vec3): Vec3 => [c * x - s * y, s * x + c * y, z]
    const enlarge = ([x, y, z]: Vec3): Vec3 => [3 * x, 3 * y, 3 * z]
    const by = (input: SlingInput, map: (v: Vec3) => Vec3): SlingInput => ({
      ...input, A: input.A.map(map), B: input.B.map(map), cg: map(input.cg), wall: input.wall && { ...input.wall, n: map(input.wall.n) },
    })
    inputs.slice(0, 150).forEach((input, i) => {
      const plain = results[i]!
      if (!('T' in plain)) return
      const large = by(input, enlarge)
      const others = [
        by(input, mirror), by(input, turn),
        { ...large, L0: input.L0.map((l) => 3 * l), ell: 3 * input.ell, wall: input.wall && { n: input.wall.n, d: 0, contacts: input.wall.contacts.map((one) => (one.type === 'circle' ? { ...one, z: 3 * one.z, r: 3 * one.r } : one)) } },
        { ...input, mass: 7 * input.mass, EA: input.EA.map((EA) => 7 * EA) },
      ]
      others.forEach((other, kind) => {
        const result = solveSling(other)
        if (!('T' in result)) throw new Error(result.status)
        expect(result.status).toBe(plain.status)
        expect(result.tiltRadians).toBeCloseTo(plain.tiltRadians, 7)
        result.T.forEach((T, j) => expect(Math.abs(T / (kind === 3 ? 7 : 1) - plain.T[j]!) / (input.mass * input.gravity)).toBeLessThan(1e-7))
      })
    })
  })

  it('carry more in all when the pot is heavier', () => {
    let compared = 0
    inputs.slice(0, 300).forEach((input, i) => {
      const plain = results[i]!
      const heavier = solveSling({ ...input, mass: 1.3 * input.mass })
      if (!plain.status.startsWith('OK') || !heavier.status.startsWith('OK') || !('T' in plain) || !('T' in heavier)) return
      compared++
      expect(total(heavier.T)).toBeGreaterThan(1.1 * total(plain.T))
    })
    expect(compared).toBeGreaterThan(150)
  })

  it('do not depend on what was solved before', () => {
    inputs.slice(0, 60).forEach((input, i) => expect(solveSling(input)).toEqual(results[i]))
  })
})

describe('solveSling at a wall', () => {
  const leaning = hangers(200, 31, true)
  const free = (input: SlingInput): SlingInput => ({ ...input, wall: null })

  it('takes no notice of a wall out of reach', () => {
    for (const input of leaning.slice(0, 60)) {
      const far = solveSling({ ...input, wall: { ...input.wall!, d: 5 } })
      const none = solveSling(free(input))
      expect({ ...far, wallN: null }).toEqual({ ...none, wallN: null })
      if ('wallN' in far) expect(far.wallN).toEqual([0, 0])
    }
  })

  it('takes a normal of any length, and a corner for a circle of no radius', () => {
    for (const input of leaning.slice(0, 60)) {
      const at = 0.05
      const points = { ...input, wall: { n: [0, 1, 0] as const, d: -0.02, contacts: [{ type: 'circle' as const, z: at, r: 0 }] } }
      const corner = { ...input, wall: { n: [0, 4, 0] as const, d: -0.08, contacts: [{ type: 'corner' as const, at: [0, 0, at] as const }] } }
      expect(solveSling(corner)).toEqual(solveSling(points))
    }
  })

  it('does not mind from where on the pot its places are measured', () => {
    const pot: SlingInput = {
      A: [], B: [], L0: [0.76, 0.76, 0.76, 0.76], EA: [2900, 2900, 2900, 2900], mass: 5, cg: [0.01, 0, 0.08], ell: 0.1, gravity: 9.80665,
      wall: { n: [1, 0, 0], d: 0.05, contacts: [{ type: 'corner', at: [0.09, 0.08, 0.02] }, { type: 'corner', at: [0.09, -0.07, 0.03] }] },
    }
    const square: readonly Vec3[] = [[0.08, 0.08, 0.2], [-0.08, 0.08, 0.2], [-0.08, -0.08, 0.2], [0.08, -0.08, 0.2]]
    const from = (by: Vec3): SlingResult => solveSling({
      ...pot, A: square.map(([x, y]) => [x / 2, y / 2, 1] as const), B: square.map((b) => plus(b, by, 1)), cg: plus(pot.cg, by, 1),
      wall: { ...pot.wall!, contacts: pot.wall!.contacts.map((contact) => (contact.type === 'corner' ? { ...contact, at: plus(contact.at, by, 1) } : contact)) },
    })
    const [here, there] = [from([0, 0, 0]), from([0.3, -0.2, 0.5])]
    if (!('wallN' in here) || !('wallN' in there)) throw new Error(`${here.status} ${there.status}`)
    expect(total(here.wallN)).toBeGreaterThan(0.5)
    here.wallN.forEach((force, i) => expect(there.wallN[i]).toBeCloseTo(force, 7))
    here.T.forEach((force, i) => expect(there.T[i]).toBeCloseTo(force, 7))
  })

  it('feels no more than one push where two contacts are the same, however they share it', () => {
    const [base] = leaning.filter((input) => { const result = solveSling(input); return result.status.startsWith('OK') && 'wallN' in result && result.wallN[0]! > 1 && result.wallN[1] === 0 })
    const wall = base!.wall!
    const twice = solveSling({ ...base!, wall: { ...wall, contacts: [wall.contacts[0]!, ...wall.contacts] } })
    const once = solveSling(base!)
    if (!('wallN' in once) || !('wallN' in twice)) throw new Error(`${once.status} ${twice.status}`)
    expect(total(twice.wallN)).toBeCloseTo(total(once.wallN), 7)
    expect(twice.eigenvalues).toHaveLength(5)
    expect(twice.eigMinNonzero / once.eigMinNonzero).toBeCloseTo(1, 6)
  })
})

describe('solveSling on pots that will not stay upright', () => {
  // Three soft vertical legs at a small base ring, the centre of gravity far above.
  const top = (x: number, y: number): Vec3 => [x, y, 1]
  const low = (x: number, y: number): Vec3 => [x, y, 0.005]
  const feet = [[0.02, 0], [-0.01, 0.0173], [-0.01, -0.0173]] as const
  const wobbly = (off: number): SlingInput => ({
    A: feet.map(([x, y]) => top(x, y)), B: feet.map(([x, y]) => low(x, y)), L0: [0.8, 0.8, 0.8], EA: [1500, 1500, 1500],
    mass: 5, cg: [off, 0, 0.12], ell: 0.1, gravity: 9.80665, wall: null,
  })

  it('shows the upright balance, not the place it would fall to', () => {
    const result = solveSling(wobbly(0))
    if (result.status !== 'UNSTABLE' || result.upright === null) throw new Error(result.status)
    expect(result.upright.tiltRadians).toBeLessThan(1e-9)
    expect(result.upright.negative).toBe(2)
    expect(result.stable).toBe(false)
    expect(result.residualRel).toBeLessThan(1e-10)
  })

  it('says so just off the middle too, where the pot slides off at once', () => {
    for (const off of [1e-9, 1e-4, 2e-3, 1e-2]) expect(solveSling(wobbly(off))).toMatchObject({ status: 'UNSTABLE', stable: false })
    expect(solveSling(wobbly(1e-2))).toMatchObject({ upright: null })
  })

  it('stays put when a wall out of reach is given, too', () => {
    const result = solveSling({ ...wobbly(0), wall: { n: [1, 0, 0], d: 4, contacts: [{ type: 'circle', z: 0.2, r: 0.1 }] } })
    expect(result).toMatchObject({ status: 'UNSTABLE', upright: { negative: 2, wallN: [0] } })
  })
})

describe('solveSling on crossed legs', () => {
  // Every leg crosses the axis: the ring above is half a turn out, and the pot would turn round under it.
  const at = (r: number, angle: number, z: number): Vec3 => [r * Math.cos(angle), r * Math.sin(angle), z]
  const crossed = (off: number): SlingInput => ({
    A: [0, 2, 4].map((angle) => at(0.05, angle + Math.PI, 1)), B: [0, 2, 4].map((angle) => at(0.1, angle, 0.2)), L0: [0.7, 0.7, 0.7],
    EA: [2900, 2900, 2900], mass: 5, cg: [off, 0, 0.1], ell: 0.1, gravity: 9.80665, wall: null,
  })

  it('judges the position drawn, whether or not something small starts the turn', () => {
    for (const off of [0, 1e-7, 1e-5]) expect(solveSling(crossed(off))).toMatchObject({ status: 'UNSTABLE', upright: { negative: 1 } })
  })
})

describe('solveSling lets a pot down with care', () => {
  it('finds the rest that long steps would carry it past', () => {
    // A tall pot on very unequal legs: it leans far before the soft ones take hold.
    const result = solveSling({
      A: [[0.073, 0.066, 2.009], [-0.075, 0.063, 2.007], [0.028, -0.094, 2.002], [0.077, -0.061, 2.004]],
      B: [[0.069, 0.062, 0.215], [-0.071, 0.059, 0.218], [0.022, -0.074, 0.231], [0.062, -0.049, 0.217]],
      L0: [0.983, 1.006, 0.979, 0.965], EA: [37510, 832, 16071, 1771], mass: 4, cg: [0.012, 0.018, 0.294], ell: 0.085, gravity: 9.80665, wall: null,
    })
    expect(result).toMatchObject({ status: 'OK_WITH_SLACK', tiltRadians: expect.closeTo(0.4332, 3) as number })
  })

  it('begins again with softer legs where wires hardly give', () => {
    const result = solveSling({
      A: [[-0.067, -0.068, 2.009], [0.09, -0.032, 2.003], [-0.008, 0.095, 2.004]], B: [[-0.039, -0.039, 0.223], [0.049, -0.018, 0.227], [-0.004, 0.047, 0.224]],
      L0: [0.873, 0.917, 0.896], EA: [1202900, 70900, 6913400], mass: 9.7, cg: [-0.007, 0.014, 0.006], ell: 0.052, gravity: 9.80665, wall: null,
    })
    expect(result).toMatchObject({ status: 'LOST_SUPPORT', slack: [false, true, false], stable: true })
  })

  it('begins again from the start where the rest without the wall leads nowhere', () => {
    const result = solveSling({
      A: [[0.021, 0.116, 1.994], [-0.119, 0.037, 2.005], [-0.089, -0.103, 2.008], [0.073, -0.116, 1.999], [0.12, 0.034, 2.009]],
      B: [[0.031, 0.188, 0.037], [-0.171, 0.068, 0.032], [-0.137, -0.143, 0.032], [0.119, -0.173, 0.035], [0.172, 0.064, 0.041]],
      L0: [0.373, 0.373, 0.373, 0.373, 0.373], EA: [6078, 454, 662, 18032, 531], mass: 3.8, cg: [-0.003, -0.02, 0.058], ell: 0.199, gravity: 9.80665,
      wall: { n: [0, 1, 0], d: 0, contacts: [{ type: 'circle', z: 0.047, r: 0.209 }, { type: 'circle', z: 0, r: 0.121 }] },
    })
    expect(result).toMatchObject({ status: 'OK', stable: true })
  })
})

describe('solveSling tells free turning from slack and from looseness', () => {
  const round = (i: number): readonly [number, number] => [Math.cos(2 * i), Math.sin(2 * i)]
  const hooked = (heights: readonly number[], longer: number): SlingInput => ({
    A: heights.map((z): Vec3 => [0.3, -0.1, z]), B: [0, 1, 2].map((i): Vec3 => [0.1 * round(i)[0], 0.1 * round(i)[1], 0.2]),
    L0: heights.map((z, i) => z - 0.4 + (i === 0 ? longer : 0)), EA: [2000, 2500, 3000], mass: 4, cg: [0, 0, 0.1], ell: 0.1, gravity: 9.80665, wall: null,
  })

  it('from one hook, and from several places on one vertical line', () => {
    expect(solveSling(hooked([1, 1, 1], 0))).toMatchObject({ status: 'OK_NEUTRAL_TWIST', zeroIsSymmetry: true, stable: true, negative: 0 })
    expect(solveSling(hooked([1, 1.1, 1.25], 0))).toMatchObject({ status: 'OK_NEUTRAL_TWIST', zeroIsSymmetry: true })
  })

  it('not from a hook and a place beside it', () => {
    const input = hooked([1, 1, 1], 0)
    expect(solveSling({ ...input, A: [[0.33, -0.1, 1], ...input.A.slice(1)] })).toMatchObject({ status: 'OK', zeroIsSymmetry: false })
  })

  it('and puts lost support first', () => {
    expect(solveSling(hooked([1, 1, 1], 0.4))).toMatchObject({ status: 'LOST_SUPPORT', slack: [true, false, false] })
  })
})

describe('a pot on two of four legs, the others slack, in the bent valley of stiff cord', () => {
  // Upper ends a few centimetres apart on a stick, two opposite legs 10 mm short: the soft turn is found among stiff pulls.
  const spread = (L0: readonly number[], EA: number): SlingInput => ({
    A: [[0.03325966, -0.0137766, 0.59248362], [-0.01108655, 0.0045922, 0.59248362], [-0.03325966, 0.0137766, 0.59248362], [0.01108655, -0.0045922, 0.59248362]],
    B: [[0.08, 0, 0.15], [0, 0.08, 0.15], [-0.08, 0, 0.15], [0, -0.08, 0.15]],
    L0, EA: [EA, EA, EA, EA], mass: 1.969437, cg: [0, 0, 0.15649274], ell: 0.08, gravity: 9.80665, wall: null,
  })
  it.each([
    [[0.45515863, 0.449, 0.45515863, 0.449], 3812], [[0.44515863, 0.459, 0.44515863, 0.459], 3812], [[0.44515863, 0.439, 0.44515863, 0.439], 3812], [[0.44515863, 0.439, 0.44515863, 0.439], 200_000],
  ])('comes to rest in few steps: %j m, EA %d N', (L0, EA) => {
    const result = solveSling(spread(L0, EA))
    expect(balanceOf(result)).not.toBeNull()
    expect('iterations' in result ? result.iterations : Infinity).toBeLessThan(400)
  })
})
