import { FILLER_SHARE } from '../catalogue/knots'
import { TIED_END } from '../catalogue/takeUp'
import { hangerGeometry } from '../check/geometry'
import { knotCord } from '../check/knotCord'
import { answersOfTier } from '../check/tiers/answersOfTier'
import { hasStick, liesLevel } from '../hanger/arrangement'
import type { Answers } from '../hanger/fields'
import { exactly, sumOf, type LengthRange } from './lengthRange'
import { along, allowance, cradleKnots, diameterOf, endOf, mountingOf, partsOfTier, runsUp, trimOf, type PartOfStrand, type StrandTop } from './strandParts'
import { STRAIGHT, takeUpOf, type StrandRole } from './takeUpOf'

export const CORD_ROLES = ['filler', 'working', 'mixed', 'strand', 'panel', 'ringCord', 'topCord', 'wrapping'] as const
export type CordRole = (typeof CORD_ROLES)[number]

/** Cords that are cut alike. */
export interface CordKind {
  readonly role: CordRole
  /** The uppermost pot it belongs to. */
  readonly tier: number
  readonly count: number
  /** The two halves of a cord that is folded where it is hung on, or one strand; each from its upper end down. */
  readonly strands: readonly (readonly PartOfStrand[])[]
  /** What to cut for one, m: all parts of all its strands. */
  readonly cut: LengthRange
}

const kindOf = (role: CordRole, tier: number, count: number, strands: CordKind['strands']): readonly CordKind[] =>
  (count === 0 ? [] : [{ role, tier, count, strands, cut: sumOf(strands.flat().map(({ cord }) => cord)) }])

/** Every kind of cord of a hanger; null where the lengths told leave nothing for a leg, or a panel's strands cannot go round its pot. */
export function cordKinds(answers: Answers): readonly CordKind[] | null {
  const strands = answers['make.arrangement'] === 'panel' ? panelKinds(answers) : legKinds(answers)
  return strands === null ? null : [...strands, ...ringCords(answers), ...topCord(answers), ...wrapping(answers)]
}

/** One run of strands from a top to an end: through one pot's legs, or on through those below. */
interface Run {
  readonly tiers: readonly number[]
  readonly top: StrandTop
}

function runsOf(answers: Answers): readonly Run[] {
  if (answers['make.arrangement'] !== 'tiers') return [{ tiers: [1], top: 'mounted' }]
  const tiers = Array.from({ length: answers['tiers.count'] }, (_, i) => i + 1)
  if (answers['tiers.how'] === 'runOn') return [{ tiers, top: 'mounted' }]
  return tiers.map((tier): Run => ({ tiers: [tier], top: tier === 1 || answers['tiers.how'] === 'ownCords' ? 'mounted' : 'tiedIn' }))
}

function legKinds(answers: Answers): readonly CordKind[] | null {
  const kinds = runsOf(answers).map((run) => kindsOfRun(answers, run))
  return kinds.some((kind) => kind === null) ? null : kinds.flatMap((kind) => kind ?? [])
}

function kindsOfRun(answers: Answers, { tiers, top }: Run): readonly CordKind[] | null {
  const first = tiers[0] ?? 1
  const strandOf = (role: StrandRole): readonly PartOfStrand[] | null => {
    const each = tiers.map((tier) => partsOfTier(tierAnswers(answers, tier), tier, role, tier === first ? top : 'runsOn'))
    return each.some((parts) => parts === null) ? null : [...each.flatMap((parts) => parts ?? []), trimOf(tiers.at(-1) ?? 1)]
  }
  const here = tierAnswers(answers, first)
  const [legs, strands] = [here['make.legs'], here['make.strands']]
  const build = here['make.build']
  if (build === 'plain' || build === 'alternating') {
    const strand = strandOf('strand')
    return strand === null ? null : pairs('strand', first, legs * strands, strand)
  }
  const [filler, working] = [strandOf('filler'), strandOf('working')]
  if (filler === null || working === null) return null
  const fillers = here['make.fillers'] ?? Math.floor(strands * FILLER_SHARE.value)
  const workers = strands - fillers
  // One left over of each in every leg make one cord: folded off its middle, its long half knots.
  const mixed = fillers % 2 === 1 && workers % 2 === 1 ? 1 : 0
  return [
    ...pairs('filler', first, legs * (fillers - mixed), filler),
    ...pairs('working', first, legs * (workers - mixed), working),
    ...kindOf('mixed', first, legs * mixed, [filler, working]),
  ]
}

const tierAnswers = (answers: Answers, tier: number): Answers => (answers['make.arrangement'] === 'tiers' ? answersOfTier(answers, tier) : answers)

/** Strands two to a folded cord; one left over is a cord by itself, tied on. */
function pairs(role: StrandRole, tier: number, strands: number, parts: readonly PartOfStrand[]): readonly CordKind[] {
  return [
    ...kindOf(role, tier, Math.floor(strands / 2), [parts, parts]),
    ...kindOf(role, tier, strands % 2, [[...parts, allowance('ends', tier, TIED_END, TIED_END.basis, TIED_END.source)]]),
  ]
}

/** All cords of a panel by the longest way, that round the front: the maker may cut those behind shorter. */
function panelKinds(answers: Answers): readonly CordKind[] | null {
  const { panel, knot } = hangerGeometry(answers)
  if (panel === null || !panel.ok) return null
  const height = answers['panel.height']
  const strand = [
    ...mountingOf(answers, 1),
    along('knotted', 1, height, takeUpOf(answers, 'strand'), ''),
    along('toKnot', 1, Math.max(0, panel.strand - height), STRAIGHT, 'from the panel’s edge round the front to the gathering knot'),
    ...cradleKnots(answers, 1, 1),
    ...endOf(answers, 1, knot),
    trimOf(1),
  ]
  return kindOf('panel', 1, answers['panel.cords'], [strand, strand])
}

/** Cords from a level ring up to the hook, where they are not the strands of the legs themselves. */
function ringCords(answers: Answers): readonly CordKind[] {
  if (!liesLevel(answers) || runsUp(answers)) return []
  const strand = [along('aboveRing', 1, answers['ring.rise'], STRAIGHT, 'from the hook down to the ring'), allowance('ends', 1, TIED_END, TIED_END.basis, TIED_END.source)]
  const strands = answers['ring.cords'] * answers['ring.cordStrands']
  return [...kindOf('ringCord', 1, Math.floor(strands / 2), [strand, strand]), ...kindOf('ringCord', 1, strands % 2, [strand])]
}

function topCord(answers: Answers): readonly CordKind[] {
  if (!hasStick(answers) || answers['stick.held'] !== 'topCord') return []
  const strand = [along('span', 1, answers['stick.topCord'], STRAIGHT, 'from one end of the stick over the hook to the other'), ...[1, 2].map(() => allowance('ends', 1, TIED_END, TIED_END.basis, TIED_END.source))]
  return kindOf('topCord', 1, answers['stick.topStrands'], [strand])
}

/** The wrapping cord of every gathering knot. */
function wrapping(answers: Answers): readonly CordKind[] {
  const tiers = answers['make.arrangement'] === 'tiers' ? answers['tiers.count'] : 1
  return Array.from({ length: tiers }, (_, i) => i + 1).flatMap((tier) => {
    const here = tierAnswers(answers, tier)
    const { bundle, length } = knotCord(here)
    const round = here['gathering.wraps'] * Math.PI * (bundle + diameterOf(here))
    const tails = here['gathering.tails']
    return kindOf('wrapping', tier, 1, [[
      allowance('wraps', tier, exactly(round), 'computed', 'wraps times once round the strands, measured along the middle of the cord'),
      allowance('fold', tier, exactly(length - round - tails), 'computed', 'the loop under the wraps, there and back'),
      allowance('tails', tier, exactly(tails), 'common practice', 'both ends, to pull on'),
    ]])
  })
}
