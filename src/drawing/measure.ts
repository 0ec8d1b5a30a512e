import type { FieldPath } from '../hanger/fields'
import type { Pencil } from './pencil'
import type { Dimension, Point } from './shape'

/** One length along one axis of a view: its ends, how far its line stands, and where the drawn thing is that it measures, m. */
export interface Measured {
  readonly path: FieldPath
  readonly value: number
  readonly pencil: Pencil
  /** From and to along the axis; the line's place across it; the places across it of the thing's ends. */
  readonly ends: readonly [number, number]
  readonly at: number
  readonly feet: readonly [number, number]
}

type Number = Pick<Dimension, 'number' | 'side'>

/** A level line; its number on it, or beyond its right end. */
export function levelLine({ path, value, pencil, ends: [from, to], at, feet }: Measured, beyond: number | null): Dimension {
  const number: Number = beyond === null ? { number: [(from + to) / 2, at], side: 'middle' } : { number: [Math.max(from, to) + beyond, at], side: 'right' }
  return { path, value, pencil: pencil(path), from: [from, at], to: [to, at], feet: [[from, feet[0]], [to, feet[1]]], ...number }
}

/** An upright line; its number on it, or to one side of it at a height. */
export function uprightLine({ path, value, pencil, ends: [from, to], at, feet }: Measured, beside: { readonly side: 'left' | 'right'; readonly away: number; readonly height: number } | null): Dimension {
  const middle: Point = [at, (from + to) / 2]
  const number: Number = beside === null
    ? { number: middle, side: 'middle' }
    : { number: [at + (beside.side === 'right' ? beside.away : 0 - beside.away), beside.height], side: beside.side }
  return { path, value, pencil: pencil(path), from: [at, from], to: [at, to], feet: [[feet[0], from], [feet[1], to]], ...number }
}
