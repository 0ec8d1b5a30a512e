/** Choose sizes. */
export const CHOOSING = {
  title: 'Choose sizes',
  titleWithHanger: 'Choose sizes: {hanger}',
  body: 'What was found',
  unread: 'Nothing can be found until the marked answers can be read.',
  asking: (question: string) => `Finding: ${question}.`,
  done: 'All is found.',
  calledOff: 'Called off: what was found by then is shown.',
  failed: 'The sizes could not be worked out.',
  progress: 'Questions answered',
  callOff: 'Call off',
  anew: 'Find anew',
  changed: 'The hanger has been changed since. These answers are for it as it was.',
  howFound: 'Each size was put into the hanger file and the whole hanger checked with it: what the size decides must hold or just hold, and nothing else may come off worse than now.',

  pots: 'Widest pot: of what, and in which mix',
  material: 'Pot of',
  mix: 'Potting mix',

  table: 'What this hanger can be changed to',
  nextTable: 'For the next hanger',
  cordTable: 'Smallest cord, cord by cord: first those on the shelf, then those in the shops',
  columns: { question: 'What is asked', cord: 'Cord', now: 'Now', found: 'Found', then: 'Then', beyond: 'What stops it' },
  settle: 'Why, and what would settle it',
  notAsked: 'Not asked',
  notAskedOf: (questions: string, why: string) => `${questions}: ${why}`,

  tryIt: 'Try it on',
  tryChoice: (question: string, value: string) => `Try it on: ${question}, ${value}`,
  takeBack: 'Take it back',
  takeChoiceBack: (question: string, value: string) => `Take it back: ${question}, ${value}`,
  asNow: 'as it is now',
} as const
