import { BUMP_ANGLE } from '../catalogue/jolts'
import { metres, radians, type Seconds } from '../quantity/si'
import { equivalentLength, pendulumPeriod } from '../statics/pendulum'
import type { Solved } from './solved'

/**
 * How long a bumped hanger takes there and back, just watered, let go from where a bump starts: as a plain
 * pendulum from its hook to its centre of gravity, its pot as a solid cylinder. Null where it does not hang.
 */
export function swingPeriod({ hanger: { answers }, geometry: { path, top }, potted }: Pick<Solved, 'hanger' | 'geometry' | 'potted'>): Seconds | null {
  if (!path.ok || top === null) return null
  const depth = metres(top + path.top - potted.watered.centre)
  if (depth <= 0) return null
  const [radius, height] = [answers['pot.rim'] / 2, answers['pot.height']]
  const gyration = metres(Math.sqrt(radius ** 2 / 4 + height ** 2 / 12))
  return pendulumPeriod(equivalentLength(depth, gyration), radians(BUMP_ANGLE.value))
}
