import type { ChanceInterval } from '../chance/interval'
import type { CaseChance, ChanceReport, InputRank, PartCount, StateChance } from '../chance/report'
import type { LeftOut } from '../chance/tally'
import { massRangeText, massText, percentText, timeText } from './amounts'
import { countText, intervalText, partText } from './chanceCounts'
import { CHANCE_CASE_NAMES, inputName, LEFT_OUT_REASONS, OUTSIDE_TEXTS } from './chanceNames'
import { linkName } from './tiers'

/**
 * How many of the hangers drawn are overloaded in a situation, with the interval of the chance. None of 10,000 is no nought,
 * but fewer than 3 in 10,000.
 */
export function chanceSentence(state: StateChance): string {
  const { hangers, overloaded } = state
  const hung = CHANCE_CASE_NAMES[state.case]
  if (overloaded === 0) {
    return `${ofText(hangers)}, none would be overloaded ${hung}: the chance is ${fewerText(state)}.`
  }
  return `${ofText(hangers)}, ${countText(overloaded)} would be overloaded ${hung}: ${betweenText(state)}.`
}

const ofText = (hangers: number): string => (hangers === 1 ? 'Of a single hanger made like this' : `Of ${countText(hangers)} hangers made like this`)

/** What none of so many shows: fewer than three in as many; of a handful nothing. */
const fewerText = ({ hangers }: StateChance): string => (hangers < 10 ? 'not yet known' : `fewer than 3 in ${countText(hangers)}`)

const betweenText = ({ interval, hangers }: StateChance): string => `the chance is between ${intervalText(interval, hangers)}`

/** How the interval was found. */
export const chanceIntervalText = ({ method }: Pick<ChanceInterval, 'method'>): string =>
  (method === 'wilson' ? 'Interval at 95 % by Wilson (1927): in 19 of 20 such drawings it holds the chance that these assumptions give.' : 'Rule of three: where none of n fails, the chance is below 3 / n at 95 %.')

/** Which parts fail first among those overloaded; null where none is. */
export function failsText({ fails, case: hung }: Pick<CaseChance, 'fails' | 'case'>): string | null {
  return fails.length === 0 ? null : `What fails first ${CHANCE_CASE_NAMES[hung]}: ${sharesText(fails)}.`
}

/** Which parts come nearest to failing, whether or not any does. */
export const nearestText = ({ nearest, case: hung }: Pick<CaseChance, 'nearest' | 'case'>): string =>
  `What comes nearest to failing ${CHANCE_CASE_NAMES[hung]}: ${sharesText(nearest)}.`

/** Shares of parts, the three greatest. */
const sharesText = (parts: readonly PartCount[]): string => parts.slice(0, 3).map((part) => `${linkName(part.link, part.tier).toLowerCase()} (${partText(part.share)})`).join(', ')

/** How hard the part that works hardest does in these hangers, of its real strength; of a seat, of how high it holds the weight. */
export const useSpreadText = ({ use, case: hung }: Pick<CaseChance, 'use' | 'case'>): string =>
  `Half of them use at most ${percentText(use.quantiles.p50)} of what the part that works hardest really bears ${CHANCE_CASE_NAMES[hung]}, 19 of 20 at most ${percentText(use.quantiles.p95)}, 99 of 100 at most ${percentText(use.quantiles.p99)}.`

/** What they weigh just watered. */
export const weightSpreadText = ({ watered: { quantiles }, frame }: Pick<ChanceReport, 'watered' | 'frame'>): string =>
  `Just watered nine of ten weigh ${massRangeText({ low: quantiles.p05, high: quantiles.p95 })}, half of them more than ${massText(quantiles.p50)}; the check counts ${massText(frame.checkedWeight)}.`

/**
 * How much an input decides.
 * @example inputRankText({ input: 'roll', total: 0.42, alone: 0.4 }) // '42 %: the roll the cord came from'
 */
export const inputRankText = ({ input, total }: Pick<InputRank, 'input' | 'total'>): string => `${partText(total)}: ${inputName(input)}`

/** What those shares are. */
export const RANK_EXPLAINED = 'How much each decides: its share of what makes one hanger come nearer to failing than the next, what it does together with others counted in, so that shares may add up to more than 100 %; drawn by chance themselves, they are good to a few per cent. (Share of the variance of the safety index of the part nearest to failing: total Sobol index, estimator of Jansen 1999.)'

/** A part that is not in the figures, and why. */
export const leftOutText = ({ link, tier, reason }: LeftOut): string => `${linkName(link, tier)}: ${LEFT_OUT_REASONS[reason]}.`

/** What the figures rest on, a sentence each. */
export function chanceBasisTexts({ frame }: Pick<ChanceReport, 'frame'>): readonly string[] {
  const { leftOut, byModel, slings, life } = frame
  const unknown = leftOut.filter(({ reason }) => reason === 'notKnown' || reason === 'refused')
  return [
    `Each hanger is judged at the end of its ${timeText(life)}, when its cord is weakest, against the real strength of its parts without any reserve.`,
    ...(unknown.length === 0 ? [] : [`The figures are of the known parts only; left out: ${unknown.map(({ link, tier }) => linkName(link, tier).toLowerCase()).join(', ')}.`]),
    ...(byModel.length === 0 ? [] : ['Where friction holds, the strength comes from a model that nobody has tested; a test hang tells more.']),
    ...(slings === 'solved' ? [] : ['How the strands share the load was taken at its worst from the check, not solved for each hanger.']),
    'How much each thing scatters is mostly from handbooks and judgement, so read a small chance as small, not as exact.',
  ]
}

/** What no figure covers. */
export const outsideText = (code: keyof typeof OUTSIDE_TEXTS): string => OUTSIDE_TEXTS[code]
