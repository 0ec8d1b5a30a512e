import { strandsSeen } from './bundle'
import type { Scene } from './scene'
import type { Point, Shape } from './shape'

/** Half the width of the gathered strands. */
export function gatheredHalf({ check, cord }: Scene): number {
  return (strandsSeen(check.solved.geometry.gathered) * cord) / 2
}

/** The gathering knot: each wrap at its true thickness, the top one apart, for it alone stops the legs from splaying. */
export function gatheringShapes(scene: Scene): readonly Shape[] {
  const { answers, cord, gathering: [x, z], pencil } = scene
  const half = gatheredHalf(scene) * 0.8 + cord / 2
  const wraps = answers['gathering.wraps']
  return Array.from({ length: wraps }, (_, i): Shape => {
    const y = z - (i + 0.5) * cord
    return {
      kind: 'line', link: i === 0 ? 'wrapHoop' : 'gatheringGrip', ink: 'cord', leg: null, pencil: pencil('gathering.wraps', 'cord.diameter'), width: cord, behind: false,
      points: [[x - half, y - cord * 0.12], [x + half, y + cord * 0.12]],
    }
  })
}

/** The fringe hangs from the knot: it carries nothing, so its strands are drawn as plain lines. */
export function fringeShapes(scene: Scene): readonly Shape[] {
  const { answers, cord, gathering: [x, z], check, fringeEnd, pencil } = scene
  const long = answers['make.fringe']
  if (long <= 0) return []
  const top = z - check.solved.geometry.knot
  const strands = strandsSeen(check.solved.geometry.gathered)
  const half = gatheredHalf(scene) * 0.8
  const spread = Math.min(1.5, 1 + long / (20 * Math.max(half, cord)))
  return Array.from({ length: strands + 1 }, (_, i): Shape => {
    const aside = (2 * i) / strands - 1
    const points = [0, 0.25, 0.5, 0.75, 1].map((t): Point => [
      x + aside * half * (1 + (spread - 1) * t * t) + Math.sin(i * 2.4 + t * 5) * cord * 0.25 * t,
      top + (fringeEnd + (i % 3) * 0.02 * long - top) * t,
    ])
    return { kind: 'line', link: null, ink: 'cord', leg: null, pencil: pencil('make.fringe'), width: 0, behind: false, points }
  })
}
