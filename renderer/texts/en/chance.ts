/** Chance. */
export const CHANCE = {
  title: 'Chance',
} as const
