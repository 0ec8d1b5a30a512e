/** What all dialogs say. */
export const DIALOGS = {
  close: 'Close',
} as const
