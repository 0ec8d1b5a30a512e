import { TUG_PULL } from '../catalogue/jolts'
import type { Answers } from '../hanger/fields'
import { pullerOf } from '../load/reach'
import type { Finding } from './finding'
import type { LinkResult } from './linkResult'
import type { Solved } from './solved'

/** A distance to keep is told no finer than this, and upwards, m. */
const ROUNDED_TO = 0.05

const degrees = (angle: number): number => (angle * 180) / Math.PI

/** What moves a hanger, told of the whole: LEANS_IN_WIND outdoors, TUG_RECKONED where somebody may pull at it. */
export function dynamicFindings(solved: Solved): readonly Finding[] {
  const { answers } = solved.hanger
  const { gust } = solved
  const reach = swingReach(solved)
  const puller = pullerOf(answers)
  return [
    ...(gust === null ? [] : [{ code: 'LEANS_IN_WIND', speed: gust.speed, lean: degrees(gust.lean), swing: degrees(gust.swing), reach, strikes: reach !== null && reach > fromWall(answers) } as const]),
    ...(puller === null ? [] : [{ code: 'TUG_RECKONED', who: puller, pull: TUG_PULL[puller].value, assumed: answers['place.reach'] === 'unknown' } as const]),
  ]
}

/** From its plumb line to the wall that its hook or bracket is in, m; Infinity under a ceiling or beam. */
function fromWall(answers: Answers): number {
  switch (answers['place.support']) {
    case 'wallHook': return 0
    case 'bracket': case 'swingArm': return answers['bracket.reach']
    case 'ceilingHook': case 'overBeam': return Infinity
  }
}

/** How far pot or leaves may come from the plumb line in a gust, m; null where it does not hang. */
function swingReach({ hanger: { answers }, gust, tiers, geometry: { path, top, drop } }: Solved): number | null {
  if (gust === null || !path.ok || top === null) return null
  const depth = tiers.length > 0 && drop !== null ? drop : top + path.top + answers['make.fringe']
  const reach = depth * Math.sin(Math.min(gust.swing, Math.PI / 2)) + Math.max(path.leave.r, answers['plant.width'] / 2)
  return Math.ceil(reach / ROUNDED_TO) * ROUNDED_TO
}

/**
 * Where nobody said who can reach it, a child is assumed over people; what fails only under a child's pull is not
 * enough known instead.
 */
export function temperReach(solved: Solved, links: readonly LinkResult[]): readonly LinkResult[] {
  const { answers } = solved.hanger
  if (answers['place.reach'] !== 'unknown' || pullerOf(answers) === null) return links
  // What is known to fail whoever pulls (a refused hook) says so in other cases too.
  const failsAnyway = (link: LinkResult): boolean => links.some((l) => l.link === link.link && l.case !== 'tug' && l.verdict === 'fails')
  return links.map((link): LinkResult => (link.case !== 'tug' || link.verdict !== 'fails' || failsAnyway(link)
    ? link
    : { ...link, verdict: 'not enough known', findings: [...link.findings, { code: 'ASSUMED_PART_FAILS', path: 'place.reach', assumed: 'child' }] }))
}
