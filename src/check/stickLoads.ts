import { COUNTED_LEGS } from '../catalogue/legs'
import type { Answers } from '../hanger/fields'
import type { CaseCode } from '../load/loadCases'
import { rowOf, type Row } from './row'
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
  const row = rowOf(solved, code)
  return row === null ? underLegs(solved.hanger.answers) : underRow(row, code === 'neighbourDown')
}

/** Lark's heads evenly over the row in the middle: each leg takes W / m, and every one in turn as much as a counted leg, W / min(m, 3), the others the rest alike. */
function underLegs(answers: Answers): readonly StickLoading[] {
  const legs = answers['make.legs']
  const most = 1 / Math.min(legs, COUNTED_LEGS.value)
  const places = Array.from({ length: legs }, (_, i) => answers['stick.bunch'] * (i / (legs - 1) - 0.5))
  return places.map((_, heavy) => ({ own: legs, loads: places.map((at, i) => ({ at, share: i === heavy ? most : (1 - most) / (legs - 1) })) }))
}

/** This hanger at each place of the row, with all the others, or with any one of them taken down. */
function underRow({ places, other }: Row, oneDown: boolean): readonly StickLoading[] {
  return places.flatMap((own, i): readonly StickLoading[] => {
    const others = places.filter((_, j) => j !== i).map((at): StickLoad => ({ at, share: other }))
    const hung = oneDown ? others.map((_, gone) => others.filter((_one, k) => k !== gone)) : [others]
    return hung.map((beside) => ({ own: 1, loads: [{ at: own, share: 1 }, ...beside] }))
  })
}
