import { facing } from './potFrame'
import type { Stand } from './scene'
import type { Point, Shape } from './shape'

/** Leaves from the middle outwards: how far aside the tip ends over half the spread, how high over the plant's height, how high it arches on the way. */
const LEAVES: readonly (readonly [aside: number, high: number, arch: number])[] = [
  [-0.3, 0.9, 0.66], [0.38, 0.8, 0.6], [-0.7, 0.52, 0.9], [0.76, 0.44, 0.82], [-1, 0.14, 0.72], [1, 0.1, 0.62],
]
const STEPS = 14
/** A leaf's greatest half width over the plant's spread. */
const SLENDER = 0.07

/** The plant as a plain outline of its height: a shoot and a few leaves that hide nothing. */
export function plantShapes(stand: Stand): readonly Shape[] {
  const { answers, pencil } = stand
  const tall = answers['plant.height']
  if (tall <= 0) return []
  const foot = answers['pot.height'] - answers['pot.fillGap']
  const rim = answers['pot.height']
  const spread = Math.min(tall * 0.85, answers['pot.rim'] * 0.62)
  const wide = SLENDER * Math.min(spread, tall)
  const outline = (points: readonly Point[]): Shape => ({
    kind: 'area', link: 'load', ink: 'plant', leg: null, pencil: pencil('plant.height'), texture: 'open', behind: false,
    points: points.map(([x, z]) => facing(stand, x, z)),
  })
  const shoot = leaf([0, foot], [0.02 * spread, (rim + tall + foot) / 2], [0, rim + tall], wide)
  return [outline(shoot), ...LEAVES.map(([aside, high, arch]) => outline(leaf(
    [aside * answers['pot.rim'] * 0.1, foot], [aside * spread * 0.42, rim + tall * arch], [aside * spread, rim + tall * high], wide)))]
}

/** A leaf from its foot to its tip, bent towards a point; a quadratic curve and so never higher than the higher of these. */
function leaf(foot: Point, bend: Point, tip: Point, wide: number): readonly Point[] {
  const at = (t: number, k: 0 | 1): number => (1 - t) * (1 - t) * foot[k] + 2 * t * (1 - t) * bend[k] + t * t * tip[k]
  const slope = (t: number, k: 0 | 1): number => 2 * (1 - t) * (bend[k] - foot[k]) + 2 * t * (tip[k] - bend[k])
  const side = (sign: number): readonly Point[] => Array.from({ length: STEPS + 1 }, (_, i) => {
    const t = i / STEPS
    const [dx, dz] = [slope(t, 0), slope(t, 1)]
    const half = (sign * wide * Math.sin(Math.PI * t ** 0.75)) / Math.max(1e-9, Math.hypot(dx, dz))
    return [at(t, 0) - half * dz, at(t, 1) + half * dx]
  })
  return [...side(1), ...[...side(-1)].reverse()]
}
