import { lusolve, zeros, type Matrix } from 'mathjs'
import { describe, expect, test } from 'vitest'
import { solveBeam, type Beam } from '../../../src/statics/beam'
import { cantileverDroop } from '../../../src/statics/cantilever'
import { armDiagram, beamDiagram, ringDiagram } from '../../../src/statics/diagram'
import { ringBending, ringStretch } from '../../../src/statics/ring'
import { metres, newtons, pascals } from '../../../src/quantity/si'
import { seededRandom } from '../../unit/quantity/seededRandom'

const EI = 41

/** Deflections (downwards, m) at nodes by finite elements: cubic beam elements in a direct stiffness matrix, solved by mathjs; knows nothing of Macaulay. */
function byElements(nodes: readonly number[], supports: readonly number[], loads: ReadonlyMap<number, number>): readonly number[] {
  const size = 2 * nodes.length
  const K = zeros(size, size) as Matrix
  const f = Array.from({ length: size }, () => [0])
  nodes.slice(1).forEach((to, e) => {
    const l = to - (nodes[e] ?? to)
    const c = EI / l ** 3
    const k = [[12, 6 * l, -12, 6 * l], [6 * l, 4 * l * l, -6 * l, 2 * l * l], [-12, -6 * l, 12, -6 * l], [6 * l, 2 * l * l, -6 * l, 4 * l * l]]
    k.forEach((row, i) => { row.forEach((x, j) => { K.set([2 * e + i, 2 * e + j], Number(K.get([2 * e + i, 2 * e + j])) + c * x) }) })
  })
  nodes.forEach((x, i) => { f[2 * i] = [loads.get(x) ?? 0] })
  for (const support of supports) {
    const i = 2 * nodes.indexOf(support)
    for (let j = 0; j < size; j++) { K.set([i, j], 0); K.set([j, i], 0) }
    K.set([i, i], 1)
    f[i] = [0]
  }
  const solved = lusolve(K, f) as unknown as { valueOf: () => number[][] }
  return nodes.map((_, i) => solved.valueOf()[2 * i]?.[0] ?? NaN)
}

function randomBeam(random: () => number): { readonly beam: Beam; readonly nodes: readonly number[]; readonly loads: ReadonlyMap<number, number> } {
  const length = 0.3 + random()
  const supports = [metres(length * 0.3 * random()), metres(length * (0.7 + 0.3 * random()))] as const
  const loads = Array.from({ length: 1 + Math.floor(4 * random()) }, () => ({ at: metres(length * random()), force: newtons(5 + 90 * random()) }))
  const beam = solveBeam({ length: metres(length), supports, loads, heldDown: true })
  if (!beam.ok) throw new Error(beam.reason)
  const nodes = [...new Set([0, ...supports, ...loads.map((load) => load.at), length])].sort((a, b) => a - b)
  return { beam, nodes, loads: new Map(loads.map(({ at, force }) => [at, force])) }
}

describe('the diagrams of a stick', () => {
  test('sag as a stiffness matrix of beam elements says (direct stiffness method; Cook, Finite Element Analysis, 2.3), 40 random sticks', () => {
    const random = seededRandom(611)
    for (let i = 0; i < 40; i++) {
      const { beam, nodes, loads } = randomBeam(random)
      const expected = byElements(nodes, beam.supports, loads)
      const { at, sag } = beamDiagram(beam, EI)
      nodes.forEach((x, n) => { expect(sag?.[at.indexOf(x)] ?? NaN).toBeCloseTo(expected[n] ?? NaN, 9) })
    }
  })

  test('shear is the slope of the bending, and both close at the free ends', () => {
    const random = seededRandom(613)
    for (let i = 0; i < 40; i++) {
      const { beam } = randomBeam(random)
      const { at, shear, moment, sag } = beamDiagram(beam, null)
      expect(sag).toBeNull()
      // Of one length, eight steps between two forces and none between stretches.
      expect([shear.length, moment.length]).toEqual([at.length, at.length])
      expect(at.length).toBe(9 * (new Set([0, ...beam.forces.map((f) => f.at), beam.length]).size - 1))
      at.slice(1).forEach((x, n) => {
        const run = x - (at[n] ?? x)
        if (run > 0) expect(((moment[n + 1] ?? NaN) - (moment[n] ?? NaN)) / run).toBeCloseTo(shear[n] ?? NaN, 6)
      })
      expect(moment[0]).toBe(0)
      expect(moment.at(-1)).toBeCloseTo(0, 9)
    }
  })

  test('a middle load: W L / 4 and W L3 / (48 E I) (Shigley, table A-9)', () => {
    const beam = solveBeam({ length: metres(0.8), supports: [metres(0), metres(0.8)], loads: [{ at: metres(0.4), force: newtons(50) }], heldDown: false })
    if (!beam.ok) throw new Error(beam.reason)
    const { moment, sag, shear } = beamDiagram(beam, EI)
    expect(Math.max(...moment)).toBeCloseTo(10, 12)
    expect(Math.max(...sag ?? [])).toBeCloseTo((50 * 0.8 ** 3) / (48 * EI), 12)
    expect([shear[0], shear.at(-1)]).toEqual([25, -25])
  })
})

test('the diagram of an arm ends in W a3 / (3 E I), and starts with -W a (textbook mechanics)', () => {
  const { moment, sag, shear } = armDiagram(newtons(70), metres(0.22), EI)
  expect(moment[0]).toBeCloseTo(-15.4, 12)
  expect(moment.at(-1)).toBeCloseTo(0, 12)
  expect(sag?.at(-1)).toBeCloseTo(cantileverDroop(newtons(70), metres(0.22), pascals(1), EI), 12)
  expect(new Set(shear)).toEqual(new Set([70]))
})

describe('the diagram of a ring under two pulls', () => {
  const { at, moment, sag, shear } = ringDiagram(newtons(90), metres(0.03), EI)
  const middle = (at.length - 1) / 2

  test('runs round half its middle line', () => {
    expect([at[0], at[middle], at.at(-1)]).toEqual([0, 0.5, 1].map((share) => expect.closeTo(share * Math.PI * 0.03, 12) as number))
  })

  test('agrees with Roark’s case 1 under the pull, at the side, and in how it grows', () => {
    const bending = ringBending(newtons(90), metres(0.03))
    const stretch = ringStretch(newtons(90), metres(0.03), EI)
    expect(moment[0]).toBeCloseTo(bending.atLoad, 12)
    expect(moment[middle]).toBeCloseTo(bending.atSide, 12)
    expect(2 * (sag?.[0] ?? NaN)).toBeCloseTo(stretch.along, 15)
    expect(2 * (sag?.[middle] ?? NaN)).toBeCloseTo(stretch.across, 15)
    expect([shear[0], shear[middle]?.toFixed(9), shear.at(-1)]).toEqual([45, '0.000000000', -45])
  })

  test('closes: bending sums to nothing round the ring, and curvature follows it, M R2 / (E I) = -(w + w″) (thin ring)', () => {
    const step = Math.PI / (at.length - 1)
    const simpson = moment.reduce((sum, m, i) => sum + m * (i === 0 || i === at.length - 1 ? 1 : i % 2 === 1 ? 4 : 2), 0)
    expect((simpson * step) / 3).toBeCloseTo(0, 5)
    at.slice(1, -1).forEach((_, n) => {
      const [a, b, c] = [sag?.[n] ?? NaN, sag?.[n + 1] ?? NaN, sag?.[n + 2] ?? NaN]
      const left = ((moment[n + 1] ?? NaN) * 0.03 ** 2) / EI
      expect(left + b + (a - 2 * b + c) / step ** 2).toBeCloseTo(0, 6)
    })
  })
})
