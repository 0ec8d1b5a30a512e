import { RESERVE } from '../catalogue/reserves'
import type { Assumed, Hanger } from '../hanger/hanger'
import { defaultCounts } from '../hanger/relevance'
import { care, type Care } from './care'
import { cautionsFor, type Caution } from './cautions'
import { dynamicFindings, temperReach } from './dynamicFindings'
import { besideLifeLines } from './factorGuidance'
import type { Finding } from './finding'
import { temperInspected } from './inspected'
import { LINKS, type LinkResult, type Side } from './linkResult'
import { LOAD_PATH } from './loadPath'
import { ownReserve, reserveWithoutReason } from './ownReserve'
import { panelRedundancy } from './panel/panelRedundancy'
import { redundancy, type Redundancy } from './redundancy'
import { solve } from './solve'
import type { Solved } from './solved'
import { temperLowReserve } from './temperLowReserve'
import { tierFindings } from './tiers/tierFindings'
import { withAnswers } from './tiers/withAnswers'
import { isWorse, worstOf, type Verdict } from './verdict'

/** A complete check of a hanger. */
export interface CheckResult {
  readonly solved: Solved
  readonly links: readonly LinkResult[]
  readonly verdict: Verdict
  readonly verdicts: Readonly<Record<Side, Verdict>>
  /** The link and case that decide: the largest utilisation of the worst verdict. */
  readonly governing: LinkResult | null
  readonly redundancy: Redundancy
  /** When to replace it and when to look at it. */
  readonly care: Care
  /** What was assumed and has a bearing on this hanger, less what nobody mentions. */
  readonly assumed: readonly Assumed[]
  readonly cautions: readonly Caution[]
  /** Findings on the whole; those of a link are with it. */
  readonly findings: readonly Finding[]
}

/**
 * Second stage of a check: every link of the load path, and the whole. Findings on the whole:
 * REDUNDANCY_STRAND and REDUNDANCY_LEG always (of a panel REDUNDANCY_PANEL), WEIGHED_STATE_ASSUMED where a weight came without its
 * state, RESERVE_CHANGED or RESERVE_NEEDS_REASON where the maker gave a reserve of their own, FORCE_FROM_MASS
 * where a force was given as a mass, LEANS_IN_WIND outdoors, TUG_RECKONED where somebody may pull at it,
 * LOWER_NOT_WEIGHED, TIERS_OWN_CORDS and TIERS_HELD_BY_WRAPS of pots one under another.
 */
export function assess(solved: Solved): CheckResult {
  const { answers, assumed } = solved.hanger
  const links = temperReach(solved, temperBeneath(solved, linksOf(solved)))
  const on = (side: Side): Verdict => worstOf(links.filter((l) => l.side === side).map((l) => l.verdict))
  const left = redundancy(solved)
  const findings: Finding[] = [{ code: 'REDUNDANCY_STRAND', outcome: left.strand }, legGone(solved, left)]
  findings.push(...dynamicFindings(solved), ...tierFindings(solved))
  if (answers['weighed.mass'] !== null && !solved.hanger.given.has('weighed.state')) findings.unshift({ code: 'WEIGHED_STATE_ASSUMED' })
  findings.unshift(...reserveFindings(solved), ...solved.hanger.asMass.map((path): Finding => ({ code: 'FORCE_FROM_MASS', path, force: answers[path] as number })))
  return {
    solved,
    links,
    verdict: worstOf(links.map((l) => l.verdict)),
    verdicts: { hanger: on('hanger'), place: on('place') },
    governing: governingOf(links),
    redundancy: left,
    care: care(solved),
    assumed: assumed.filter((a) => !a.tacit && defaultCounts(a.path, answers)),
    cautions: cautionsFor(answers),
    findings,
  }
}

/** What happens without a leg, or of a panel without a group of its strands. */
function legGone(solved: Solved, { leg }: Redundancy): Finding {
  if (solved.geometry.panel === null) return { code: 'REDUNDANCY_LEG', outcome: leg }
  const { front, back } = panelRedundancy(solved)
  return { code: 'REDUNDANCY_PANEL', front, back }
}

const linksOf = (solved: Solved): readonly LinkResult[] =>
  temperInspected(solved, besideLifeLines(solved.hanger.answers, temperLowReserve(solved.hanger.answers, LINKS.flatMap((link) => LOAD_PATH[link](solved)))))

/** On a reserve of the maker's own: that it counts, with its reason, or that it does not for want of one. */
function reserveFindings({ hanger: { answers } }: Solved): readonly Finding[] {
  const changed = ownReserve(answers)
  if (changed !== null) return [{ code: 'RESERVE_CHANGED', ...changed }]
  return reserveWithoutReason(answers) ? [{ code: 'RESERVE_NEEDS_REASON', own: answers['reserve.own'] ?? 0, usual: RESERVE[answers['place.beneath']].value }] : []
}

/**
 * Where it was not said what is beneath, the strictest is assumed; what fails only for that reason is
 * not enough known instead.
 */
function temperBeneath(solved: Solved, links: readonly LinkResult[]): readonly LinkResult[] {
  const guess = solved.hanger.assumed.find((a) => a.path === 'place.beneath')
  if (guess === undefined || links.every((l) => l.verdict !== 'fails')) return links
  const mildest = linksOf(withAnswers(solved, { 'place.beneath': 'nothing' }))
  const failsAnyway = new Set(mildest.filter((l) => l.verdict === 'fails').map((l) => l.id))
  return links.map((link): LinkResult => (link.verdict !== 'fails' || failsAnyway.has(link.id)
    ? link
    : { ...link, verdict: 'not enough known', findings: [...link.findings, { code: 'ASSUMED_PART_FAILS', path: guess.path, assumed: guess.text }] }))
}

/** Checks a hanger: solve, then assess. Pure: the same hanger gives the same result. */
export const checkHanger = (hanger: Hanger): CheckResult => assess(solve(hanger))

/**
 * The link that decides among results: the worst verdict, then the largest utilisation; a known one
 * before an unknown one, the first of equals; null among none.
 * @example governingOf([]) // null
 */
export function governingOf(links: readonly LinkResult[]): LinkResult | null {
  const decides = (l: LinkResult, over: LinkResult): boolean =>
    (l.verdict === over.verdict ? (l.utilisation ?? -1) > (over.utilisation ?? -1) : isWorse(l.verdict, over.verdict))
  return links.reduce<LinkResult | null>((worst, l) => (worst === null || decides(l, worst) ? l : worst), null)
}
