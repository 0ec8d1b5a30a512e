/** Choose sizes. */
export const CHOOSING = {
  title: 'Choose sizes',
} as const
