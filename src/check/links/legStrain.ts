import { SOFT_LEGS } from '../../catalogue/seat'
import type { CaseCode } from '../../load/loadCases'
import { legStiffness } from '../solve'
import type { Solved } from '../solved'

/** Strain of the legs as drawn, softer than reckoned (SOFT_LEGS), for the seat: stretched legs let a pot tip sooner. 0 where the sling was not solved. */
export function legStrain(solved: Solved, code: CaseCode): number {
  const even = (solved.slings?.[code].sum ?? 0) / solved.hanger.answers['make.legs']
  return even / (legStiffness(solved.hanger.answers, solved.cord) * SOFT_LEGS.value)
}
