import { TEST_SHARE_AT_REST } from '../../../catalogue/testHang'
import { CASES_AT_REST, type CaseCode } from '../../../load/loadCases'
import { STANDARD_GRAVITY } from '../../../quantity/si'
import type { Finding } from '../../finding'
import { factor, reserve, type LinkResult } from '../../linkResult'
import { placeLoad, type PlaceDemand } from '../../placeLoad'
import type { Solved } from '../../solved'
import { entering, worked } from '../../term'
import { allowableReserve, reserveTerms } from '../../timeFactors'
import { isWorse } from '../../verdict'
import { ratedFactors } from '../ringLink'
import { assessPlace } from './assessPlace'
import { fixingBase, withoutCapacity } from './fixingEvidence'
import { ratedBar } from './refusalOf'

/** Beams of a building, which carry a floor or roof. */
const BUILDING_BEAMS: readonly string[] = ['steelBeam', 'timber', 'concrete']
const BARS: readonly string[] = ['rail', 'curtainRod', 'showerRod', 'towelRod']

/**
 * Nothing is fixed: a cord or strap goes round it. A beam of the building carries far more than a pot, and just
 * holds by that (BEAM_CARRIES); a rail or rod by its rating, a rail or branch by a pull in place, else not known
 * (RAIL_NEEDS_RATING, BRANCH_UNTESTED); what has nothing to go round neither (NOTHING_TO_GO_ROUND). A cord over the
 * edges of a beam wears through (CORD_OVER_EDGE).
 */
export function goesRound(solved: Solved, code: CaseCode): LinkResult {
  const { answers } = solved.hanger
  const substrate = answers['place.substrate']
  const { load, symbol, terms } = placeLoad(solved, code)
  const asked: PlaceDemand = { ok: true, pull: load, shear: 0, load, terms: [...terms, worked('pullOut', 'E_N', load, 'N', symbol, 'all of it hangs straight down')] }
  const unknown = (finding: Finding): LinkResult => withoutCapacity(solved, code, asked, [finding], 'not enough known')
  if (BUILDING_BEAMS.includes(substrate)) return { ...withoutCapacity(solved, code, asked, [{ code: 'BEAM_CARRIES' }, { code: 'CORD_OVER_EDGE' }], 'holds'), verdict: 'just holds' }
  const rated = BARS.includes(substrate) ? ratedBar(answers) : null
  if (rated !== null) {
    const { factors, terms: ratedTerms } = ratedFactors(solved, code)
    return assessPlace(solved, {
      ...fixingBase(code), part: 'rated', demand: { value: load, unit: 'N' }, capacity: { value: rated, unit: 'N', basis: 'your own', source: 'rated load of the rail with its brackets' },
      factors, grade: 'rated', atLeast: 'holds', findings: [], terms: [...asked.terms, worked('demand', 'E', load, 'N', 'E_N', 'straight down'), ...ratedTerms],
    })
  }
  if (substrate === 'rail') return pulledInPlace(solved, code, asked) ?? unknown({ code: 'RAIL_NEEDS_RATING', testMass: massToPull(solved) })
  if (substrate === 'branch') return pulledInPlace(solved, code, asked) ?? unknown({ code: 'BRANCH_UNTESTED', testMass: massToPull(solved) })
  return unknown(substrate === 'unknown' ? { code: 'SUBSTRATE_UNKNOWN' } : { code: 'NOTHING_TO_GO_ROUND' })
}

const isAtRest = (code: CaseCode): boolean => (CASES_AT_REST as readonly CaseCode[]).includes(code)

/** What has borne a pull in place bears half of it for good; beyond that nothing is known, and the answer is null. */
function pulledInPlace(solved: Solved, code: CaseCode, asked: PlaceDemand): LinkResult | null {
  const { answers } = solved.hanger
  const proof = answers['fixing.proof']
  if (proof === null) return null
  const reserveOf = allowableReserve(answers, solved.loads[code].case)
  const borne = proof * STANDARD_GRAVITY
  const result = assessPlace(solved, {
    ...fixingBase(code), part: 'pulledInPlace', demand: { value: asked.load, unit: 'N' }, capacity: { value: borne, unit: 'N', basis: 'your own', source: 'pull in place' },
    factors: [...(isAtRest(code) ? [factor('atRest', TEST_SHARE_AT_REST)] : []), reserve(reserveOf)], grade: 'tested', atLeast: 'holds', findings: [],
    terms: [
      ...asked.terms, worked('demand', 'E', asked.load, 'N', 'E_N', 'straight down'),
      entering('proofMass', 'm_proof', proof, 'kg', 'your own', 'what was pulled or hung on it in place'), worked('capacity', 'R', borne, 'N', 'm_proof * g', 'pull in place'),
      ...reserveTerms(reserveOf),
    ],
  })
  return isWorse(result.verdict, 'just holds') ? null : result
}

/** What to pull with, so that it settles every case, kg. */
const massToPull = (solved: Solved): number => Math.max(...solved.wholeCases.map((code) => {
  const share = isAtRest(code) ? TEST_SHARE_AT_REST.value : 1
  return (placeLoad(solved, code).load * allowableReserve(solved.hanger.answers, solved.loads[code].case).value) / share / STANDARD_GRAVITY
}))
