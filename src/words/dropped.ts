/** Why what was dropped on the window was not opened. */
export type DropProblem =
  /** Nothing dropped was a file. */
  | { readonly code: 'NO_FILE' }
  | { readonly code: 'SEVERAL_FILES'; readonly count: number }
  | { readonly code: 'OTHER_KIND'; readonly name: string }

/** The sentence for a drop that opened nothing. */
export function dropProblemText(problem: DropProblem): string {
  if (problem.code === 'SEVERAL_FILES') return `${problem.count} files were dropped and none was opened: drop one hanger file at a time.`
  if (problem.code === 'OTHER_KIND') return `${problem.name} was not opened: a hanger file ends in .strandwise.`
  return 'Nothing was opened: what was dropped is no file.'
}

/** Said while a file is held over the window. */
export const DROP_HERE_TEXT = 'Let go to open this hanger.'

/** Said of a dropped file that can only be saved by choosing where. */
export const droppedText = (name: string): string => `${name} is open. Where it lies is not told to Strandwise: saving asks where to.`
