/** What is said when the app itself went wrong. */
export const FAULTS = {
  wrong: 'Something went wrong in Strandwise itself. What you typed is kept: save it, then start Strandwise again before you trust a figure.',
  show: 'What to report',
  done: 'Done',
  title: 'If something goes wrong',
  what: 'This tells those who mend Strandwise which version it is and where it broke. Nothing of your hanger, your files or your name is in it, and it goes nowhere unless you send it.',
  report: 'Report',
  copy: 'Copy the report',
  copied: 'Copied.',
  selected: 'It is selected: copy it with Ctrl and C, or ⌘ and C.',
} as const
