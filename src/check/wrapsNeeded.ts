import { FIELDS } from '../hanger/fields'
import { CASES, type CaseCode } from '../load/loadCases'
import { STANDARD_GRAVITY } from '../quantity/si'
import { hangerGeometry } from './geometry'
import { gripByModel, gripCases } from './links/gatheringGripLink'
import { planOf } from './planOf'
import { solveBattery } from './slingBattery'
import { legStiffness } from './solve'
import type { CaseSling, Solved } from './solved'

/** The fewest wraps whose grip would do by the model, and the case that asks for them. */
export type NeededWraps =
  | { readonly ok: true; readonly wraps: number; readonly case: CaseCode }
  /** The strands do not reach round the pot or no balance was found; or not even the most wraps that may be entered would do. */
  | { readonly ok: false; readonly reason: 'notSolved' | 'beyondMost' }

const MOST = FIELDS['gathering.wraps'].max
/** A model without a test is trusted up to here: beyond it the link is "not enough known". */
const LIMIT = 1

/**
 * The fewest wraps with which the link of the grip, by its model alone, asks in no case for more than it allows;
 * with one fewer it does. More wraps make the knot longer and, where the whole hanger is of given length, its
 * legs shorter and so their pull larger: the sling is solved anew for each number tried.
 */
export function wrapsNeeded(solved: Solved): NeededWraps {
  const tied = solved.hanger.answers['gathering.wraps']
  const now = gripUsed(solved, tied)
  if (now === null) return { ok: false, reason: 'notSolved' }
  // In proportion to start with: the pull hardly changes.
  let wraps = Math.min(MOST, Math.max(1, Math.ceil(now.atRestOrJolted * tied - 1e-9)))
  let here = gripUsed(solved, wraps)
  while (here !== null && here.worst > LIMIT && wraps < MOST) here = gripUsed(solved, ++wraps)
  if (here === null || here.worst > LIMIT) return { ok: false, reason: 'beyondMost' }
  while (wraps > 1) {
    const fewer = gripUsed(solved, wraps - 1)
    if (fewer === null || fewer.worst > LIMIT) break
    wraps--
    here = fewer
  }
  return { ok: true, wraps, case: here.case }
}

interface GripUsed {
  /** The largest utilisation and its case; endless where a dropped knot would not stop. */
  readonly worst: number
  readonly case: CaseCode
  /** The largest of the cases in which the knot is not asked to stop a fall. */
  readonly atRestOrJolted: number
}

/** How far the grip of so many wraps is used; null where that is not known. */
function gripUsed(solved: Solved, wraps: number): GripUsed | null {
  const held = gripByModel(withWraps(solved, wraps))
  const known = held.filter((l) => l.utilisation !== null)
  if (known.length === 0) return null
  const used = held.map((l) => ({ worst: l.utilisation ?? Infinity, case: l.case }))
  const worst = used.reduce((a, b) => (b.worst > a.worst ? b : a))
  return { ...worst, atRestOrJolted: Math.max(...known.filter((l) => l.part === 'gripModel').map((l) => l.utilisation ?? 0)) }
}

/** The hanger with so many wraps of a cord as long as they take, its sling solved as drawn where the grip asks for it. */
function withWraps(solved: Solved, wraps: number): Solved {
  const answers = { ...solved.hanger.answers, 'gathering.wraps': wraps, 'gathering.cordLength': null }
  const hanger = { ...solved.hanger, answers }
  // Drawn down by a pot below, its knot counts as long as it is now.
  if (wraps === solved.hanger.answers['gathering.wraps'] || solved.drawnKnot !== null) return { ...solved, hanger }
  const geometry = hangerGeometry(answers)
  const plan = planOf(geometry)
  if (plan === null || solved.slings === null) return { ...solved, hanger, geometry, plan, slings: null }
  const stiffness = legStiffness(answers, solved.cord)
  const drawn = new Map<CaseCode, CaseSling>(gripCases(solved).map((code) => {
    const load = solved.loads[code]
    return [code, solveBattery({ plan, stiffness, bedded: stiffness, mass: load.weight / STANDARD_GRAVITY, centre: solved.potted[load.case.state].centre, offset: 0, tolerance: 0 })]
  }))
  const slings = Object.fromEntries(CASES.map((code) => [code, drawn.get(code) ?? solved.slings?.[code]])) as Record<CaseCode, CaseSling>
  return { ...solved, hanger, geometry, plan, slings }
}
