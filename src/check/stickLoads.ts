import { COUNTED_LEGS } from '../catalogue/legs'
import type { CaseCode } from '../load/loadCases'
import { panelOnStick } from './panel/panelOnStick'
import { rowOf, type Row } from './row'
import type { Vec3 } from '../statics/sling/result'
import { legAngle, type PlannedLeg } from './slingPlan'
import type { Solved } from './solved'

/** What pulls down on a stick: place, m from its middle, and force, over the hanger's weight in the case. */
export interface StickLoad {
  readonly at: number
  readonly share: number
}

/** One way in which the weight may hang on the stick; `own`: the loads of this hanger among them, the first. */
export interface StickLoading {
  readonly own: number
  readonly loads: readonly StickLoad[]
}

/** Every way in which the weight may hang on the stick in a case; the worst of them counts. */
export function stickLoads(solved: Solved, code: CaseCode): readonly StickLoading[] {
  if (solved.geometry.panel !== null) return panelOnStick(solved, code)
  const row = rowOf(solved, code)
  return row === null ? underLegs(solved, code) : underRow(row, code === 'neighbourDown')
}

/**
 * Lark's heads evenly over the row in the middle: every leg in turn takes as much as a counted leg, W / min(m, 3), or
 * where it bears more in some solve of the sling that, straight down; the others the rest alike. What legs that lean
 * pull along the stick they pull both ways, and the thrust of the top cord is far larger.
 */
function underLegs({ hanger: { answers }, plan, slings, loads }: Solved, code: CaseCode): readonly StickLoading[] {
  const legs = answers['make.legs']
  const counted = 1 / Math.min(legs, COUNTED_LEGS.value)
  const places = Array.from({ length: legs }, (_, i) => answers['stick.bunch'] * (i / (legs - 1) - 0.5))
  const solved = slings?.[code].solvedEach ?? null
  const lifts = inOrder(plan?.legs ?? []).map((leg) => ((solved?.[leg] ?? 0) * Math.cos(legAngle(plan?.legs[leg] as PlannedLeg))) / loads[code].weight)
  return places.map((_, heavy) => {
    const most = Math.min(1, Math.max(counted, lifts[heavy] ?? 0))
    return { own: legs, loads: places.map((at, i) => ({ at, share: i === heavy ? most : (1 - most) / (legs - 1) })) }
  })
}

/** Legs by their place along the stick: their upper ends stand in one line. */
function inOrder(legs: readonly PlannedLeg[]): readonly number[] {
  const [x, y] = legs.reduce((far, { upper }) => (upper[0] > far[0] ? upper : far), [0, 0, 0] as Vec3)
  return legs.map((_, i) => i).sort((a, b) => along(legs[a]) - along(legs[b]))
  function along(leg: PlannedLeg | undefined): number { return leg === undefined ? 0 : leg.upper[0] * x + leg.upper[1] * y }
}

/** This hanger at each place of the row, with all the others, or with any one of them taken down. */
function underRow({ places, other }: Row, oneDown: boolean): readonly StickLoading[] {
  return places.flatMap((own, i): readonly StickLoading[] => {
    const others = places.filter((_, j) => j !== i).map((at): StickLoad => ({ at, share: other }))
    const hung = oneDown ? others.map((_, gone) => others.filter((_one, k) => k !== gone)) : [others]
    return hung.map((beside) => ({ own: 1, loads: [{ at: own, share: 1 }, ...beside] }))
  })
}
