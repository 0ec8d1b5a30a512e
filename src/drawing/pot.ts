import type { Level } from '../load/outline'
import type { Section } from '../load/section'
import { hull } from './hull'
import type { Vector } from './pose'
import type { Stand } from './scene'
import type { Point, Shape } from './shape'

const SIDES = 48

/** The pot's outside at a height above its base; between two levels its side is straight. */
export function potLevel({ check }: Stand, z: number): Level {
  const levels = check.solved.geometry.outline.pot
  const above = Math.max(1, levels.findIndex((l) => l.z >= z))
  const [lower, upper] = [levels[above - 1] as Level, levels[above] as Level]
  const share = (z - lower.z) / (upper.z - lower.z)
  const between = (a: number, b: number): number => a + (b - a) * share
  return { round: lower.round, across: between(lower.across, upper.across), along: between(lower.along, upper.along), z }
}

/** The edge of a level, placed: a circle, beginning at the view's right and running behind first, or four corners. */
export function edgeOf({ pose, view }: Stand, { round, across, along, z }: Section & { readonly z: number }): readonly Vector[] {
  if (!round) {
    return ([[1, 1], [-1, 1], [-1, -1], [1, -1]] as const).map(([x, y]) => pose.place([x * along, y * across, z]))
  }
  return Array.from({ length: SIDES }, (_, i) => {
    const angle = (2 * Math.PI * i) / SIDES - view.turn - pose.turned
    return pose.place([across * Math.cos(angle), across * Math.sin(angle), z])
  })
}

/** The pot from the front: its outline, the rim, the fill line of the mix, water standing on it, and what the pot stands in. */
export function potShapes(stand: Stand): readonly Shape[] {
  const { answers, pencil, check, code, view } = stand
  const height = answers['pot.height']
  const topping = answers['topping.depth']
  const fill = Math.max(0, height - Math.max(answers['pot.fillGap'], topping))
  const { pot: levels, saucer, cover } = check.solved.geometry.outline
  const edge = (z: number): readonly Point[] => edgeOf(stand, potLevel(stand, z)).map(view.front)
  const around = (of: readonly Level[]): readonly Point[] => hull(of.flatMap((l) => edgeOf(stand, l).map(view.front)))
  const pot = { link: 'load', ink: 'pot', leg: null, pencil: pencil('pot.rim', 'pot.height', ...(answers['pot.shape'] === 'cylinder' ? [] : ['pot.base'] as const)) } as const
  const mix = { ...pot, ink: 'mix', pencil: pencil('pot.fillGap') } as const
  const line = (z: number): Shape => ({ ...mix, kind: 'line', points: ends(edge(z)), width: 0, behind: true })
  const outline = around(levels)
  const shapes: Shape[] = [{ ...pot, kind: 'area', points: outline, texture: 'paper', behind: false }]
  shapes.push({ ...mix, kind: 'area', points: hull([...levels.filter((l) => l.z < fill).flatMap((l) => edgeOf(stand, l).map(view.front)), ...edge(fill)]), texture: 'mix', behind: true })
  if (check.solved.potted[check.solved.loads[code].case.state].standing) {
    shapes.push({ ...mix, ink: 'water', pencil: pencil('pot.drainage'), kind: 'area', points: hull([...edge(fill + topping), ...edge(height)]), texture: 'water', behind: true })
  }
  shapes.push(line(fill))
  if (topping > 0) shapes.push(line(fill + topping))
  if (answers['layer.depth'] > 0) shapes.push(line(Math.min(fill, answers['layer.depth'])))
  shapes.push({ ...pot, kind: 'area', points: outline, texture: 'open', behind: false })
  shapes.push({ ...pot, kind: 'area', points: hull(edge(height)), texture: 'open', behind: false })
  if (saucer !== null) shapes.push({ ...pot, pencil: pencil('saucer.width', 'saucer.depth'), kind: 'area', points: around(saucer), texture: 'open', behind: false })
  if (cover !== null) shapes.push({ ...pot, pencil: pencil('cover.inside', 'cover.height'), kind: 'area', points: around(cover), texture: 'open', behind: false })
  return shapes
}

/** The two sides of an edge that the view cuts. */
const ends = (edge: readonly Point[]): readonly Point[] => [
  edge.reduce((a, b) => (b[0] > a[0] ? b : a)), edge.reduce((a, b) => (b[0] < a[0] ? b : a)),
]
