/** What was assumed, confirmed or changed; and what would settle a verdict. */
export const ASSUMED = {
  title: 'What is assumed',
  body: 'Assumed answers',
  about: 'These were not answered. Each is drawn in pencil until it is. Say yes to what you measured or know; the rest may stay.',
  nothing: 'Nothing is assumed any more.',
  columns: { what: 'What', taken: 'Taken as', why: 'Why' },
  why: (source: string, basis: string) => `${source} (${basis})`,
  decides: (part: string) => `${part}: this part decides`,
  rest: 'Other things',
  confirm: 'Yes, that is so',
  confirmOf: (label: string, taken: string) => `Yes, that is so: ${label}${label.endsWith('?') ? '' : ':'} ${taken}`,
  change: 'Change it',
  answer: 'Answer it',
  changeOf: (label: string) => `Change it: ${label}`,
  answerOf: (label: string) => `Answer it: ${label}`,
  undo: 'Take it back',
  undoOf: (label: string) => `Take it back: ${label}`,
  confirmed: (label: string, taken: string, left: number) => `${label}${label.endsWith('?') ? '' : ':'} ${taken}, as your own answer. ${left === 0 ? 'Nothing else is assumed.' : left === 1 ? 'One thing is still assumed.' : `${left} things are still assumed.`}`,
  takenBack: (label: string) => `Assumed again: ${label}`,

  settles: 'What would settle it',
  answerField: (label: string) => `Answer: ${label}`,
  /** Above the numbers of a part of which not enough is known. */
  until: 'Until then, on what is assumed',
  onAssumed: 'It would be',
} as const
