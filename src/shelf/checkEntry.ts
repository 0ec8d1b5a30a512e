import { EMPTY_DOCUMENT } from '../hanger/document'
import { readValue } from '../hanger/readValue'
import { resolveDocument } from '../hanger/resolve'
import { ENTRY_HEADING_NAMES, ENTRY_HEADINGS } from './entryHeadings'
import type { EntryProblem } from './problem'
import type { ShelfEntry } from './shelf'

/**
 * All that is wrong with an entry by itself: no name, nothing in it, values that cannot be read, pairs
 * that cannot both be true. Empty where it may stand on a shelf. Its values are read as those of a
 * hanger that has nothing else, so that what a shelf takes no hanger refuses.
 */
export function checkEntry({ kind, typed, pullTests, ...headings }: ShelfEntry): readonly EntryProblem[] {
  const problems: EntryProblem[] = []
  if (headings.name.trim() === '') problems.push({ code: 'NO_NAME' })
  for (const heading of ENTRY_HEADING_NAMES) {
    const read = headings[heading] === '' ? null : readValue(heading, ENTRY_HEADINGS[heading], headings[heading])
    if (read?.ok === false) problems.push({ code: 'BAD_HEADING', why: read.problem })
  }
  if (Object.keys(typed).length === 0 && pullTests.length === 0) problems.push({ code: 'NOTHING_IN_IT', kind })
  const resolved = resolveDocument({ ...EMPTY_DOCUMENT, typed, pullTests })
  if (!resolved.ok) problems.push(...resolved.problems.map((why): EntryProblem => ({ code: 'BAD_VALUE', why })))
  return problems
}
