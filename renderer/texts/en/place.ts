/** What a hanger needs of its place. */
export const PLACE = {
  title: 'What the place needs',
  titleWithHanger: 'What the place needs: {hanger}',
  list: 'Walls and ceilings',
  print: 'Print…',
  failed: 'What the place needs could not be worked out.',
  unread: 'Nothing can be said until the marked answers can be read.',
  asking: 'Working out what each wall and ceiling needs.',
  howFound: 'Each fixing was put into the hanger file and checked there; the smallest that holds or just holds is told. A packet’s own rating for this very material goes before any table.',

  table: 'The fixing that would do in each usual wall and ceiling',
  columns: { place: 'Wall or ceiling', fixing: 'Fixing', numberAndDepth: 'Number and depth', then: 'Then, and how it is known', packet: 'On its packet, at least' },
  /** Heads of the cells where the table has no columns. */
  cells: { numberAndDepth: 'Number and depth', then: 'Then', packet: 'On its packet, at least' },
  refused: 'Refused.',
  tryIt: 'Try it',
  tryFixing: (place: string, fixing: string) => `Try it: ${place}, ${fixing}`,
  takeBack: 'Take it back',
  takeFixingBack: (place: string, fixing: string) => `Take it back: ${place}, ${fixing}`,
  stands: 'stands in the file',

  /** `question` is the label of the question what is beneath. */
  beneath: (question: string) => `${question}, and what each answer changes`,
  beneathUnsaid: 'Not said yet: people are assumed, the safer answer.',
  hookOverhead: (rating: string) => `One hook overhead: ${rating} on its packet, straight out.`,

  ask: 'Ask the customer',
  copy: 'Copy the text',
  copied: 'Copied.',
  selected: 'It is selected: copy it with Ctrl and C, or ⌘ and C.',
  toCustomer: 'Text to the customer',
  enter: 'How to enter what they say',
} as const
