/** What it weighs, in bars and in a table. */
export const WEIGHT = {
  title: 'What it weighs',
  noPot: 'There is no pot yet: these are the weights of the pot it is checked with.',
  /** After the name of a state. */
  asWeighed: 'as you weighed it',
  howToRead: 'The line beneath a bar goes from the lightest to the heaviest it may be, the diamond is the likely weight. Every part is checked with the heaviest.',
  table: 'What it weighs, part by part',
  likely: 'Likely weight',
  furtherWater: (part: string) => `${part}, further water`,
  ofItWater: 'of it water',
  all: 'all that hangs',
  range: 'lightest to heaviest',
} as const
