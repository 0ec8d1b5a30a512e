/** The questions: where to start, the groups of fields, and what stands beside a field. */
export const FORM = {
  start: 'Where do you start?',
  doors: {
    pot: { label: 'I have a pot', asks: 'Which cord, how many strands?' },
    hanger: { label: 'I have a hanger', asks: 'What may go in it?' },
    both: { label: 'I have both', asks: 'Will it hold?' },
  },
  thenAnswer: 'Then answer what you know. What you leave empty is assumed, and drawn in pencil.',
  lookAtDemo: 'No numbers at hand? Look at one of the demos above first.',

  groups: {
    pot: 'Pot',
    filling: 'Mix and plant',
    water: 'Water that hangs with it',
    cord: 'Cord',
    making: 'How it is made up',
    place: 'Where it hangs',
    bars: 'Stick, rail or bracket',
  },
  others: 'All other measures',
  groupUnreadable: '(one cannot be read)',

  assumed: (source: string, basis: string) => `Assumed: ${source} (${basis}).`,
  /** A choice that is assumed, and why. */
  assumedChoice: (choice: string, source: string) => `${choice}, ${source}`,
  dontKnow: 'don’t know',
  dontKnowField: (label: string) => `Don’t know: ${label}`,
  clear: 'clear',
  clearField: (label: string) => `Clear: ${label}`,
  notSaid: 'not said',
  /** What stands in pencil in an empty field. */
  dateExample: 'year-month-day',
  none: 'none',
  notKnown: 'not known',
} as const
