/** Compare two hangers. */
export const COMPARE = {
  title: 'Compare two hangers',
} as const
