import { PLAIN_STRAND, TURN_INTO_WRAPS } from '../../../catalogue/knots'
import type { CaseCode } from '../../../load/loadCases'
import { inCase, stillApplying } from '../../cordStrength'
import { juteDamp } from '../../juteDamp'
import { assessLink, type LinkResult } from '../../linkResult'
import { panelGroups, type PanelGroup } from '../../panel/panelGroups'
import { saySettlingTests } from '../../saySettlingTests'
import type { Solved } from '../../solved'
import { entering, fromCatalogue, worked } from '../../term'
import { cordFactors } from '../../timeFactors'
import { groupTerms } from './panelTerms'

/** The strands in front, or those behind, whose strands pull hardest. */
const hardest = (groups: readonly PanelGroup[]): PanelGroup =>
  groups.reduce((most, group) => ((group.tension ?? 0) / group.strands > (most.tension ?? 0) / most.strands ? group : most))

/** A panel's strands where they turn from under the base into the wraps, those that pull hardest; no friction over the pot is counted on. */
export function panelTurnLink(solved: Solved): readonly LinkResult[] {
  const { answers } = solved.hanger
  const plain = solved.cord.wrap.dry.capacity
  const damp = juteDamp(answers)
  const at = (code: CaseCode): PanelGroup => hardest(panelGroups(solved, code))
  const watered = at('watered')
  return saySettlingTests(solved, solved.wholeCases.map((code) => {
    const group = at(code)
    const cord = inCase(solved.cord.leg, solved.loads[code].case)
    const efficiency = cord.tied ? PLAIN_STRAND : TURN_INTO_WRAPS
    const time = cordFactors(answers, solved.loads[code].case, true)
    return assessLink({
      link: 'gatheringTurn', part: 'turn', side: 'hanger', case: code,
      demand: group.tension === null ? null : { value: group.tension, unit: 'N' },
      capacity: cord.capacity,
      factors: [{ code: 'strandsAtWraps', value: group.strands * efficiency.value, basis: efficiency.basis, source: efficiency.source }, ...stillApplying(cord, time.factors)],
      grade: cord.grade,
      overallFactor: plain === null || watered.tension === null ? null : (watered.strands * plain.value) / watered.tension,
      atLeast: damp?.atLeast ?? 'holds',
      findings: damp === null ? cord.findings : [...cord.findings, damp.finding],
      terms: [
        ...groupTerms(solved, code, group),
        ...cord.terms,
        entering('strandsThatCarry', 'n_c', group.strands, '1', 'your own', 'strands of one group that turn into the wraps'),
        fromCatalogue('efficiency', 'eta', efficiency),
        worked('strandsAtWraps', 'n_eff', group.strands * efficiency.value, '1', 'n_c * eta', efficiency.source),
        ...time.terms,
      ],
    })
  }))
}
