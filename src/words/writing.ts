import type { DecimalMark } from '../quantity/writeDecimal'

/** How the reader wants numbers written. */
export interface WritingHabits {
  /** `both`: metric, with pounds and inches in brackets. */
  readonly units: 'both' | 'metric' | 'imperial'
  readonly decimalMark: DecimalMark
  /** "9 March 2029", "March 9, 2029" or "2029-03-09". */
  readonly dayOrder: 'dayFirst' | 'monthFirst' | 'yearFirst'
}

/** What holds until somebody says otherwise, and always in the command line. */
export const USUAL_HABITS: WritingHabits = { units: 'both', decimalMark: '.', dayOrder: 'dayFirst' }

/** The one piece of state in the core: how numbers are written belongs to the reader, not to the hanger. */
let habits: WritingHabits = USUAL_HABITS

/**
 * Sets how sentences and tables write numbers from now on. The object is asked anew at each number, so that
 * whoever hands it over may change it. Checks, JSON and files never depend on it.
 */
export const writeBy = (next: WritingHabits): void => { habits = next }

export const writingHabits = (): WritingHabits => habits

/** A number written with a point, with the reader's decimal mark. */
export const withMark = (plain: string): string => (habits.decimalMark === ',' ? plain.replace('.', ',') : plain)

/** The same amount in both ways: as the reader measures, or the metric with the other in brackets. */
export function inUnits(metric: () => string, imperial: () => string): string {
  if (habits.units === 'both') return `${metric()} (${imperial()})`
  return habits.units === 'metric' ? metric() : imperial()
}

/** One of two texts, where a round figure or the name of a unit stands in a sentence: metric unless only the other is read. */
export const byUnits = (metric: string, imperial: string): string => (habits.units === 'imperial' ? imperial : metric)
