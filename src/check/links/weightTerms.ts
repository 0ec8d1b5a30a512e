import type { CaseCode } from '../../load/loadCases'
import type { Term } from '../linkResult'
import type { Solved } from '../solved'
import { worked } from '../term'
import { demandTerms } from './legLink'

/** How the force at the ring, hook and fixing came about: the whole weight in this case. */
export function weightTerms(solved: Solved, code: CaseCode): readonly Term[] {
  const weight = demandTerms(solved, code).filter((t) => ['pottedMass', 'hangerMass', 'gravity', 'caseFactor', 'weight'].includes(t.code))
  return [...weight, worked('demand', 'E', solved.loads[code].weight, 'N', 'W', 'the whole weight hangs here')]
}
