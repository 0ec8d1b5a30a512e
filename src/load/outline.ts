import { COVER_MATERIAL } from '../catalogue/vessels'
import type { Answers } from '../hanger/fields'
import type { ProfilePoint } from '../statics/tautPath'
import { coverPotOf } from './coverPot'
import { hasCover } from './drainage'
import { potOutline } from './potOutline'
import { hasSaucer, saucerOf } from './saucer'
import { roundSection, squareSection, type Section } from './section'
import type { Piece } from './solid'
import type { Vessel } from './vesselMass'
import { wallThickness } from './wallThickness'

/** A section outside, m, at a height above the pot's base; between two levels the side is straight. */
export interface Level extends Section {
  readonly z: number
}

/** What lies in the cradle, outside, each from below upwards: the pot, the saucer or cover pot it stands in, both taken as upright and without a floor. */
export interface CradledOutline {
  readonly pot: readonly Level[]
  readonly saucer: readonly Level[] | null
  readonly cover: readonly Level[] | null
}

/** Straight stretches that stand for a curved one. */
const STRETCHES = 7

/** The outline of what lies in the cradle. Curved sides are given by points on them, at most fifteen. */
export function cradledOutline(answers: Answers): CradledOutline {
  const upright = (vessel: Vessel, wall: number): readonly Level[] => {
    const section = vessel.round ? roundSection(vessel.width / 2 + wall) : squareSection(vessel.width / 2 + wall, vessel.longer / 2)
    return [{ ...section, z: 0 }, { ...section, z: vessel.depth }]
  }
  const saucer = saucerOf(answers)
  const cover = coverPotOf(answers)
  return {
    pot: potOutline(answers, 0).flatMap((piece, i) => levelsOf(piece).slice(i === 0 ? 0 : 1)),
    saucer: hasSaucer(answers) ? upright(saucer, wallThickness(answers['pot.material'], saucer.width, null).likely) : null,
    cover: hasCover(answers) ? upright(cover, wallThickness(COVER_MATERIAL.usual, cover.width, null).likely) : null,
  }
}

function levelsOf({ from, to, at }: Piece): readonly Level[] {
  const [below, middle, above] = [from, (from + to) / 2, to].map((z) => at(z).across) as [number, number, number]
  const level = (z: number): Level => ({ ...at(z), z })
  if (Math.abs(below + above - 2 * middle) < 1e-9) return [level(from), level(to)]
  const steps = Array.from({ length: STRETCHES + 1 }, (_, i) => Math.sin((i / STRETCHES) * (Math.PI / 2)))
  // Closer together away from the widest level, where the side turns most.
  return above > below
    ? steps.reverse().map((share) => level(to - (to - from) * share))
    : steps.map((share) => level(from + (to - from) * share))
}

/**
 * The profile that a taut strand is laid over, in an upright plane through the axis: how far what lies in the
 * cradle reaches there at each height, m, its hollows bridged. `reach`: of one section in that plane.
 */
export function cradledProfile({ pot, saucer, cover }: CradledOutline, reach: (section: Section) => number): readonly ProfilePoint[] {
  const points = [...pot, ...(saucer ?? []), ...(cover ?? [])].map((level): ProfilePoint => ({ r: reach(level), z: level.z }))
  const kept: ProfilePoint[] = []
  for (const point of points.sort((a, b) => a.z - b.z || b.r - a.r)) {
    if (kept.length > 0 && (kept[kept.length - 1] as ProfilePoint).z === point.z) continue
    while (kept.length > 1 && isHollow(kept[kept.length - 2] as ProfilePoint, kept[kept.length - 1] as ProfilePoint, point)) kept.pop()
    kept.push(point)
  }
  return kept
}

/** Whether the middle point lies on or within the line from the lower to the upper one. */
const isHollow = (lower: ProfilePoint, middle: ProfilePoint, upper: ProfilePoint): boolean =>
  (middle.r - lower.r) * (upper.z - lower.z) <= (upper.r - lower.r) * (middle.z - lower.z)
