import type { Basis } from '../catalogue/basis'
import { cordWeighing } from '../check/cordWeighing'
import type { Answers, FieldPath } from '../hanger/fields'
import type { Hanger } from '../hanger/hanger'
import { defaultCounts } from '../hanger/relevance'
import { cordMassPerMetre } from '../load/cordMass'
import { cordKinds, type CordKind } from './cordKinds'
import { exactly, sumOf, times, type LengthRange } from './lengthRange'
import { learnedTakeUp } from './takeUpOf'

/** A number that is known, and how; or the answers that would settle it. */
export type Known<T> =
  | { readonly known: true; readonly value: T; readonly basis: Basis }
  | { readonly known: false; readonly needs: readonly FieldPath[] }

/** Price of the cord that is cut: a share of what the roll cost. */
export interface CordCost extends LengthRange {
  readonly currency: string
}

export type PlanNote = 'WHOLE_LEG_KNOTTED' | 'CORD_UNMEASURED' | 'LEARNED' | 'ONE_OF_ROW' | 'PANEL_BY_LONGEST' | 'ALL_RUN_ON'

export interface CordPlan {
  readonly ok: true
  readonly kinds: readonly CordKind[]
  /** All cords together, m. */
  readonly total: LengthRange
  /** Strands, without wrapping cord and what the hanger hangs by: what stands beside the cords as they were cut. */
  readonly strandsTotal: LengthRange
  /** The cords as they were cut, if that was said: how many, and how long each; m. */
  readonly asCut: { readonly cords: number; readonly length: number; readonly total: number } | null
  /** kg */
  readonly mass: Known<LengthRange>
  /** Cord on a whole roll, and what is left once this hanger is cut, m; below nothing where it does not last. */
  readonly roll: Known<LengthRange>
  readonly left: Known<LengthRange>
  readonly cost: Known<CordCost>
  readonly notes: readonly PlanNote[]
  /** Lengths and counts that were assumed, and that the plan stands on. */
  readonly assumed: readonly FieldPath[]
}

export type CordPlanOutcome = CordPlan | { readonly ok: false; readonly reason: 'noHanger' | 'tooShort' | 'panelCannot' }

const needs = (...paths: readonly FieldPath[]): { readonly known: false; readonly needs: readonly FieldPath[] } => ({ known: false, needs: paths })

/**
 * How much cord to cut for a hanger, kind by kind, as ranges; what it weighs and costs and what is left on the
 * roll, each only where what it takes was told. No plan without a hanger (`noHanger`), where the length told
 * leaves nothing for the legs (`tooShort`), or where a panel's strands cannot go round its pot (`panelCannot`).
 */
export function cordPlan(hanger: Hanger): CordPlanOutcome {
  const { answers } = hanger
  if (answers['make.have'] === 'no') return { ok: false, reason: 'noHanger' }
  const kinds = cordKinds(answers)
  if (kinds === null) return { ok: false, reason: answers['make.arrangement'] === 'panel' ? 'panelCannot' : 'tooShort' }
  const all = (of: readonly CordKind[]): LengthRange => sumOf(of.map(({ cut, count }) => times(cut, count)))
  const total = all(kinds)
  const [cords, cut] = [answers['make.cords'], answers['make.cutLength']]
  const roll = rollLength(answers)
  return {
    ok: true,
    kinds,
    total,
    strandsTotal: all(kinds.filter(({ role }) => role !== 'wrapping' && role !== 'topCord' && role !== 'ringCord')),
    asCut: cords === null || cut === null ? null : { cords, length: cut, total: cords * cut },
    mass: massOf(answers, total),
    roll,
    left: leftOf(answers, total, roll),
    cost: costOf(answers, total, roll),
    notes: notesOf(answers),
    assumed: assumedIn(hanger),
  }
}

function massOf(answers: Answers, total: LengthRange): Known<LengthRange> {
  const weighed = cordWeighing(answers)
  if (weighed === null && answers['cord.diameter'] === null) return needs('cord.linearDensity')
  const per = weighed?.perMetre ?? cordMassPerMetre(answers)
  return { known: true, value: { low: total.low * per.low, likely: total.likely * per.likely, high: total.high * per.high }, basis: weighed === null ? 'computed' : 'your own' }
}

function rollLength(answers: Answers): Known<LengthRange> {
  const [length, mass] = [answers['cord.rollLength'], answers['cord.rollMass']]
  if (length !== null) return { known: true, value: exactly(length), basis: 'your own' }
  if (mass === null) return needs('cord.rollLength')
  const weighed = cordWeighing(answers)
  if (weighed === null) return needs('cord.linearDensity')
  const { low, likely, high } = weighed.perMetre
  return { known: true, value: { low: mass / high, likely: mass / likely, high: mass / low }, basis: 'your own' }
}

function leftOf(answers: Answers, total: LengthRange, roll: Known<LengthRange>): Known<LengthRange> {
  const now = answers['cord.onRoll']
  if (now === null && !roll.known) return needs('cord.onRoll')
  const before = now === null && roll.known ? roll.value : exactly(now ?? 0)
  return { known: true, value: { low: before.low - total.high, likely: before.likely - total.likely, high: before.high - total.low }, basis: 'your own' }
}

function costOf(answers: Answers, total: LengthRange, roll: Known<LengthRange>): Known<CordCost> {
  const price = answers['cord.rollPrice']
  if (price === null) return needs('cord.rollPrice')
  if (!roll.known) return roll
  const { low, likely, high } = roll.value
  return { known: true, value: { low: (price * total.low) / high, likely: (price * total.likely) / likely, high: (price * total.high) / low, currency: answers['cord.currency'] ?? '' }, basis: 'your own' }
}

function notesOf(answers: Answers): readonly PlanNote[] {
  const arrangement = answers['make.arrangement']
  const knotted = arrangement !== 'panel' && answers['make.build'] !== 'plain'
  const notes: readonly (readonly [PlanNote, boolean])[] = [
    ['WHOLE_LEG_KNOTTED', knotted && answers['make.knotted'] === null],
    ['CORD_UNMEASURED', answers['cord.diameter'] === null],
    ['LEARNED', (knotted || arrangement === 'panel') && learnedTakeUp(answers) !== null],
    ['ONE_OF_ROW', arrangement === 'row'],
    ['PANEL_BY_LONGEST', arrangement === 'panel'],
    ['ALL_RUN_ON', arrangement === 'tiers' && answers['tiers.how'] === 'runOn' && (['second.strands', 'third.strands'] as const).some((path) => answers[path] < answers['make.strands'])],
  ]
  return notes.flatMap(([note, holds]) => (holds ? [note] : []))
}

/** What a plan stands on, in the order of the table. */
const STANDS_ON: readonly FieldPath[] = [
  'make.legs', 'make.strands', 'make.build', 'make.totalLength', 'make.fringe', 'cradle.first', 'gathering.wraps', 'stick.topCord', 'stick.topStrands', 'ring.rise',
  'panel.width', 'panel.height', 'panel.rise', 'panel.cords', 'tiers.count', 'second.strand', 'third.strand',
]

function assumedIn({ answers, given }: Hanger): readonly FieldPath[] {
  const counts = (path: FieldPath): boolean => !given.has(path) && defaultCounts(path, answers) && !(path === 'make.totalLength' && answers['make.legLength'] !== null)
  return STANDS_ON.filter(counts)
}
