import { SUBSTRATE_ROUTES, type Substrate } from '../../catalogue/substrates'
import type { Answers } from '../../hanger/fields'
import type { CaseCode } from '../../load/loadCases'
import type { Finding } from '../finding'
import type { LinkResult } from '../linkResult'
import { placeDemand } from '../placeDemand'
import type { PlaceDemand } from '../placeLoad'
import type { Solved } from '../solved'
import { fixingByTable } from './fixing/fixingByTable'
import { withoutCapacity } from './fixing/fixingEvidence'
import { fixingRated } from './fixing/fixingRated'
import { fixingTimber } from './fixing/fixingTimber'
import { goesRound } from './fixing/goesRound'
import { refusalOf } from './fixing/refusalOf'
import { IN_TIMBER } from './fixing/threads'

/**
 * What holds the hook or bracket in the building, by what it is fixed into: refused (FIXING_REFUSED), gone round,
 * by its packet's rating, by the published formulas for timber, by the low figure of a table, or not enough
 * known, with what would settle it. The worst of its fixings; pull and shear together.
 */
export function fixingLink(solved: Solved): readonly LinkResult[] {
  const pulledForGood = pulls(solved, 'dry')
  return solved.wholeCases.flatMap((code) => fixingIn(solved, code, pulledForGood))
}

function pulls(solved: Solved, code: CaseCode): boolean {
  const asked = placeDemand(solved, code)
  return asked.ok && asked.pull > 0
}

function fixingIn(solved: Solved, code: CaseCode, pulledForGood: boolean): readonly LinkResult[] {
  const { answers } = solved.hanger
  const asked = placeDemand(solved, code)
  const refused = refusalOf(answers, pulledForGood)
  if (refused !== null) return [withoutCapacity(solved, code, asked, [{ code: 'FIXING_REFUSED', what: refused }], 'fails')]
  if (answers['place.support'] === 'overBeam') return [goesRound(solved, code)]
  if (answers['place.substrate'] === 'unknown') return [withoutCapacity(solved, code, asked, [{ code: 'SUBSTRATE_UNKNOWN' }], 'not enough known')]
  if (!asked.ok) return [withoutCapacity(solved, code, asked, [asked.finding], asked.fails ? 'fails' : 'not enough known')]
  const rated = answers['fixing.rated']
  return rated === null ? unrated(solved, code, asked) : [fixingRated(solved, code, asked, rated)]
}

function unrated(solved: Solved, code: CaseCode, asked: PlaceDemand): readonly LinkResult[] {
  const { answers } = solved.hanger
  const unknown = (finding: Finding): readonly LinkResult[] => [withoutCapacity(solved, code, asked, [finding], 'not enough known')]
  const route = routeOf(answers)
  if (route === 'byTimber') {
    const kind = answers['fixing.kind']
    if (kind === 'unknown') return unknown({ code: 'FIXING_KIND_UNKNOWN' })
    return IN_TIMBER[kind] === null ? unknown({ code: 'FIXING_NOT_FOR_TIMBER', kind }) : fixingTimber(solved, code, asked)
  }
  if (route === 'byPacket' || route === 'byBoard') return fixingByTable(solved, code, asked)
  return unknown({ code: 'GO_ROUND_INSTEAD', substrate: answers['place.substrate'] })
}

/** The way a substrate is judged; a rod, which is refused unless rated, as what is gone round. */
const routeOf = ({ 'place.substrate': substrate }: Answers) => (Object.hasOwn(SUBSTRATE_ROUTES, substrate) ? SUBSTRATE_ROUTES[substrate as Substrate] : 'tiedRound')
