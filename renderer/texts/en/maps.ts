/** Maps. */
export const MAPS = {
  title: 'Maps',
} as const
