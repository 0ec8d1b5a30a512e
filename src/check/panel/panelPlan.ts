import type { Answers } from '../../hanger/fields'
import type { PanelPoints } from '../../statics/panel'
import type { Wall } from '../../statics/sling/result'
import { legAngle, type PlannedLeg, type SlingPlan } from '../slingPlan'

/** Strands side by side in each group: right front, left front, right half behind, left half behind; of an odd number behind the one in the middle counts for neither. */
export const panelStrands = (answers: Pick<Answers, 'panel.front' | 'panel.behind'>): readonly number[] => {
  const [front, back] = [answers['panel.front'], Math.floor(answers['panel.behind'] / 2)]
  return [front, front, back, back]
}

/** Groups longer or shorter together: both in front, one of them, both behind, one of them, and crosswise. */
const UNEVEN: readonly (readonly number[])[] = [[1, 1, 0, 0], [1, 0, 0, 0], [0, 0, 1, 1], [0, 0, 1, 0], [1, 0, 0, 1]]
/** To one side, the other being its mirror; away from the wall, and towards it. */
const ASIDES = [0, Math.PI / 2, (3 * Math.PI) / 2]

/**
 * How a pot hangs in a panel: two groups of strands in front and two behind, one strand the unit of stiffness, leaning on
 * the wall. Millimetres, friction at the wall and how stiff the panel is decide which pair bears the weight, so that
 * each counts as if its pair bore all of it: no group for less than W / (2 cos b).
 */
export function panelPlan(answers: Pick<Answers, 'panel.front' | 'panel.behind'>, points: PanelPoints, contacts: Wall['contacts'], onWall: boolean): SlingPlan {
  const strands = panelStrands(answers)
  const legs = points.upper.map((upper, i): PlannedLeg => {
    const ends = { upper: [upper[0], upper[1] - points.axisFromWall, upper[2]], lower: points.lower[i] ?? upper } as const
    return { kind: i < 2 ? 'front' : 'back', ...ends, stiffness: strands[i] ?? 1, floor: 1 / (2 * Math.cos(legAngle(ends))) }
  })
  return {
    legs,
    ell: points.widest,
    wall: onWall ? { n: [0, -1, 0], d: points.widest, contacts } : null,
    uneven: UNEVEN.flatMap((mask) => [mask, mask.map((x) => 0 - x)]),
    asides: ASIDES,
    // By the mirror one in front and one behind stand for all.
    distinct: [0, 2],
    alike: false,
  }
}
