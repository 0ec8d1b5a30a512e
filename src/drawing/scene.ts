import type { CheckResult } from '../check/checkHanger'
import type { CaseCode } from '../load/loadCases'
import type { Answers } from '../hanger/fields'
import { connectorLength } from './connectorLength'
import { rowMiddle } from './row'
import { pencilOf, type Pencil } from './pencil'
import { poseOf, type Pose, type Vector } from './pose'
import type { Point } from './shape'
import { viewOf, type View } from './view'

/** What stands by itself: the pot, the view, and the size that gaps are measured in. */
export interface Stand {
  readonly check: CheckResult
  readonly code: CaseCode
  readonly answers: Answers
  /** What the legs hang from, and whether there is a stick. */
  readonly hangsFrom: Answers['make.top']
  readonly hasStick: boolean
  /** Where the middle of the stick stands, from the pot’s axis: aside where this hanger is one of a row. */
  readonly stickAt: number
  readonly pose: Pick<Pose, 'place' | 'turned' | 'hangingPoint'>
  readonly view: View
  readonly pencil: Pencil
  /** Cord diameter. */
  readonly cord: number
  /** A fortieth of the whole height, m. */
  readonly unit: number
}

/** What hangs: the posed pot, and the levels of what is above and below it, m. */
export interface Scene extends Stand {
  readonly pose: Pose
  /** Strands of one leg that carry along it: without the knotting ones. */
  readonly carrying: number
  /** Height of the hook's bowl where it carries, of where the hanger hangs from it or from what hangs between, and of the ceiling. */
  readonly bowl: number
  readonly carried: number
  readonly ceiling: number
  /** Where the legs are gathered under the pot, in space and in the view, and the end of the fringe below. */
  readonly gatheredAt: Vector
  readonly gathering: Point
  readonly fringeEnd: number
}

/** Length taken by the ring at the top of the hanger. */
export const ringLength = ({ check }: Pick<Stand, 'check'>): number => check.solved.geometry.ringHeight

/** From where the legs hang up to where the hanger hangs; of a top cord that does not reach only its stick. */
function topOf({ solved: { hanger: { answers }, geometry: { top, hangsFrom, hasStick, ringRadius, ringHeight } } }: CheckResult): number {
  if (hangsFrom === 'ring' && !hasStick && ringRadius === 0) return Math.max(0, ringHeight - answers['ring.wire'])
  return top ?? answers['stick.diameter']
}

/** Null where the strands do not reach round the pot: nothing hangs. */
export function sceneOf(check: CheckResult, code: CaseCode): Scene | null {
  const pose = poseOf(check.solved, code)
  if (pose === null) return null
  const { answers } = check.solved.hanger
  const carried = pose.hangingPoint[2] + topOf(check)
  const bowl = carried + connectorLength(answers)
  const ceiling = bowl + answers['hook.projection']
  const common = commonOf(check, code)
  const { drawnKnot, geometry: { knot, drop }, tiers } = check.solved
  const gatheredAt = pose.place([0, 0, code === 'lowerOut' || drawnKnot === null ? 0 : 0 - drawnKnot.drawn])
  const gathering = common.view.front(gatheredAt)
  const fringeEnd = gathering[1] - knot - answers['make.fringe']
  const lowest = tiers.length > 0 && drop !== null ? carried - drop : fringeEnd
  return {
    ...common, pose, gatheredAt, gathering, bowl, carried, ceiling, fringeEnd,
    carrying: answers['make.build'] === 'plain' ? answers['make.strands'] : Math.max(1, Math.floor(answers['make.strands'] / 2)),
    unit: (ceiling - lowest) / 40,
  }
}

/** The pot standing beside a strand that is too short for it, the gathering knot level with the base. */
export function standOf(check: CheckResult, code: CaseCode): Stand {
  const { hanger: { answers }, geometry: { strand, knot, ringHeight } } = check.solved
  const top = Math.max(strand + ringHeight, answers['pot.height'] + answers['plant.height'])
  return {
    ...commonOf(check, code),
    pose: { place: (point) => point, turned: 0, hangingPoint: [0, 0, strand] },
    unit: (top + knot + answers['make.fringe']) / 40,
  }
}

function commonOf(check: CheckResult, code: CaseCode): Omit<Stand, 'pose' | 'unit'> {
  const { hanger: { answers }, geometry } = check.solved
  return { check, code, answers, hangsFrom: geometry.hangsFrom, hasStick: geometry.hasStick, stickAt: geometry.hasStick ? rowMiddle(answers) : 0, view: viewOf(geometry.turn), pencil: pencilOf(check), cord: geometry.knot / answers['gathering.wraps'] }
}
