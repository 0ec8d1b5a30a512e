import { CASES_WHOLE } from '../../load/loadCases'
import { cordStrength } from '../cordStrength'
import { juteDamp } from '../juteDamp'
import { assessLink, type LinkResult } from '../linkResult'
import { wrapSection } from '../sections'
import type { Solved } from '../solved'
import { entering, fromCatalogue, worked } from '../term'
import { cordFactors } from '../timeFactors'
import { demandTerms } from './legLink'

/**
 * The strands of a leg where they turn from under the base into the wraps of the gathering knot. No
 * friction over the pot is counted on: the full tension of the leg may reach the knot.
 */
export function gatheringTurnLink(solved: Solved): readonly LinkResult[] {
  const { answers } = solved.hanger
  const cord = cordStrength(answers)
  const section = wrapSection(answers)
  const watered = solved.slings?.watered.tension ?? null
  const damp = juteDamp(answers)
  return CASES_WHOLE.map((code) => {
    const tension = solved.slings?.[code].tension ?? null
    const time = cordFactors(answers, solved.loads[code].case, true)
    return assessLink({
      link: 'gatheringTurn',
      part: section.part,
      side: 'hanger',
      case: code,
      demand: tension === null ? null : { value: tension, unit: 'N' },
      capacity: cord.capacity,
      factors: [{ code: 'strandsAtWraps', value: section.effective, basis: section.efficiency.basis, source: section.efficiency.source }, ...time.factors],
      grade: cord.grade,
      overallFactor: cord.capacity === null || watered === null ? null : (section.strands * cord.capacity.value) / watered,
      atLeast: damp?.atLeast ?? 'holds',
      findings: damp === null ? cord.findings : [...cord.findings, damp.finding],
      terms: [
        ...demandTerms(solved, code),
        ...cord.terms,
        entering('strandsThatCarry', 'n_c', section.strands, '1', 'your own', 'strands of one leg that turn into the wraps'),
        fromCatalogue('efficiency', 'eta', section.efficiency),
        worked('strandsAtWraps', 'n_eff', section.effective, '1', 'n_c * eta', section.efficiency.source),
        ...time.terms,
      ],
    })
  })
}
