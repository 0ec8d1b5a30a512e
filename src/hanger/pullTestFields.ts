import { YEAR } from '../catalogue/duration'
import type { Field } from './field'

const LATER = { first: false, essential: false, tacit: false } as const

/**
 * The columns of the pull-test log, in the order they are asked. Where a choice is not said the
 * safer one counts: pulled straight and dry, so that knots and wet still take their share, and broken.
 */
export const PULL_TEST_FIELDS = {
  load: { type: 'open', kind: 'force', min: 1, max: 100_000, ...LATER },
  how: { type: 'choice', choices: ['straight', 'tied'], default: { choice: 'straight', basis: 'common practice', source: 'the safer answer until it is known' }, ...LATER },
  state: { type: 'choice', choices: ['dry', 'soaked'], default: { choice: 'dry', basis: 'common practice', source: 'the safer answer until it is known' }, ...LATER },
  broke: { type: 'choice', choices: ['yes', 'no'], default: { choice: 'yes', basis: 'common practice', source: 'a pull test ends in a break' }, ...LATER },
  time: { type: 'open', kind: 'time', min: 0.1, max: YEAR, ...LATER },
  date: { type: 'date', ...LATER },
  note: { type: 'text', max: 200, ...LATER },
} as const satisfies Readonly<Record<string, Field>>

export type PullTestColumn = keyof typeof PULL_TEST_FIELDS
export const PULL_TEST_COLUMNS = Object.keys(PULL_TEST_FIELDS) as readonly PullTestColumn[]
