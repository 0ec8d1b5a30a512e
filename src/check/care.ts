import {
  JUTE_NEVER_DRY, OFTEN_WET_LIFE, SEASON, strengthAfter, SYNTHETIC_SEASONS, UNDER_DRAIN_HOLE, WEATHERING,
} from '../catalogue/ageing'
import { FIBRE_PROPERTIES } from '../catalogue/cords'
import { DAY, MONTH } from '../catalogue/duration'
import { FIRST_LOOK, LOOK_AGAIN, type LookReason } from '../catalogue/reinspection'
import { peopleBeneath } from '../catalogue/reserves'
import { daysAfter, monthsAfter } from '../quantity/calendarDay'
import { knotWetness } from './knotWetness'
import type { Solved } from './solved'

export const CARE_REASONS = [
  'SERVICE_LIFE', 'LIFE_TOO_LONG', 'NATURAL_OUTDOORS', 'SYNTHETIC_OUTDOORS', 'OUTDOOR_LOSS_UNKNOWN', 'STEAMY', 'ALWAYS_WET',
  'KNOT_DAMP', 'KNOT_NEVER_DRY', 'JUTE_DAMP', 'JUTE_NEVER_DRY',
] as const satisfies readonly CareReason['code'][]

/** Why a hanger is to be replaced when it is; times in s, `left` the share of its strength left by then. Sentences: words/care.ts. */
export type CareReason =
  | { readonly code: 'SERVICE_LIFE'; readonly life: number; readonly chosen: boolean }
  | { readonly code: 'LIFE_TOO_LONG'; readonly life: number; readonly most: number }
  | { readonly code: 'NATURAL_OUTDOORS'; readonly most: number; readonly left: number }
  | { readonly code: 'SYNTHETIC_OUTDOORS'; readonly most: number; readonly left: number }
  | { readonly code: 'OUTDOOR_LOSS_UNKNOWN' }
  | { readonly code: 'STEAMY'; readonly left: number }
  | { readonly code: 'ALWAYS_WET' }
  | { readonly code: 'KNOT_DAMP'; readonly left: number }
  | { readonly code: 'KNOT_NEVER_DRY'; readonly most: number }
  | { readonly code: 'JUTE_DAMP'; readonly most: number }
  | { readonly code: 'JUTE_NEVER_DRY'; readonly lost: number }

/** When to replace a hanger and when to look at it. */
export interface Care {
  /** Service life that the strength was reckoned for, s. */
  readonly life: number
  /** When to replace it, s after it was made: the service life, or less where weather or water allow less; null where no time can be promised. */
  readonly replaceAfter: number | null
  /** The same as a day, YYYY-MM-DD; null where it is not said when it was made. */
  readonly replaceBy: string | null
  readonly reasons: readonly CareReason[]
  /** Months to the first look and between looks, and what asks for so many. */
  readonly inspect: { readonly first: number; readonly every: number; readonly reasons: readonly LookReason[] }
}

/** Care of a hanger: when it is to be replaced, when to look at it, and why. */
export function care(solved: Solved): Care {
  const { answers, given } = solved.hanger
  const life = answers['place.life']
  const causes = [...weather(solved), ...water(solved)]
  const limits = causes.map((cause) => cause.most)
  const most = limits.includes(null) ? null : Math.min(life, ...limits.flatMap((limit) => limit ?? []))
  const tooLong: readonly CareReason[] = most !== null && most < life ? [{ code: 'LIFE_TOO_LONG', life, most }] : []
  return {
    life,
    replaceAfter: most,
    replaceBy: answers['make.date'] === null || most === null ? null : dayAfter(answers['make.date'], most),
    reasons: [{ code: 'SERVICE_LIFE', life, chosen: given.has('place.life') }, ...tooLong, ...causes.map((cause) => cause.reason)],
    inspect: inspect(solved),
  }
}

/** A reason, and how long it lets the hanger hang, s: Infinity as long as one likes, null where nobody knows. */
interface Cause {
  readonly reason: CareReason
  readonly most: number | null
}

function weather(solved: Solved): readonly Cause[] {
  const { answers } = solved.hanger
  const fibre = answers['cord.fibre']
  const exposure = answers['place.exposure']
  const left = (life: number): number => strengthAfter(fibre, exposure, life).value
  if (exposure === 'indoors') return []
  if (exposure === 'steamy') return [{ reason: { code: 'STEAMY', left: left(answers['place.life']) }, most: Infinity }]
  switch (WEATHERING[fibre]) {
    case 'season': return [{ reason: { code: 'NATURAL_OUTDOORS', most: SEASON.value, left: left(SEASON.value) }, most: SEASON.value }]
    case 'yearly': return [{ reason: { code: 'SYNTHETIC_OUTDOORS', most: SYNTHETIC_SEASONS.value, left: left(Math.min(answers['place.life'], SYNTHETIC_SEASONS.value)) }, most: SYNTHETIC_SEASONS.value }]
    case 'unknown': return [{ reason: { code: 'OUTDOOR_LOSS_UNKNOWN' }, most: null }]
  }
}

/** Whether the pot never dries out: it counts as just watered for the whole service life. */
const isAlwaysWet = (solved: Solved): boolean => solved.loads.watered.case.time >= solved.hanger.answers['place.life']

function water(solved: Solved): readonly Cause[] {
  const fibre = solved.hanger.answers['cord.fibre']
  const wetness = knotWetness(solved.hanger.answers)
  const causes: Cause[] = []
  if (isAlwaysWet(solved)) causes.push({ reason: { code: 'ALWAYS_WET' }, most: Infinity })
  if (wetness === 'dry') return causes
  causes.push({ reason: { code: 'KNOT_DAMP', left: UNDER_DRAIN_HOLE.value }, most: Infinity })
  if (fibre === 'jute') {
    causes.push(wetness === 'never dry'
      ? { reason: { code: 'JUTE_NEVER_DRY', lost: JUTE_NEVER_DRY.value }, most: null }
      : { reason: { code: 'JUTE_DAMP', most: OFTEN_WET_LIFE.value }, most: OFTEN_WET_LIFE.value })
  } else if (wetness === 'never dry' && FIBRE_PROPERTIES[fibre].natural) {
    causes.push({ reason: { code: 'KNOT_NEVER_DRY', most: OFTEN_WET_LIFE.value }, most: OFTEN_WET_LIFE.value })
  }
  return causes
}

function inspect(solved: Solved): Care['inspect'] {
  const { answers } = solved.hanger
  const reasons: LookReason[] = []
  if (answers['place.exposure'] !== 'indoors') reasons.push(answers['place.exposure'])
  if (answers['cord.fibre'] === 'jute' && knotWetness(answers) !== 'dry') reasons.push('juteDamp')
  if (isAlwaysWet(solved)) reasons.push('alwaysWet')
  if (peopleBeneath(answers['place.beneath'])) reasons.push('peopleBeneath')
  if (reasons.length === 0) reasons.push('indoors')
  const often = Math.min(...reasons.map((reason) => LOOK_AGAIN[reason].value))
  return { first: inMonths(FIRST_LOOK.value), every: inMonths(often), reasons: reasons.filter((reason) => LOOK_AGAIN[reason].value === often) }
}

const inMonths = (time: number): number => Math.round(time / MONTH)

/** Whole months by the calendar, anything else by days, rounded down. */
function dayAfter(day: string, time: number): string | null {
  const months = time / MONTH
  return Math.abs(months - Math.round(months)) < 1e-6 ? monthsAfter(day, Math.round(months)) : daysAfter(day, Math.floor(time / DAY))
}
