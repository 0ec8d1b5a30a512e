import type { Point } from '#core'

const MILLIMETRES = 1000

/** A length of the drawing in the picture's unit, mm. */
export const mm = (metres: number): number => metres * MILLIMETRES

/** A point of the drawing in the picture, mm: there y runs downwards. */
export const at = ([x, y]: Point): { readonly x: number, readonly y: number } => ({ x: mm(x), y: 0 - mm(y) })

/** Points never change, and are drawn again at every step of looking closer. */
const written = { open: new WeakMap<readonly Point[], string>(), closed: new WeakMap<readonly Point[], string>() }

/** Path data through points. */
export function pathThrough(points: readonly Point[], closed: boolean): string {
  const known = closed ? written.closed : written.open
  const kept = known.get(points)
  if (kept !== undefined) return kept
  const path = points.map((point, i) => `${i === 0 ? 'M' : 'L'}${at(point).x} ${at(point).y}`).join('') + (closed ? 'Z' : '')
  known.set(points, path)
  return path
}
