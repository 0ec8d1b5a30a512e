import type { CheckResult } from '../check/checkHanger'
import type { CaseCode } from '../load/loadCases'
import type { Answers } from '../hanger/fields'
import { pencilOf, type Pencil } from './pencil'
import { poseOf, type Pose } from './pose'
import { viewOf, type View } from './view'

/** All that the parts of a drawing are made from: the posed pot, the view, and the levels of what hangs above and below, m. */
export interface Scene {
  readonly check: CheckResult
  readonly code: CaseCode
  readonly answers: Answers
  readonly pose: Pose
  readonly view: View
  readonly pencil: Pencil
  /** Cord diameter. */
  readonly cord: number
  /** Strands of one leg that carry along it: without the knotting ones. */
  readonly carrying: number
  /** Height of the hook's bowl where it carries, and of the ceiling. */
  readonly bowl: number
  readonly ceiling: number
  /** Where the legs are gathered under the pot, and the length of wraps and fringe below it. */
  readonly gathering: readonly [number, number]
  readonly fringeEnd: number
  /** Size that gaps and marks are measured in: a fortieth of the whole height. */
  readonly unit: number
}

/** Null where the strands do not reach round the pot: nothing hangs. */
export function sceneOf(check: CheckResult, code: CaseCode): Scene | null {
  const { solved } = check
  const { answers } = solved.hanger
  const pose = poseOf(solved, code)
  if (pose === null) return null
  const view = viewOf(pose.legs)
  const gathering = view.front(pose.place([0, 0, 0]))
  const bowl = pose.hangingPoint[2] + (answers['make.top'] === 'ring' ? answers['ring.wire'] + answers['ring.inside'] : 0)
  const ceiling = bowl + answers['hook.projection']
  const fringeEnd = gathering[1] - solved.geometry.knot - answers['make.fringe']
  return {
    check, code, answers, pose, view, gathering, bowl, ceiling, fringeEnd,
    pencil: pencilOf(check),
    cord: solved.geometry.knot / answers['gathering.wraps'],
    carrying: answers['make.build'] === 'plain' ? answers['make.strands'] : Math.max(1, Math.floor(answers['make.strands'] / 2)),
    unit: (ceiling - fringeEnd) / 40,
  }
}
