import type { Grade } from '../catalogue/basis'
import type { LinkResult } from '../check/linkResult'
import type { State } from '../load/states'
import { FIELD_WORDS } from './fields'
import type { FieldPath } from '../hanger/fields'
import { linkName } from './tiers'

export const WEIGHTS_TITLE = 'What it weighs'
export const WEIGHTS_COLUMNS = { state: 'Pot and plant', together: 'All its pots and plants', own: 'With its own pot', heaviest: 'With the heaviest pot' } as const
export const STATE_TEXTS: Readonly<Record<State, string>> = { dry: 'Dry', watered: 'Just watered', flooded: 'Standing in water' }

export const CAUTIONS_TITLE = 'Take care'
export const KNOWN_TITLE = 'How it is known'

/** What the two words for the weight mean. */
export const MARK_MEANINGS = {
  calculated: '“Calculated” means reckoned part by part from measures and published values; nobody has hung that weight in it.',
  testHung: '“Test-hung” means that weight or more hung in it for a day and its strands did not slip; it was reckoned besides.',
} as const

const GRADE_TEXTS: Readonly<Record<Grade, string>> = {
  tested: 'By a test of its own', rated: 'By a rating', weighed: 'By weighing its cord', table: 'By published tables', diameter: 'By the thickness of its cord only', model: 'By a sum that nobody has tested', fit: 'By its measures',
}
const GRADES = Object.keys(GRADE_TEXTS) as readonly Grade[]

/** Parts by how their strength is known, one line for each way; of each part the result that decides. */
export function knownTexts(decisive: readonly LinkResult[]): readonly string[] {
  const names = (grade: Grade | null): readonly string[] => decisive.filter((l) => l.grade === grade).map((l) => linkName(l.link, l.tier).toLowerCase())
  const line = (how: string, parts: readonly string[]): readonly string[] => (parts.length === 0 ? [] : [`${how}: ${parts.join(', ')}.`])
  return [...GRADES.flatMap((grade) => line(GRADE_TEXTS[grade], names(grade))), ...line('Not known', names(null))]
}

/** What was taken as usual, for nobody measured it. */
export const assumedLine = (paths: readonly FieldPath[]): string =>
  (paths.length === 0 ? 'Nothing was taken as usual: all was said.' : `Taken as usual, not measured: ${paths.map((path) => FIELD_WORDS[path].label.replace(/[?]$/, '').toLowerCase()).join('; ')}.`)
