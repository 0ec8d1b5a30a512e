import { FIELD_PATHS, fieldOf, type FieldPath } from '../../hanger/fields'
import { isRelevant } from '../../hanger/relevance'
import type { Finding } from '../finding'
import { assessLink, type LinkResult } from '../linkResult'
import type { Solved } from '../solved'
import { pottedTogether } from '../tiers/pottedTogether'

/** What must be answered before anything certain can be said, and when it does not matter after all. */
function needed(solved: Solved): readonly FieldPath[] {
  const { answers, given } = solved.hanger
  const noPot = answers['pot.have'] === 'no'
  const noHanger = answers['make.have'] === 'no'
  return FIELD_PATHS.filter((path) => {
    if (!fieldOf(path).essential || given.has(path)) return false
    // Neither legs nor their strands are asked of a panel, nor what a pot is made of that was weighed, or is not there.
    if (!isRelevant(path, answers)) return false
    if (path === 'pot.material') return answers['pot.emptyMass'] === null
    if (path === 'pot.rim') return !noPot
    return !noHanger
  })
}

/**
 * The load itself: not a part that breaks, but without a pot, a hanger or an essential answer nothing
 * is certain. One result with its findings (NO_POT_YET, NO_HANGER_YET, ANSWER_NEEDED, WEIGHED_TOO_LIGHT,
 * WIND_THROWS), none where all is said.
 */
export function loadLink(solved: Solved): readonly LinkResult[] {
  const { answers, assumed } = solved.hanger
  const findings: Finding[] = []
  if (answers['pot.have'] === 'no') findings.push({ code: 'NO_POT_YET' })
  if (answers['make.have'] === 'no') findings.push({ code: 'NO_HANGER_YET' })
  for (const path of needed(solved)) findings.push({ code: 'ANSWER_NEEDED', path, assumed: assumed.find((a) => a.path === path)?.text ?? '' })
  if (answers['pot.have'] === 'yes' && Object.values(pottedTogether(solved)).some((state) => state.tooLight)) findings.push({ code: 'WEIGHED_TOO_LIGHT' })
  if (solved.gust?.throws === true) findings.push({ code: 'WIND_THROWS', speed: solved.gust.speed, force: solved.gust.force })
  if (findings.length === 0) return []
  return [assessLink({
    link: 'load', part: 'whole', side: 'hanger', case: 'watered', demand: null, capacity: null, factors: [], grade: 'table',
    overallFactor: null, atLeast: 'not enough known', findings, terms: [],
  })]
}
