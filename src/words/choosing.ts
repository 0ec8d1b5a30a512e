import type { Choice, ChoiceFound, Limit, NoChoice } from '../choosing/choice'
import type { Stand, Stop } from '../choosing/judge'
import { lengthText, massLimitText, massText, numberText, percentText } from './amounts'
import { FIELD_WORDS } from './fields'
import { findingText } from './findings'
import { LINK_NAMES } from './names'
import { fixingText, numberAndDepthText } from './placeNeeds'
import { problemText } from './problems'
import { isSettling } from './settling'

/** A value in the unit of its question; a limit of weight is rounded down. */
export function choiceAmountText({ unit }: Pick<Choice, 'unit'>, value: number): string {
  if (unit === 'count') return numberText(value)
  return unit === 'm' ? lengthText(value) : massLimitText(value)
}

/** The answer itself. */
export function choiceValueText(choice: ChoiceFound): string {
  if (choice.fixing !== null) return fixingText(choice.fixing)
  return choice.value === null ? 'holds as it is' : choiceAmountText(choice, choice.value)
}

/** What it is now, in the same unit; weights as they are, not as limits. */
export const choiceNowText = (choice: Choice): string => {
  if (choice.now === null) return '–'
  return choice.unit === 'kg' ? massText(choice.now) : choiceAmountText(choice, choice.now)
}

const usedText = (utilisation: number | null): string => (utilisation === null ? '' : `, used to ${percentText(utilisation)}`)

/** How the links that are decided stand with it, and the whole. */
export function standText({ link, verdict, utilisation, whole }: Stand): string {
  const decided = link === null ? verdict : `${LINK_NAMES[link]}: ${verdict}${usedText(utilisation)}`
  return `${decided}. The whole with the place: ${whole}.`
}

/** Why a value will not do. */
export function stopText(stop: Stop): string {
  if (stop.kind === 'unreadable') return problemText(stop.problem)
  if (stop.kind === 'unfit') return findingText(stop.finding).replace(/\.$/, '')
  if (stop.kind === 'tooHeavy') return `the pot would weigh ${massText(stop.watered)} just watered, and the hanger carries ${massLimitText(stop.heaviest)}`
  const stands = `${LINK_NAMES[stop.link]}: ${stop.verdict}${stop.byUse ? usedText(stop.utilisation) : ''}`
  return stop.now === null ? stands : `${stands} (now: ${stop.now})`
}

const at = (choice: Choice, { value, stop }: Limit): string => (value === null ? stopText(stop) : `with ${choiceAmountText(choice, value)}: ${stopText(stop)}`)

/** Where the smallest or largest that was tried is no edge, for nothing stops it there. */
const endText = ({ unit, fixing }: ChoiceFound): string => {
  if (fixing !== null) return 'Smaller ones are not sold.'
  return unit === 'count' ? 'Fewer are not to be had.' : 'Nothing that was tried stops it: this is the end of what is tried.'
}

/** What stops it from going further, just beyond; empty where an answer has no size to go by. */
export function choiceLimitText(choice: ChoiceFound): string {
  if (choice.limit === null) return choice.of?.kind === 'shelf' ? '' : endText(choice)
  return choice.fixing === null ? `Beyond it, ${at(choice, choice.limit)}.` : `A size smaller will not do: ${at(choice, choice.limit)}.`
}

/** What was found, where the use of a link does not say why. */
const whyTexts = (limit: Limit | null): readonly string[] =>
  (limit?.stop.kind === 'link' && !limit.stop.byUse ? [...new Set(limit.stop.findings.map(findingText))] : [])

/** What else must be known of one answer: where the safe side ends too, gaps, and how close it was found. */
export function choiceNotes(choice: ChoiceFound): readonly string[] {
  const { until, again, close } = choice
  // Of lengths the safe side is the other question.
  const bounded = until !== null && choice.choice !== 'shortestLeg' && choice.choice !== 'longestLeg'
  return [
    ...(choice.fixing === null ? [] : [`Number and depth: ${numberAndDepthText(choice.fixing)}.`]),
    ...whyTexts(choice.limit),
    ...(bounded ? [`On the safe side it holds as far as ${choiceAmountText(choice, until.value)}; ${at(choice, until.limit)}.`, ...whyTexts(until.limit)] : []),
    ...(again.length > 0 ? [`It holds again with ${again.map((value) => choiceAmountText(choice, value)).join(', ')}. That is not trusted: this is the safe end.`] : []),
    ...(close > 0 && choice.limit !== null ? [`Found to within ${choice.unit === 'kg' ? massText(close) : choiceAmountText(choice, close)}.`] : []),
  ]
}

/** What goes for all answers to a question alike: a test hang that was left out, and for which hanger they are. */
export const choiceGroupNotes = (choice: Choice): readonly string[] => [
  ...(choice.isForNext ? ['This hanger is made: for the next one.'] : []),
  ...(choice.found && choice.isUntested ? ['Where it would be tied anew, the test hang of the present hanger was left out: it is no test of another.'] : []),
]

const labels = (paths: readonly (keyof typeof FIELD_WORDS)[]): string => paths.map((path) => `“${FIELD_WORDS[path].label}”`).join(', ')

/** Why there is no answer. */
export function noChoiceText(choice: NoChoice): string {
  const { reason } = choice
  switch (reason.code) {
    case 'notConcerned': return NOT_CONCERNED[choice.choice] ?? 'It does not concern this hanger.'
    case 'noPot': return 'There is no pot yet. Say which pot will hang in it, or ask for the heaviest and the widest it may carry.'
    case 'noHanger': return 'There is no hanger yet. Choose a cord first, or say how it is made.'
    case 'answersNeeded': return `Not enough known. Answer first: ${labels(reason.paths)}.`
    case 'noFixings': return 'No fixing is proposed for this place: nothing may be fixed to it, or none that is usually sold is known for it. “What the place needs” tells of other places.'
    case 'noneHolds': return choice.of?.kind === 'shelf' ? `It will not do. ${at(choice, reason.limit)}.` : `None will do. What comes nearest: ${at(choice, reason.limit)}.`
    case 'notEnoughKnown': return choice.of?.kind === 'shelf' ? `Not enough known. ${at(choice, reason.limit)}.` : `Not enough known. What comes nearest: ${at(choice, reason.limit)}.`
  }
}

/** What would settle it, where not enough is known; why, where no number says it. */
export function choiceSettlingTexts({ reason }: NoChoice): readonly string[] {
  if (reason.code === 'notEnoughKnown') return [...new Set(reason.findings.filter(isSettling).map(findingText))]
  return reason.code === 'noneHolds' ? whyTexts(reason.limit) : []
}

const NOT_CONCERNED: Readonly<Partial<Record<Choice['choice'], string>>> = {
  stick: 'There is no stick on this hanger.',
  legs: 'A panel has no legs round its pot.',
  shortestLeg: 'A panel has no legs round its pot.',
  longestLeg: 'A panel has no legs round its pot.',
  fixing: 'Nothing is fixed: the cord goes round it.',
}

/** How often the hanger was checked for an answer. */
export const checksText = ({ checks }: Pick<Choice, 'checks'>): string => (checks === 1 ? '1 check' : `${checks} checks`)
