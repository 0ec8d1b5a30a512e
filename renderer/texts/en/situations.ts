/** The situations that can be drawn. */
export const SITUATIONS = {
  situation: 'Situation',
  short: {
    dry: 'dry',
    watered: 'just watered',
    flooded: 'standing in water',
    strandParted: 'one strand gone',
    legParted: 'one leg gone',
    bump: 'bumped',
    gust: 'in a gust',
    tug: 'tugged at',
    lowerOut: 'lower pot out',
  },
  hardest: (part: string, share: string) => `Works hardest here: ${part}, ${share}.`,
  hardestAssumed: (part: string, share: string) => `On what is assumed, works hardest here: ${part}, ${share}.`,
} as const
