import { inCase, stillApplying } from '../cordStrength'
import { juteDamp } from '../juteDamp'
import { assessLink, type LinkResult } from '../linkResult'
import { saySettlingTests } from '../saySettlingTests'
import { strandsGone } from '../inspected'
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
  const watered = solved.slings?.watered.tension ?? null
  // Guidance for rope speaks of new, dry rope without knots.
  const plain = solved.cord.wrap.dry.capacity
  const damp = juteDamp(answers)
  return saySettlingTests(solved, solved.wholeCases.map((code) => {
    const cord = inCase(solved.cord.leg, solved.loads[code].case)
    const section = wrapSection(answers, strandsGone(solved), cord.tied)
    const tension = solved.slings?.[code].tension ?? null
    const time = cordFactors(answers, solved.loads[code].case, true)
    return assessLink({
      link: 'gatheringTurn',
      part: section.part,
      side: 'hanger',
      case: code,
      demand: tension === null ? null : { value: tension, unit: 'N' },
      capacity: cord.capacity,
      factors: [{ code: 'strandsAtWraps', value: section.effective, basis: section.efficiency.basis, source: section.efficiency.source }, ...stillApplying(cord, time.factors)],
      grade: cord.grade,
      overallFactor: plain === null || watered === null ? null : (section.strands * plain.value) / watered,
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
  }))
}
