/** How to look after a hanger. */
export const CARE = {
  care: 'Care',
  lookFor: 'Look for wraps gone slack, and for cord frayed, thinned, stained or stretched.',
} as const
