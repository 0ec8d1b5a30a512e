import { stroked, type Mark } from './marks'
import type { Texture } from './texture'

/** The filling of a cut material: one tile of it, repeated. */
export interface Hatch {
  readonly texture: Texture
  readonly width: number
  readonly height: number
  /** How far it is turned, degrees. */
  readonly turn: number
  readonly marks: readonly Mark[]
}

const stroke = (d: string, hair: number, dashes: readonly number[]): Mark => ({ tag: 'path', at: { d, ...stroked(hair, dashes) }, stroke: 'soft', fill: null, text: null })
const speck = (x: number, y: number, r: number, hair: number): Mark => ({ tag: 'circle', at: { cx: x * hair, cy: y * hair, r: r * hair }, stroke: null, fill: 'soft', text: null })

/** Fillings of cut materials; `hair` as in `shapeMarks`. Nothing is hatched more densely than a pen would. */
export const hatches = (hair: number): readonly Hatch[] => [
  { texture: 'timber', width: 46 * hair, height: 9 * hair, turn: 0, marks: [stroke(`M0 ${4.5 * hair}c${12 * hair} ${-5 * hair} ${34 * hair} ${5 * hair} ${46 * hair} 0`, hair, [])] },
  { texture: 'masonry', width: 9 * hair, height: 9 * hair, turn: 45, marks: [stroke(`M0 0V${9 * hair}M${4 * hair} 0V${9 * hair}`, hair, [])] },
  { texture: 'board', width: 6 * hair, height: 6 * hair, turn: 20, marks: [speck(2, 2, 0.8, hair)] },
  { texture: 'unknown', width: 14 * hair, height: 14 * hair, turn: 45, marks: [stroke(`M0 0V${14 * hair}`, 0.8 * hair, [4 * hair, 5 * hair])] },
  { texture: 'mix', width: 13 * hair, height: 11 * hair, turn: 0, marks: [speck(3, 3, 0.65, hair), speck(9.5, 8, 0.65, hair)] },
  { texture: 'water', width: 14 * hair, height: 5 * hair, turn: 0, marks: [stroke(`M0 ${2.5 * hair}q${3.5 * hair} ${-2.5 * hair} ${7 * hair} 0t${7 * hair} 0`, hair, [])] },
]
