/** What all dialogs say. */
export const DIALOGS = {
  close: 'Close',
  /** Puts a message away. */
  done: 'Done',
} as const
