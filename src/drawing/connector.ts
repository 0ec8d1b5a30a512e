import { CHAIN_LINKS, insideOf, wireOf } from './connectorLength'
import type { Scene } from './scene'
import type { Point, Shape } from './shape'

const STEPS = 12

/** Points of an arc about a middle, angles from straight down, towards the right positive. */
const arc = ([x, z]: Point, radius: number, from: number, to: number): readonly Point[] =>
  Array.from({ length: STEPS + 1 }, (_, i) => from + ((to - from) * i) / STEPS).map((angle) => [x + radius * Math.sin(angle), z - radius * Math.cos(angle)])

/** An upright link: two half circles and straight sides. */
const oval = (top: number, bottom: number, radius: number): readonly Point[] =>
  [...arc([0, bottom + radius], radius, -Math.PI / 2, Math.PI / 2), ...arc([0, top - radius], radius, Math.PI / 2, 1.5 * Math.PI), [-radius, bottom + radius]]

/** What hangs between hook and hanger, from the front. */
export function connectorShapes({ answers, bowl, carried, pencil }: Scene, x: number): readonly Shape[] {
  const kind = answers['connector.kind']
  if (kind === 'none') return []
  const wire = wireOf(answers)
  const radius = (insideOf(answers) + wire) / 2
  const common = { link: 'connector', ink: 'wire', leg: null, pencil: pencil('connector.kind', 'connector.wire', 'connector.inside'), behind: false } as const
  const line = (points: readonly Point[]): Shape => ({ ...common, kind: 'line', width: wire, points: points.map(([px, pz]): Point => [px + x, pz]) })
  const [top, bottom] = [bowl + wire / 2, carried - wire / 2]
  if (kind === 'sHook') {
    const middle = (top + bottom) / 2
    return [line([...arc([0, top - radius], radius, 1.45 * Math.PI, Math.PI / 2).slice(0, -1), [0, middle], ...arc([0, bottom + radius], radius, -Math.PI / 2, 0.45 * Math.PI)])]
  }
  if (kind === 'chain') {
    const pitch = (top - bottom) / CHAIN_LINKS
    return Array.from({ length: CHAIN_LINKS }, (_, i): Shape => {
      const [upper, lower] = [top - i * pitch + wire / 2, top - (i + 1) * pitch - wire / 2]
      return i % 2 === 0 ? line(oval(upper, lower, Math.min(radius, (upper - lower) / 2))) : line([[0, upper], [0, lower]])
    })
  }
  if (kind === 'carabiner') return [line(oval(top, bottom, radius))]
  const third = (top - bottom) / 3
  return [line(oval(top, top - third, Math.min(radius, third / 2))), line([[0, top - third], [0, bottom + third]]), line(oval(bottom + third, bottom, Math.min(radius, third / 2)))]
}
