import { DAY, FLOODED_TIME, MOMENT, STANDING_WATER_TIME, UNNOTICED_TIME, WATERED_SHARE } from '../catalogue/duration'
import { BUMP_ANGLE } from '../catalogue/jolts'
import type { Answers } from '../hanger/fields'
import { seconds, type Seconds } from '../quantity/si'
import { drainageOf, keepsWater } from './drainage'
import { pullerOf } from './reach'
import type { State } from './states'

/** Every load case. */
export const CASES = ['dry', 'watered', 'flooded', 'bump', 'setDown', 'gust', 'tug', 'lowerOut', 'neighbourDown', 'drop', 'strandParted', 'legParted', 'legPartedSudden'] as const
export type CaseCode = (typeof CASES)[number]
/** The cases without a jolt. */
export const CASES_AT_REST = ['dry', 'watered', 'flooded'] as const satisfies readonly CaseCode[]
/** The cases of every whole hanger, nothing parted. */
export const CASES_ALWAYS = [...CASES_AT_REST, 'bump', 'setDown', 'drop'] as const satisfies readonly CaseCode[]

type CaseAnswers = Pick<Answers, 'make.arrangement' | 'place.exposure' | 'place.reach' | 'place.beneath'>
/** Which hangers a further case concerns. */
const FURTHER: Readonly<Partial<Record<CaseCode, (answers: CaseAnswers) => boolean>>> = {
  gust: (a) => a['place.exposure'] === 'outdoors',
  tug: (a) => pullerOf(a) !== null,
  lowerOut: (a) => a['make.arrangement'] === 'tiers',
  neighbourDown: (a) => a['make.arrangement'] === 'row',
}
/**
 * The cases that concern a hanger whole, nothing of it parted, in the order of CASES.
 * @example wholeCases({ 'make.arrangement': 'row', 'place.exposure': 'indoors', 'place.reach': 'nobody' }).includes('neighbourDown') // true
 */
export const wholeCases = (answers: CaseAnswers): readonly CaseCode[] =>
  CASES.filter((code) => (CASES_ALWAYS as readonly CaseCode[]).includes(code) || FURTHER[code]?.(answers) === true)


/**
 * Greatest tension of a pendulum let go from an angle a, over its weight: 3 - 2 cos a (energy).
 * @example BUMP_FACTOR // 1.2679
 */
export const BUMP_FACTOR = 3 - 2 * Math.cos(BUMP_ANGLE.value)
/**
 * Side pull at the end of the swing over the weight: sin a cos a (the tension there is W cos a).
 * @example BUMP_SIDE_PULL // 0.4330
 */
export const BUMP_SIDE_PULL = Math.sin(BUMP_ANGLE.value) * Math.cos(BUMP_ANGLE.value)
/** Load put on at once without a fall, over its weight (energy; Gere, Mechanics of Materials, suddenly applied load). */
export const SET_DOWN_FACTOR = 2

/** A load case: which state hangs, for how long it counts in all over the service life, whether it is an accident, and whether the cord is soaked. */
export interface LoadCase {
  readonly code: CaseCode
  readonly state: State
  readonly time: Seconds
  readonly accidental: boolean
  readonly wet: boolean
}

/** Time over the service life that the pot hangs just watered, s: all of it where something keeps its water. */
function wateredTime(answers: Answers): number {
  const always = answers['place.watering'] === 'daily' || keepsWater(answers)
  return answers['place.life'] * (always ? 1 : WATERED_SHARE.value)
}

/**
 * The load cases of a hanger. None lasts longer than the service life, nor is a life shorter than a
 * day counted on. Jolts and accidents meet the pot just watered, or standing in water where it cannot
 * surely run out: no hole is taken as plugged in the wind. A child who hangs on it is an accident, a cat that jumps in is not.
 */
export function loadCases(answers: Answers): Readonly<Record<CaseCode, LoadCase>> {
  const life = answers['place.life']
  const drains = drainageOf(answers) === 'hole'
  const flooded = drains ? FLOODED_TIME.value : STANDING_WATER_TIME.value
  const wettest: State = drains ? 'watered' : 'flooded'
  const make = (code: CaseCode, state: State, time: number, accidental: boolean, wet: boolean): LoadCase =>
    ({ code, state, time: seconds(Math.min(time, Math.max(life, DAY))), accidental, wet })
  return {
    dry: make('dry', 'dry', life, false, false),
    watered: make('watered', 'watered', wateredTime(answers), false, true),
    flooded: make('flooded', 'flooded', flooded, false, true),
    bump: make('bump', wettest, MOMENT.value, false, true),
    setDown: make('setDown', wettest, MOMENT.value, false, true),
    gust: make('gust', wettest, MOMENT.value, false, true),
    tug: make('tug', wettest, MOMENT.value, pullerOf(answers) !== 'cat', true),
    lowerOut: make('lowerOut', 'watered', wateredTime(answers), false, true),
    neighbourDown: make('neighbourDown', 'watered', wateredTime(answers), false, true),
    drop: make('drop', wettest, MOMENT.value, true, true),
    strandParted: make('strandParted', wettest, UNNOTICED_TIME.value, true, true),
    legParted: make('legParted', wettest, UNNOTICED_TIME.value, true, true),
    legPartedSudden: make('legPartedSudden', wettest, MOMENT.value, true, true),
  }
}
