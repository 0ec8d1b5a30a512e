import type { PullTestColumn } from '../hanger/pullTestFields'
import type { FieldWords } from './fields'

/** What the columns of the pull-test log are called. */
export const PULL_TEST_WORDS: Readonly<Record<PullTestColumn, FieldWords>> = {
  load: { label: 'Load', help: 'The most it bore, as the scale showed it: kg or lb of pull, or N.', choices: {} },
  how: { label: 'Pulled how', help: 'One strand straight, or one strand as it is tied in the hanger: round the ring, through its knots, into the wraps.', choices: { straight: 'straight', tied: 'as tied' } },
  state: { label: 'Dry or soaked', help: 'Soaked: an hour in water first.', choices: { dry: 'dry', soaked: 'soaked' } },
  broke: { label: 'Did it break?', help: 'A pull that was stopped before the break counts as if it had broken there.', choices: { yes: 'yes', no: 'no, it held' } },
  time: { label: 'Time to break', help: 'From the first pull to the break; slow pulls break at less.', choices: {} },
  date: { label: 'Date', help: 'Year-month-day, such as 2026-03-21.', choices: {} },
  note: { label: 'Note', help: 'Where it broke, what was odd.', choices: {} },
}
