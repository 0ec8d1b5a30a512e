import { troubleText, type FileTrouble } from './fileTroubles'

/** What was being done with the shelf when it went wrong. */
export type ShelfDeed = 'load' | 'save' | 'import' | 'export'

export interface ShelfOutcomeProblem {
  readonly code: FileTrouble
  readonly deed: ShelfDeed
  /** What the system said, in its words. */
  readonly detail: string
}

const NOT_DONE: Readonly<Record<ShelfDeed, string>> = {
  load: 'Your shelf could not be read',
  save: 'Your shelf could not be saved',
  import: 'Nothing was imported',
  export: 'Nothing was written',
}

const whyText = ({ code, detail }: Omit<ShelfOutcomeProblem, 'deed'>): string => (code === 'TOO_LARGE' ? 'it is larger than a shelf can be (1 MB).' : troubleText(code, detail))

/** What is left to do about it. */
const THEN: Readonly<Record<ShelfDeed, string>> = {
  load: 'It was left as it is; what you put on the shelf now stays only until Strandwise is closed, so export it to keep it.',
  save: 'What is on it stays only until Strandwise is closed: export it to keep it.',
  import: 'Your shelf is as it was.',
  export: 'Your shelf is as it was.',
}

/** The sentences for a shelf that could not be read, saved, imported or exported. */
export const shelfOutcomeText = (problem: ShelfOutcomeProblem): string => `${NOT_DONE[problem.deed]}: ${whyText(problem)} ${THEN[problem.deed]}`

/** The sentence for a shelf that could not be read, where something is still to be done about it. */
export const unreadShelfText = (code: FileTrouble, detail: string): string => `${NOT_DONE.load}: ${whyText({ code, detail })}`

/** The sentence for a shelf of which some entries could not be read. `refused`: a sentence for each. */
export const halfReadShelfText = (refused: readonly string[]): string => `Not all of your shelf could be read. ${refused.join(' ')}`

/** Why there is more on the shelf than a moment before. */
export const SHELF_MERGED_TEXT = 'Your shelf was changed in another window meanwhile: what was kept there was added to what is here.'

/**
 * Says that what lay in the shelf's place was kept under another name, and why.
 * @example setAsideText('This is not a shelf file.', 'shelf-set-aside-1.json') // 'This is not a shelf file. Nothing was thrown away: it is kept as shelf-set-aside-1.json, beside your shelf.'
 */
export const setAsideText = (why: string, name: string): string => `${why} Nothing was thrown away: it is kept as ${name}, beside your shelf.`
