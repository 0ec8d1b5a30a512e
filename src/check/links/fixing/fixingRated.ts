import type { Answers } from '../../../hanger/fields'
import type { CaseCode } from '../../../load/loadCases'
import { SHEAR_AS_PULL_OUT } from '../../../catalogue/places'
import type { Finding } from '../../finding'
import type { LinkResult } from '../../linkResult'
import type { PlaceDemand } from '../../placeLoad'
import type { Solved } from '../../solved'
import { entering, fromCatalogue, worked } from '../../term'
import { ratedFactors } from '../ringLink'
import { assessPlace } from './assessPlace'
import { atOnce, fixingBase, withoutCapacity } from './fixingEvidence'

/** Whether a packet that does not say its way surely means the pull: of a screw hook or screw in timber, or a metal anchor, in a ceiling. */
function meansPullOut(answers: Answers): boolean {
  const kind = answers['fixing.kind']
  const screwed = kind === 'screwHook' || kind === 'woodScrew' || kind === 'lagScrew'
  return answers['place.support'] === 'ceilingHook' && (kind === 'metalAnchor' || (screwed && answers['place.substrate'] === 'timber'))
}

/**
 * A fixing by the rating on its packet for this very material. Where it is pulled out, a rating for shear says
 * nothing (RATING_FOR_SHEAR); one that does not say its way says nothing either where the packet may have
 * meant shear, else it just holds at best (RATING_WAY_UNSAID). Down along a wall a rating for pull-out counts too.
 */
export function fixingRated(solved: Solved, code: CaseCode, asked: PlaceDemand, rated: number): LinkResult {
  const { answers } = solved.hanger
  const way = answers['fixing.ratedFor']
  if (asked.pull > 0 && way === 'shear') return withoutCapacity(solved, code, asked, [{ code: 'RATING_FOR_SHEAR', rated }], 'not enough known')
  const unsaid = asked.pull > 0 && way === 'unknown'
  const capped = meansPullOut(answers)
  const findings: readonly Finding[] = unsaid ? [{ code: 'RATING_WAY_UNSAID', capped }] : []
  if (unsaid && !capped) return withoutCapacity(solved, code, asked, findings, 'not enough known')
  const along = way === 'shear' ? rated : answers['fixing.ratedShear']
  const { factors, terms } = ratedFactors(solved, code)
  const scale = atOnce(asked, {
    pull: rated,
    pullTerms: [entering('capacity', 'R', rated, 'N', 'your own', 'packet rating of the fixing in this material, straight out')],
    shear: along ?? rated * SHEAR_AS_PULL_OUT.value,
    shearTerms: along === null
      ? [
        ...(asked.pull > 0 ? [] : [entering('pullOutRating', 'R_N', rated, 'N', 'your own', 'packet rating of the fixing in this material')]),
        fromCatalogue('shearShare', 'k_V', SHEAR_AS_PULL_OUT),
        worked('alongCapacity', 'R_V', rated * SHEAR_AS_PULL_OUT.value, 'N', asked.pull > 0 ? 'k_V * R' : 'k_V * R_N', 'along the wall no more is counted than straight out'),
      ]
      : [entering('alongCapacity', 'R_V', along, 'N', 'your own', 'packet rating along the wall')],
  })
  return assessPlace(solved, {
    ...fixingBase(code), part: 'rated', demand: scale.demand,
    capacity: { value: scale.capacity, unit: 'N', basis: 'your own', source: 'packet rating of the fixing in this material' },
    factors, grade: 'rated', atLeast: unsaid ? 'just holds' : 'holds', findings, terms: [...asked.terms, ...scale.terms, ...terms],
  })
}
