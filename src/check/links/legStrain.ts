import { SOFT_LEGS } from '../../catalogue/seat'
import type { CaseCode } from '../../load/loadCases'
import { legStiffness } from '../solve'
import type { Solved } from '../solved'

/** Strain of the legs as drawn, softer than reckoned (SOFT_LEGS), for the seat: stretched legs let a pot tip sooner. 0 where the sling was not solved. */
export function legStrain(solved: Solved, code: CaseCode): number {
  const sling = solved.slings?.[code]
  if (!sling || sling.sum === null) return 0
  const even = sling.sum / solved.hanger.answers['make.legs']
  return even / (legStiffness(solved.hanger.answers, solved.cord) * SOFT_LEGS.value)
}
