import type { Better } from '../compare/better'
import type { Comparison, ComparedLog, ComparedPart, ComparedWeight } from '../compare/comparison'
import type { Difference, Saying } from '../compare/differences'
import type { Variant } from '../compare/variant'
import type { CordPlanOutcome } from '../cordPlan/cordPlan'
import { massLimitText, massRangeText, massText } from './amounts'
import { NO_PLAN_TEXTS, planFacts } from './cordPlan'
import { FIELD_WORDS } from './fields'
import { preferredText } from './preferredText'
import { shareText } from './share'

/** What is told of two, side by side; the two are called A and B. */
export interface ComparedRow {
  readonly name: string
  readonly first: string
  readonly second: string
}

export const BETTER_TEXTS: Readonly<Record<Better, string>> = { first: 'A is better', second: 'B is better', alike: 'alike', untold: 'cannot be told' }
const MISSING = 'no such part'

/** Verdict on a part of one of them, and how much of what it may carry is asked of it. */
export function judgedText(part: ComparedPart['first']): string {
  if (part === null) return MISSING
  return part.utilisation === null ? part.verdict : `${part.verdict}, ${shareText(part.utilisation, part.demand?.unit ?? '')}`
}

/** Which of the two has the better part. */
export const betterText = ({ first, better }: ComparedPart): string => (better !== null ? BETTER_TEXTS[better] : first === null ? 'only in B' : 'only in A')

/**
 * How the parts stand, counted.
 * @example partsComparedText([]) // 'There is no part to compare.'
 */
export function partsComparedText(parts: Comparison['parts']): string {
  const count = (better: Better): number => parts.filter((part) => part.better === better).length
  const told = ([['first', 'better in A'], ['second', 'better in B'], ['alike', 'alike'], ['untold', 'cannot be told']] as const).flatMap(([better, words]) => (count(better) === 0 ? [] : [`${count(better)} ${words}`]))
  const only = parts.filter(({ better }) => better === null).length
  const all = [...told, ...(only === 0 ? [] : [`${only} only in one of them`])]
  return all.length === 0 ? 'There is no part to compare.' : `Of ${parts.length} parts: ${all.join(', ')}.`
}

/**
 * A likely weight with the range it lies in; one that was weighed alone, kg.
 * @example massAndRangeText({ low: 2, likely: 2.2, high: 2.5 }) // '2.2 kg (4.85 lb), may be 2 to 2.5 kg (4.41 to 5.51 lb)'
 * @example massAndRangeText({ low: 2, likely: 2, high: 2 }) // '2 kg (4.41 lb)'
 */
export function massAndRangeText(mass: ComparedWeight['first']): string {
  const [likely, range] = [massText(mass.likely), massRangeText(mass)]
  return likely === range ? likely : `${likely}, may be ${range}`
}

/**
 * What the second weighs more or less than the first, kg.
 * @example massDifferenceText(2, 1.5) // 'B lighter by 0.5 kg (1.1 lb)'
 */
export function massDifferenceText(first: number, second: number): string {
  const by = second - first
  return Math.abs(by) < 0.0005 ? 'alike' : `B ${by > 0 ? 'heavier' : 'lighter'} by ${massText(Math.abs(by))}`
}

/** The heaviest pot that each may carry. */
export const heaviestText = ({ heaviest }: Pick<Variant, 'heaviest'>): string => (heaviest === null ? 'cannot be told' : massLimitText(heaviest))

/** What hangs in it in this comparison, where it is not its own pot; else null. */
export function comparedPotText(letter: 'A' | 'B', { pot }: Pick<Variant, 'pot'>): string | null {
  if (pot === 'own') return null
  return pot === 'heaviest' ? `${letter} has no pot yet: it is shown with the heaviest it may carry.` : `${letter} has no pot yet, and no heaviest can be told: its weights are those of a usual pot.`
}

const countOf = (cord: CordPlanOutcome): string => (cord.ok ? String(cord.kinds.reduce((sum, { count }) => sum + count, 0)) : '–')

/** Number, length, weight and cost of the cord of each. */
export function comparedCord(first: CordPlanOutcome, second: CordPlanOutcome): readonly ComparedRow[] {
  const factsOf = (cord: CordPlanOutcome): ReadonlyMap<string, string> => new Map(cord.ok ? planFacts(cord).map(({ name, text }) => [name, text]) : [])
  const [a, b] = [factsOf(first), factsOf(second)]
  const names = [...new Set([...a.keys(), ...b.keys()])]
  return [
    { name: 'Cords to cut', first: countOf(first), second: countOf(second) },
    ...names.map((name) => ({ name, first: a.get(name) ?? '–', second: b.get(name) ?? '–' })),
  ]
}

/** Why one of them has no cord plan; null where it has one. */
export const noCordText = (letter: 'A' | 'B', cord: CordPlanOutcome): string | null => (cord.ok ? null : `${letter}: ${NO_PLAN_TEXTS[cord.reason]}`)

/** What one of them says in a field; what was only assumed is marked. */
export function sayingText({ path, kind }: Difference, saying: Saying): string {
  if (!('text' in saying)) return saying.how === 'open' ? 'not answered' : 'has no bearing here'
  const { text, how } = saying
  const choice = FIELD_WORDS[path].choices[text.trim()]
  if (how === 'said') return choice ?? text
  return `${choice ?? (kind === null ? text : preferredText(text, kind))} (assumed)`
}

/** A field in which they differ. */
export const differenceRow = (difference: Difference): ComparedRow =>
  ({ name: FIELD_WORDS[difference.path].label, first: sayingText(difference, difference.first), second: sayingText(difference, difference.second) })

export const ALL_ALIKE_TEXT = 'They do not differ in any answer.'

export const LOG_TEXTS: Readonly<Record<ComparedLog, string>> = {
  pullTests: 'They have different pull tests of the cord.',
  inspections: 'They were inspected at different times or with different findings.',
  sold: 'They differ in what is kept of them as sold.',
}
