import type { Extra } from '../hanger/extra'
import { pullTestJson } from '../hanger/parse'
import { splitPath } from '../hanger/schema'
import { ENTRY_HEADING_NAMES } from './entryHeadings'
import type { Shelf, ShelfEntry } from './shelf'
import { SHELF_PATHS } from './shelfKinds'
import { SHELF_FORMAT, SHELF_VERSION } from './shelfSchema'

/** An entry as it stands in a file: what was typed, in the order of the table of inputs, and every kept key. */
export function entryJson({ kind, typed, pullTests, extra, ...headings }: ShelfEntry): Extra {
  const values = SHELF_PATHS[kind].flatMap((path): [string, string][] => {
    const text = typed[path]
    return text === undefined ? [] : [[splitPath(path)[1], text]]
  })
  const { [kind]: keptInGroup, ...kept } = extra
  const group = Object.fromEntries([...values, ...Object.entries(keptInGroup ?? {})])
  return Object.fromEntries([
    ['kind', kind],
    ...ENTRY_HEADING_NAMES.flatMap((heading): [string, string][] => (headings[heading] === '' ? [] : [[heading, headings[heading]]])),
    ...(Object.keys(group).length === 0 ? [] : [[kind, group] as const]),
    ...(pullTests.length === 0 ? [] : [['pullTests', pullTestJson(pullTests)] as const]),
    ...Object.entries(kept),
  ])
}

/** The text of the shelf file; `readShelf` reads it back to the same shelf. */
export const writeShelf = ({ entries, extra }: Shelf): string =>
  `${JSON.stringify(Object.fromEntries([['format', SHELF_FORMAT], ['version', SHELF_VERSION], ['entries', entries.map(entryJson)], ...Object.entries(extra)]), null, 2)}\n`
