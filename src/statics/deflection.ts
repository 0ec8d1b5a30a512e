import { metres, type Metres } from '../quantity/si'
import type { Beam, PointLoad } from './beam'

type Bent = Pick<Beam, 'length' | 'supports' | 'forces'>

/** Where a stick bends farthest from the line through its supports, and by how much; downwards positive. */
export interface Sag {
  readonly at: Metres
  readonly sag: Metres
}

/**
 * How far a stick sags at given places, m, downwards positive: E I y = sum F <x - x_i>^3 / 6 + c x + k, with
 * no sag at the supports (Macaulay's method; bending only, small slopes). `bendingStiffness`: E I, N m2.
 * @example sagAt({ length: metres(0.4), supports: [metres(0), metres(0.4)], forces: [{ at: metres(0), force: newtons(48) }, { at: metres(0.2), force: newtons(-96) }, { at: metres(0.4), force: newtons(48) }] }, 128, [metres(0.2)]) // [0.001]
 */
export function sagAt({ forces, supports }: Bent, bendingStiffness: number, places: readonly Metres[]): readonly Metres[] {
  const curve = curveOf(forces, supports)
  return places.map((x) => metres(-curve.rise(x) / bendingStiffness))
}

/**
 * The largest sag or rise by size, m. Between two forces the slope is a parabola, whose roots are found
 * in closed form; they and the places of forces and ends are all that can hold it.
 * @example largestSag({ length: metres(0.4), supports: [metres(0), metres(0.4)], forces: [{ at: metres(0), force: newtons(48) }, { at: metres(0.2), force: newtons(-96) }, { at: metres(0.4), force: newtons(48) }] }, 128).sag // 0.001
 */
export function largestSag({ forces, supports, length }: Bent, bendingStiffness: number): Sag {
  const curve = curveOf(forces, supports)
  const breaks = [0, ...forces.map((f) => f.at), length]
  const flat = breaks.slice(1).flatMap((to, i) => flatPlaces(curve.slope, breaks[i] ?? to, to))
  let largest: Sag = { at: metres(0), sag: metres(0) }
  for (const at of [...breaks, ...flat]) {
    const sag = -curve.rise(at) / bendingStiffness
    if (Math.abs(sag) > Math.abs(largest.sag)) largest = { at: metres(at), sag: metres(sag) }
  }
  return largest
}

interface Curve {
  /** E I times the rise and its slope, at x. */
  readonly rise: (x: number) => number
  readonly slope: (x: number) => number
}

function curveOf(forces: readonly PointLoad[], [a, b]: readonly [Metres, Metres]): Curve {
  const cubes = (x: number): number => forces.reduce((sum, f) => sum + (f.force * Math.max(0, x - f.at) ** 3) / 6, 0)
  const squares = (x: number): number => forces.reduce((sum, f) => sum + (f.force * Math.max(0, x - f.at) ** 2) / 2, 0)
  const c = (cubes(a) - cubes(b)) / (b - a)
  return { rise: (x) => cubes(x) - cubes(a) + c * (x - a), slope: (x) => squares(x) + c }
}

/** Places inside (from, to) where the slope, a parabola there, is nothing. */
function flatPlaces(slope: (x: number) => number, from: number, to: number): readonly number[] {
  const width = to - from
  if (width <= 0) return []
  const [start, middle, end] = [slope(from), slope((from + to) / 2), slope(to)]
  // slope = p u^2 + q u + start over u = 0 .. 1.
  const p = 2 * (start + end - 2 * middle)
  const q = end - start - p
  const root = q * q - 4 * p * start
  if (root < 0) return []
  const half = -(q + (q < 0 ? -1 : 1) * Math.sqrt(root)) / 2
  return [half / p, start / half].filter((u) => u > 0 && u < 1).map((u) => from + u * width)
}
