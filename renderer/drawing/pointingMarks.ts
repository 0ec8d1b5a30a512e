import { lineMark, stroked, type Mark } from './marks'
import type { Pointing } from './pointing'

/** Leader, ring or frame, and name of the chosen part; `hair`, `letter` (mm): as of the picture as it is seen. */
export function pointingMarks({ part, of, ring, leader: [from, to], name, loupe }: Pointing, text: string, hair: number, letter: number): readonly Mark[] {
  const framed = (box: { x: number, y: number, width: number, height: number }, corner: number): Mark => ({ tag: 'rect', at: { ...box, rx: corner, ...stroked(1.2 * hair, []) }, stroke: 'accent', fill: null, text: null })
  return [
    ...(ring > 0 ? [lineMark('circle', 'accent', { cx: part.x, cy: part.y, r: ring, ...stroked(1.4 * hair, []) })] : []),
    ...(of === null ? [] : [framed(of, 4 * hair)]),
    ...(loupe === null ? [] : [framed(loupe.frame, 8 * hair)]),
    lineMark('line', 'accent', { x1: from.x, y1: from.y, x2: to.x, y2: to.y, ...stroked(1.1 * hair, []) }),
    ...(of === null && ring === 0 ? [{ tag: 'circle', at: { cx: part.x, cy: part.y, r: 2.4 * hair }, stroke: null, fill: 'accent', text: null } satisfies Mark] : []),
    { tag: 'text', at: { x: name.x, y: name.y, 'font-size': letter, 'text-anchor': name.anchor, 'font-weight': 700 }, stroke: null, fill: 'accent', text },
  ]
}
