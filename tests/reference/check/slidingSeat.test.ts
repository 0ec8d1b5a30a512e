import { describe, expect, test } from 'vitest'
import { metres } from '../../../src/quantity/si'
import { slidingSeatLimit } from '../../../src/statics/seat'

// The sliding limit against the energy itself: each strand runs without friction from the hook over the rim,
// down the side and round the base edge to a knot that may shift under the base; its whole length is kept.
// Unknowns: three shifts of the pot, two tilts, two shifts of the knot (a turn about the vertical changes
// nothing). The upright pot is stable while every pivot of the energy's second derivatives is positive.
interface Seat {
  readonly strands: number
  readonly rim: number
  readonly base: number
  readonly height: number
  readonly free: number
}

type Vector = readonly [number, number, number]
const WEIGHT = 60
/** So stiff that the strands hardly stretch: some 300 times a cotton cord. */
const STIFFNESS = 1e6

const length = (v: Vector): number => Math.hypot(...v)
const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]]

/** Turns v by the vector (x, y, 0), Rodrigues. */
function turn([vx, vy, vz]: Vector, x: number, y: number): Vector {
  const angle = Math.hypot(x, y)
  if (angle === 0) return [vx, vy, vz]
  const [kx, ky] = [x / angle, y / angle]
  const [c, s] = [Math.cos(angle), Math.sin(angle)]
  const along = (kx * vx + ky * vy) * (1 - c)
  return [vx * c + ky * vz * s + kx * along, vy * c - kx * vz * s + ky * along, vz * c + (kx * vy - ky * vx) * s]
}

/** Energy of the pot with its centre of gravity a height above the leave points, at seven unknowns. */
function energyOf({ strands, rim, base, height, free }: Seat, above: number): (x: readonly number[]) => number {
  const rise = Math.sqrt(free * free - rim * rim)
  const tension = (WEIGHT * free) / (strands * rise)
  const side = Math.hypot(rim - base, height)
  const whole = free + side + base
  const unstretched = whole / (1 + tension / STIFFNESS)
  const hook: Vector = [0, 0, height + rise]
  const centre: Vector = [0, 0, height + above]
  return ([px = 0, py = 0, pz = 0, tx = 0, ty = 0, kx = 0, ky = 0]) => {
    let energy = WEIGHT * pz
    for (let i = 0; i < strands; i++) {
      const angle = (2 * Math.PI * i) / strands + 0.3
      const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
      const arm = turn(minus([rim * cos, rim * sin, height], centre), tx, ty)
      const leave: Vector = [centre[0] + px + arm[0], centre[1] + py + arm[1], centre[2] + pz + arm[2]]
      const now = length(minus(hook, leave)) + side + Math.hypot(base * cos - kx, base * sin - ky)
      energy += (STIFFNESS / (2 * unstretched)) * (now - unstretched) ** 2
    }
    return energy
  }
}

/** Whether the second derivatives, by central differences, have positive pivots only. */
function isStable(energy: (x: readonly number[]) => number): boolean {
  const step = 1e-5
  const at = (i: number, j: number, si: number, sj: number): number => {
    const x = new Array<number>(7).fill(0)
    x[i] = (x[i] ?? 0) + si * step
    x[j] = (x[j] ?? 0) + sj * step
    return energy(x)
  }
  const rows = Array.from({ length: 7 }, (_, i) => Array.from({ length: 7 }, (__, j) => (at(i, j, 1, 1) - at(i, j, 1, -1) - at(i, j, -1, 1) + at(i, j, -1, -1)) / (4 * step * step)))
  for (let i = 0; i < 7; i++) {
    const pivot = rows[i]?.[i] ?? NaN
    if (!(pivot > 0)) return false
    for (let r = i + 1; r < 7; r++) {
      const share = (rows[r]?.[i] ?? NaN) / pivot
      rows[r] = (rows[r] ?? []).map((x, c) => x - share * (rows[i]?.[c] ?? NaN))
    }
  }
  return true
}

const SEATS: readonly Seat[] = [
  { strands: 4, rim: 0.105, base: 0.07, height: 0.185, free: 0.64 },
  { strands: 3, rim: 0.085, base: 0.0575, height: 0.15, free: 0.52 },
  { strands: 6, rim: 0.13, base: 0.12, height: 0.2, free: 0.41 },
  { strands: 5, rim: 0.07, base: 0.075, height: 0.11, free: 0.83 },
]

describe.each(SEATS)('$strands strands, rim radius $rim, base radius $base, free length $free', (seat) => {
  const limit = slidingSeatLimit({ leaveRadius: metres(seat.rim), baseRadius: metres(seat.base), free: metres(seat.free), rise: metres(Math.sqrt(seat.free ** 2 - seat.rim ** 2)) })

  test('rests upright half a millimetre below the limit and not half a millimetre above it', () => {
    expect(isStable(energyOf(seat, limit - 0.0005))).toBe(true)
    expect(isStable(energyOf(seat, limit + 0.0005))).toBe(false)
  })

  test('the upright pot is in balance', () => {
    const energy = energyOf(seat, limit / 2)
    for (let i = 0; i < 7; i++) {
      const along = (s: number): number => energy(Array.from({ length: 7 }, (_, k) => (k === i ? s : 0)))
      expect(Math.abs(along(1e-6) - along(-1e-6)) / 2e-6).toBeLessThan(1e-3 * WEIGHT)
    }
  })
})
