import type { Basis } from '../catalogue/basis'
import { UNMEASURED_DIAMETER } from '../catalogue/cords'
import { FRINGE_TRIM, LARKS_HEAD_TURNS, SINNET_TAKE_UP, SQUARE_KNOT_HEIGHT } from '../catalogue/takeUp'
import { hangerGeometry } from '../check/geometry'
import { hangsFrom, liesLevel } from '../hanger/arrangement'
import type { Answers } from '../hanger/fields'
import { exactly, times, type LengthRange } from './lengthRange'
import { STRAIGHT, takeUpOf, type StrandRole, type TakeUp } from './takeUpOf'

export const CORD_PARTS = ['aboveRing', 'mounting', 'knotted', 'plain', 'toKnot', 'cradleKnots', 'gatheringKnot', 'fringe', 'trim', 'ends', 'wraps', 'fold', 'tails', 'span'] as const
export type CordPart = (typeof CORD_PARTS)[number]

/** One part of a strand from its upper end down: its length once made, and the cord that goes into it. */
export interface PartOfStrand {
  readonly code: CordPart
  /** Which of several pots one under another; 1 elsewhere. */
  readonly tier: number
  /** m; null where cord is only an allowance. */
  readonly finished: number | null
  readonly takeUp: TakeUp | null
  /** Cord it takes, m: finished times take-up, or the allowance. */
  readonly cord: LengthRange
  readonly basis: Basis
  readonly source: string
}

export const along = (code: CordPart, tier: number, finished: number, takeUp: TakeUp, source: string): PartOfStrand =>
  ({ code, tier, finished, takeUp, cord: times(takeUp, finished), basis: takeUp.basis, source: takeUp === STRAIGHT ? source : takeUp.source })
export const allowance = (code: CordPart, tier: number, cord: LengthRange, basis: Basis, source: string): PartOfStrand =>
  ({ code, tier, finished: null, takeUp: null, cord, basis, source })

export const diameterOf = (answers: Pick<Answers, 'cord.diameter'>): number => answers['cord.diameter'] ?? UNMEASURED_DIAMETER.value

/** Round what it hangs on, once for each half of a folded cord; nothing where it lies over the hook itself. */
export function mountingOf(answers: Answers, tier: number): readonly PartOfStrand[] {
  const from = hangsFrom(answers)
  if (from === 'bunched') return []
  const bar = from === 'stick' ? answers['stick.diameter'] : answers['ring.wire']
  return [allowance('mounting', tier, exactly(LARKS_HEAD_TURNS.value * Math.PI * (bar + diameterOf(answers))), LARKS_HEAD_TURNS.basis, LARKS_HEAD_TURNS.source)]
}

/** Cord that the rows of a net take beyond its height; any strand may be the one that ties. */
export function cradleKnots(answers: Answers, tier: number, rows: number): readonly PartOfStrand[] {
  if (answers['cradle.kind'] === 'open' || rows === 0) return []
  const one = (end: 'low' | 'likely' | 'high'): number => rows * diameterOf(answers) * SQUARE_KNOT_HEIGHT[end] * (SINNET_TAKE_UP[end] - 1)
  return [allowance('cradleKnots', tier, { low: one('low'), likely: one('likely'), high: one('high') }, SINNET_TAKE_UP.basis, `${rows} ${rows === 1 ? 'square knot' : 'square knots'} in each strand; ${SINNET_TAKE_UP.source}`)]
}

/** The wraps, and what hangs below them. */
export const endOf = (answers: Answers, tier: number, knot: number): readonly PartOfStrand[] => [
  along('gatheringKnot', tier, knot, STRAIGHT, 'through the wraps'),
  ...(answers['make.fringe'] > 0 ? [along('fringe', tier, answers['make.fringe'], STRAIGHT, 'below the wraps')] : []),
]

export const trimOf = (tier: number): PartOfStrand => allowance('trim', tier, FRINGE_TRIM, FRINGE_TRIM.basis, FRINGE_TRIM.source)

/** Whether the strands of the legs themselves run up from a level ring to the hook. */
export const runsUp = (answers: Answers): boolean =>
  liesLevel(answers) && answers['ring.cords'] === answers['make.legs'] && answers['ring.cordStrands'] === answers['make.strands']

/** Where a strand begins: on ring, stick or hook; tied in under the wraps of the pot above; or running on through them. */
export type StrandTop = 'mounted' | 'tiedIn' | 'runsOn'

/**
 * A strand of one pot, from its upper end down to its lower one: null where the length told leaves nothing
 * for the leg.
 */
export function partsOfTier(answers: Answers, tier: number, role: StrandRole, top: StrandTop): readonly PartOfStrand[] | null {
  const { strand, knot } = hangerGeometry(answers)
  const first = answers['cradle.first']
  const leg = strand - first
  if (leg <= 0) return null
  const isPlain = answers['make.build'] === 'plain'
  const knotted = isPlain ? 0 : Math.min(answers['make.knotted'] ?? leg, leg)
  const rows = answers['cradle.second'] === null ? 1 : 2
  return [
    ...(top === 'mounted' && runsUp(answers) ? [along('aboveRing', tier, answers['ring.rise'], STRAIGHT, 'from the hook down to the ring')] : []),
    ...(top === 'mounted' ? mountingOf(answers, tier) : top === 'tiedIn' ? [along('gatheringKnot', tier, knot, STRAIGHT, 'through the wraps above')] : []),
    ...(knotted > 0 ? [along('knotted', tier, knotted, takeUpOf(answers, role), '')] : []),
    ...(leg > knotted ? [along('plain', tier, leg - knotted, STRAIGHT, 'plain strand down to the cradle')] : []),
    along('toKnot', tier, first, STRAIGHT, 'from the cradle’s first knots to the gathering knot'),
    ...cradleKnots(answers, tier, rows),
    ...endOf(answers, tier, knot),
  ]
}
