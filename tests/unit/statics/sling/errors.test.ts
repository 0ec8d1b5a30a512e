import { describe, expect, it } from 'vitest'
import type { SlingErrorCode, SlingInput, Vec3 } from '../../../../src/statics/sling/result'
import { solveSling } from '../../../../src/statics/sling/solveSling'

const good: SlingInput = {
  A: [[0.02, 0, 1], [-0.01, 0.02, 1], [-0.01, -0.02, 1]],
  B: [[0.1, 0, 0.15], [-0.06, 0.09, 0.15], [-0.05, -0.08, 0.15]],
  L0: [0.7, 0.71, 0.7], EA: [2900, 2900, 2500], mass: 5, cg: [0, 0, 0.08], ell: 0.1, gravity: 9.80665, wall: null,
}
const wall = { n: [0, 1, 0] as Vec3, d: 0.2, contacts: [{ type: 'circle' as const, z: 0.1, r: 0.1 }] }
const one: Vec3 = [0.1, 0, 0.15]

const bad: readonly (readonly [SlingErrorCode, string, Partial<SlingInput>])[] = [
  ['TOO_FEW_LEGS', 'none', { A: [], B: [], L0: [], EA: [] }],
  ['TOO_FEW_LEGS', 'two', { A: good.A.slice(1), B: good.B.slice(1), L0: good.L0.slice(1), EA: good.EA.slice(1) }],
  ['NOT_FINITE', 'a length is missing', { L0: [0.7, 0.7] }],
  ['NOT_FINITE', 'a coordinate is not a number', { B: [[NaN, 0, 0.15], ...good.B.slice(1)] }],
  ['NOT_FINITE', 'a coordinate is missing', { A: [[0, 1] as unknown as Vec3, ...good.A.slice(1)] }],
  ['NOT_FINITE', 'an infinite stiffness', { EA: [2900, Infinity, 2900] }],
  ['NOT_FINITE', 'mass', { mass: NaN }],
  ['NOT_FINITE', 'gravity', { gravity: Infinity }],
  ['NOT_FINITE', 'centre of gravity', { cg: [0, -Infinity, 0] }],
  ['NOT_FINITE', 'wall', { wall: { ...wall, d: NaN } }],
  ['NOT_FINITE', 'contact', { wall: { ...wall, contacts: [{ type: 'circle', z: 0, r: Infinity }] } }],
  ['BAD_MASS', 'nothing', { mass: 0 }],
  ['BAD_MASS', 'less than nothing', { mass: -4 }],
  ['BAD_MASS', 'weightless', { gravity: 0 }],
  ['BAD_LENGTH', 'a leg of no length', { L0: [0.7, 0, 0.7] }],
  ['BAD_LENGTH', 'scale', { ell: 0 }],
  ['BAD_LENGTH', 'a wall without direction', { wall: { ...wall, n: [0, 0, 0] } }],
  ['BAD_LENGTH', 'a negative radius', { wall: { ...wall, contacts: [{ type: 'circle', z: 0, r: -0.1 }] } }],
  ['ZERO_STIFFNESS', 'none', { EA: [2900, 0, 2900] }],
  ['ZERO_STIFFNESS', 'negative', { EA: [2900, -1, 2900] }],
  ['ATTACHMENTS_COINCIDE', 'one point', { B: [one, one, one] }],
  ['ATTACHMENTS_COLLINEAR', 'one line', { B: [one, [0, 0.05, 0.2], [-0.1, 0.1, 0.25]] }],
  ['UNREACHABLE', 'legs too short for the ring', { A: [[5, 0, 1], ...good.A.slice(1)] }],
]

describe('solveSling refuses', () => {
  it.each(bad)('%s: %s', (error, _, change) => {
    expect(solveSling({ ...good, ...change })).toEqual({ status: 'ERROR', error })
  })

  it('nothing of a good hanger, with or without a wall', () => {
    expect(solveSling(good).status).toBe('OK')
    expect(solveSling({ ...good, wall }).status).toBe('OK')
    expect(solveSling({ ...good, wall: { ...wall, contacts: [] } }).status).toBe('OK')
  })
})

describe('solveSling answers huge and small numbers with numbers', () => {
  const scale = (v: Vec3, s: number): Vec3 => [v[0] * s, v[1] * s, v[2] * s]
  const scaled = (s: number, force: number): SlingInput => ({
    ...good, A: good.A.map((v) => scale(v, s)), B: good.B.map((v) => scale(v, s)), L0: good.L0.map((l) => l * s), cg: scale(good.cg, s), ell: good.ell * s,
    mass: good.mass * force, EA: good.EA.map((e) => e * force),
  })
  const nasty: readonly (readonly [string, SlingInput])[] = [
    ['a hanger of micrometres', scaled(1e-6, 1)], ['a hanger of kilometres', scaled(1e3, 1)],
    ['a featherweight', scaled(1, 1e-9)], ['a giant', scaled(1, 1e12)],
    ['lengths near overflow', scaled(1e200, 1)], ['lengths near underflow', scaled(1e-200, 1)],
    ['forces near overflow', scaled(1, 1e303)], ['legs of steel bars', { ...good, EA: [1e12, 1e12, 1e12] }],
    ['legs of rubber', { ...good, EA: [5, 5, 5] }], ['legs of nothing much', { ...good, EA: [1e-9, 1e-9, 1e-9] }],
    ['one stiff leg', { ...good, EA: [1, 1e9, 1] }], ['a centre of gravity far off', { ...good, cg: [50, 0, 0] }],
    ['a long leg', { ...good, L0: [1e6, 0.7, 0.7] }], ['far from the origin', { ...good, A: good.A.map(([x, y, z]): Vec3 => [x + 1e5, y, z - 1e5]) }],
    ['ell too small', { ...good, ell: 1e-7 }], ['ell too large', { ...good, ell: 1e7 }],
    ['hanging upside down', { ...good, cg: [0, 0, 30] }], ['inside the wall', { ...good, wall: { ...wall, d: -3 } }],
  ]
  const numbers = (value: unknown): number[] => (typeof value === 'number' ? [value] : typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbers) : [])

  it.each(nasty)('%s', (_, input) => {
    const result = solveSling(input)
    expect(numbers(result).every(Number.isFinite)).toBe(true)
    if ('T' in result) expect(result.residualRel).toBeLessThan(1e-6)
  })

  it.each(nasty)('%s: after a counted number of steps', (_, input) => {
    const result = solveSling(input)
    if ('iterations' in result) expect(result.iterations).toBeLessThan(12_000)
    if (result.status === 'NOT_CONVERGED') expect(['STEPS', 'WALL', 'NUMBERS']).toContain(result.reason)
  })

  it('all legs on one side: the pot tips until they are above its centre of gravity', () => {
    const result = solveSling({ ...good, B: [[0.1, 0, 0.15], [0.08, 0.05, 0.15], [0.08, -0.05, 0.15]] })
    if (!('T' in result)) throw new Error(result.status)
    expect(result.tiltRadians).toBeGreaterThan(0.5)
    expect(result.cg[0]).toBeCloseTo(0, 1)
    expect(result.residualRel).toBeLessThan(1e-9)
  })

  it('gives the same answer at every size that can be computed with', () => {
    const plain = solveSling(good)
    for (const [s, force] of [[1e-6, 1], [1e3, 1], [1, 1e-9], [1, 1e12]] as const) {
      const other = solveSling(scaled(s, force))
      if (plain.status !== 'OK' || other.status !== 'OK') throw new Error(`${plain.status} ${other.status}`)
      other.T.forEach((T, i) => expect(T / force / plain.T[i]!).toBeCloseTo(1, 8))
    }
  })
})
