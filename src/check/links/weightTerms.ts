import type { CaseCode } from '../../load/loadCases'
import type { Term } from '../linkResult'
import type { Solved } from '../solved'
import { worked } from '../term'
import { demandTerms } from './legLink'

/** How the force at the ring, hook and fixing came about: the whole weight in this case. */
export function weightTerms(solved: Solved, code: CaseCode): readonly Term[] {
  const terms = demandTerms(solved, code)
  const weight = terms.findIndex((t) => t.code === 'weight')
  return [...terms.slice(0, weight + 1), worked('demand', 'E', solved.loads[code].weight, 'N', 'W', 'the whole weight hangs here')]
}
