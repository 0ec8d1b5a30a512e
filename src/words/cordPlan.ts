import type { CordKind, CordRole } from '../cordPlan/cordKinds'
import type { CordCost, CordPlan, CordPlanOutcome, Known, PlanNote } from '../cordPlan/cordPlan'
import type { LengthRange } from '../cordPlan/lengthRange'
import type { CordPart, PartOfStrand } from '../cordPlan/strandParts'
import type { FieldPath } from '../hanger/fields'
import { lengthText, lengthUpText, massText, numberText, plainLengthText } from './amounts'
import { FIELD_WORDS } from './fields'
import { tierName } from './tiers'
import { withMark } from './writing'

export const PLAN_TITLE = 'Cord plan'
export const PLAN_COLUMNS = ['Cord', 'How many', 'Cut each to', 'It takes', 'Hung'] as const
export const PART_COLUMNS = ['One strand, from its upper end', 'Once made', 'Cord for each length', 'Cord it takes', 'How that is known'] as const

const ROLE_NAMES: Readonly<Record<CordRole, string>> = {
  filler: 'Filler cords', working: 'Working cords', mixed: 'Cords that fill with one half and work with the other', strand: 'Cords of the legs', panel: 'Cords of the panel',
  ringCord: 'Cords above the ring', topCord: 'Top cord', wrapping: 'Wrapping cord',
}
const PART_NAMES: Readonly<Record<CordPart, string>> = {
  aboveRing: 'up from the ring to the hook', mounting: 'round what it hangs on', knotted: 'knotted', plain: 'plain', toKnot: 'down to the gathering knot', cradleKnots: 'knots of the cradle',
  gatheringKnot: 'through the wraps', fringe: 'fringe', trim: 'to trim', ends: 'to tie its end', wraps: 'wraps', fold: 'loop under the wraps', tails: 'ends to pull on', span: 'over the hook',
}

/** Cord is cut by whole steps, m: where it was reckoned as a range, coarser ones. */
const STEP = { exact: 0.01, range: 0.05 } as const
const isExact = ({ low, high }: LengthRange): boolean => high - low < 1e-9

/** @example lengthRangeText({ low: 4.8, likely: 5.4, high: 6.63 }) // '4.8 m to 6.63 m' */
export const lengthRangeText = (range: LengthRange): string => (isExact(range) ? plainLengthText(range.likely) : `${plainLengthText(range.low)} to ${plainLengthText(range.high)}`)

/** The third figure of a length: finer ones are not written, and to drop them would cut a cord too short. */
const lastFigure = (length: number): number => 10 ** (Math.floor(Math.log10(length)) - 2)

/**
 * What to cut, so that it does not run out: the high end, rounded up.
 * @example cutText({ low: 9, likely: 11, high: 12.32 }) // '12.4 m (40 ft 8 3/16 in)'
 */
export const cutText = (range: LengthRange): string => lengthUpText(range.high, Math.max(isExact(range) ? STEP.exact : STEP.range, lastFigure(range.high)))

/** A kind of cord by what it does, with the pot it belongs to. */
export const cordName = ({ role, tier }: Pick<CordKind, 'role' | 'tier'>): string => (tier > 1 ? `${ROLE_NAMES[role]}, ${tierName(tier)}` : ROLE_NAMES[role])

const hungText = ({ role, strands }: CordKind): string =>
  (role === 'wrapping' || role === 'topCord' ? '–' : strands.length === 2 ? 'folded, two strands' : 'one strand, tied on')

/** A row of the plan. */
export const planRow = (kind: CordKind): { readonly head: string; readonly cells: readonly string[] } =>
  ({ head: cordName(kind), cells: [String(kind.count), cutText(kind.cut), lengthRangeText(kind.cut), hungText(kind)] })

const takeUpText = ({ takeUp }: PartOfStrand): string =>
  (takeUp === null ? '–' : takeUp.low === takeUp.high ? numberText(takeUp.likely) : `${numberText(takeUp.low)} to ${numberText(takeUp.high)}`)

/** A line of the sum behind a strand. */
export const partRow = (part: PartOfStrand): { readonly head: string; readonly cells: readonly string[] } => ({
  head: part.tier > 1 ? `${PART_NAMES[part.code]}, ${tierName(part.tier)}` : PART_NAMES[part.code],
  cells: [part.finished === null ? '–' : lengthText(part.finished), takeUpText(part), lengthRangeText(part.cord), part.basis === 'computed' ? part.source : `${part.basis}: ${part.source}`],
})

const quoted = (paths: readonly FieldPath[]): string => paths.map((path) => `“${FIELD_WORDS[path].label}”`).join(' and ')
const known = <T>(of: Known<T>, text: (value: T) => string): string => (of.known ? text(of.value) : `not known: answer ${quoted(of.needs)}`)

const massesText = ({ low, high }: LengthRange): string => (massText(low) === massText(high) ? massText(low) : `${massText(low)} to ${massText(high)}`)
/** Below nothing the roll does not last. */
function leftText(left: LengthRange): string {
  if (left.high < 0) return `none: it lacks ${plainLengthText(0 - left.high)} to ${plainLengthText(0 - left.low)}`
  return left.low < 0 ? `up to ${plainLengthText(left.high)}, but it may run out: it may lack ${plainLengthText(0 - left.low)}` : lengthRangeText(left)
}
const money = (value: number): string => withMark(value.toFixed(2))
function costText({ low, high, currency }: CordCost): string {
  const amount = money(low) === money(high) ? money(low) : `${money(low)} to ${money(high)}`
  return currency.trim() === '' ? amount : `${amount} ${currency.trim()}`
}

const asCutText = ({ cords, length, total }: NonNullable<CordPlan['asCut']>, planned: LengthRange): string =>
  `${cords} × ${lengthText(length)}, in all ${plainLengthText(total)}; by the plan, without wrapping cord and what it hangs by, ${lengthRangeText(planned)}`

/** What a plan comes to, name by name. */
export function planFacts(plan: CordPlan): readonly { readonly name: string; readonly text: string }[] {
  return [
    { name: 'In all', text: lengthRangeText(plan.total) },
    ...(plan.asCut === null ? [] : [{ name: 'As it was cut', text: asCutText(plan.asCut, plan.strandsTotal) }]),
    { name: 'Weight of the cord', text: plan.mass.known && plan.mass.basis === 'computed' ? `${massesText(plan.mass.value)}, by its diameter` : known(plan.mass, massesText) },
    { name: 'Cost of the cord', text: known(plan.cost, costText) },
    { name: 'Left on the roll', text: known(plan.left, leftText) },
  ]
}

const NOTE_TEXTS: Readonly<Record<PlanNote, string>> = {
  WHOLE_LEG_KNOTTED: `The whole leg counts as knotted, down to the cradle, for ${quoted(['make.knotted'])} was not answered: less is needed if part of it is plain.`,
  CORD_UNMEASURED: 'The cord was not measured: what goes round the ring, into the wraps and into the cradle’s knots is reckoned for a cord of usual thickness.',
  LEARNED: 'What knots take is reckoned by your own sample, a twentieth more or less.',
  ONE_OF_ROW: 'The plan is for this hanger of the row alone.',
  PANEL_BY_LONGEST: 'All cords of the panel are cut for the way round the front; those behind the pot may be shorter.',
  ALL_RUN_ON: 'Every strand is cut to run on to the lowest pot, though fewer go on: those that end above may be shorter.',
}
const USUAL_TEXT = 'What knots take is common practice only, as a range: cut one cord, knot it, and enter what it took and how long it came out.'

/** What a plan stands on, in sentences. */
export function planNotes(plan: CordPlan): readonly string[] {
  const isKnotted = plan.kinds.some(({ strands }) => strands.flat().some(({ code }) => code === 'knotted'))
  return [
    ...(isKnotted && !plan.notes.includes('LEARNED') ? [USUAL_TEXT] : []),
    ...plan.notes.map((note) => NOTE_TEXTS[note]),
    ...(plan.assumed.length === 0 ? [] : [`Reckoned with what was assumed, not said: ${plan.assumed.map((path) => FIELD_WORDS[path].label.toLowerCase().replace(/\?$/, '')).join('; ')}.`]),
  ]
}

/** Why there is no plan. */
export const NO_PLAN_TEXTS: Readonly<Record<Extract<CordPlanOutcome, { ok: false }>['reason'], string>> = {
  noHanger: 'There is no cord plan before there is a hanger: say how it is made up.',
  tooShort: 'There is no cord plan: the length told leaves nothing for the legs between ring, cradle and fringe. Make the whole longer, or the fringe shorter.',
  panelCannot: 'There is no cord plan: the strands of the panel cannot go round the pot as told.',
}
