import type { Shape } from '../shape'
import type { Frame } from './frame'
import type { DrawnScrew } from './screw'

/** Root of a thread over its outside, as drawn; turns drawn at most. */
const ROOT = 0.7
const MOST_TURNS = 40
/** A head over the diameter: half its width, and its height. */
const HEAD = { half: 0.95, high: 0.5 }

const pen = ({ pencil }: DrawnScrew) => ({ link: 'fixing', ink: 'wire', leg: null, pencil, behind: false } as const)

/** A screw: the thread in the timber, each turn of it; the shank before it; a point; a head where it is no hook's own thread. */
export function screwShapes(screw: DrawnScrew, at: Frame, along: number, headed: boolean): readonly Shape[] {
  const { diameter, length, thread: [from, to] } = screw
  const common = { ...pen(screw), kind: 'line' } as const
  const edge = diameter / 2
  const turns = Math.min(MOST_TURNS, Math.floor((to - from) / (0.4 * diameter)))
  const pitch = (to - from) / Math.max(1, turns)
  const tip = Math.min(1.2 * diameter, to - from)
  return [
    { ...common, points: [at(from, along), at(to, along)], width: ROOT * diameter },
    ...(from > 0 ? [{ ...common, points: [at(0, along), at(from, along)], width: diameter } satisfies Shape] : []),
    ...Array.from({ length: turns }, (_, i): Shape => {
      const deep = from + (i + 0.5) * pitch
      const half = edge * Math.min(1, (length - deep) / Math.max(1e-9, tip))
      return { ...common, points: [at(deep - 0.25 * pitch, along - half), at(deep + 0.25 * pitch, along + half)], width: 0 }
    }),
    ...(headed ? [headOf(screw, at, along)] : []),
  ]
}

/** A nail: smooth to its point. */
export function nailShapes(nail: DrawnScrew, at: Frame, along: number): readonly Shape[] {
  const { diameter, length } = nail
  return [{ ...pen(nail), kind: 'line', points: [at(0, along), at(length, along)], width: diameter }, headOf(nail, at, along)]
}

const headOf = (screw: DrawnScrew, at: Frame, along: number): Shape => {
  const half = HEAD.half * screw.diameter
  return { ...pen(screw), kind: 'area', texture: 'open', points: [at(0, along - half), at(0, along + half), at(0 - HEAD.high * screw.diameter, along + 0.6 * half), at(0 - HEAD.high * screw.diameter, along - 0.6 * half)] }
}
