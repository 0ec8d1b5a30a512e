import { isDeepStrictEqual } from 'node:util'
import { checkHanger } from '../../src/check/checkHanger'
import { FIELD_PATHS, fieldOf } from '../../src/hanger/fields'
import { DEMOS } from '../../src/hanger/demos'
import { parseDocument, writeDocument } from '../../src/hanger/parse'
import { resolveDocument } from '../../src/hanger/resolve'
import { splitPath } from '../../src/hanger/schema'
import { readShelf } from '../../src/shelf/readShelf'
import { writeShelf } from '../../src/shelf/writeShelf'
import { problemText } from '../../src/words/problems'
import type { Chance } from './chance'
import { mutated } from './mutate'
import { oddNumbers, prototypesAreClean } from './wholesome'

/** Words that mean something to the readers: groups, keys and choices, and good answers of all kinds. */
const WORDS: readonly string[] = [...new Set([
  ...FIELD_PATHS.flatMap((path) => {
    const field = fieldOf(path)
    return [...splitPath(path), ...(field.type === 'choice' ? field.choices : [])]
  }),
  '3 mm', '1 m', '12 in', '5 kg', '10 lb', '40 %', '200 N', '3 years', '2', '12', '0.5 mm', '900 mm', '30 deg', '2 g/m', '2026-11-26', 'pullTests', 'inspections', 'sold',
])]

const SHELVES = [
  JSON.stringify({ format: 'strandwise-shelf', version: 1, entries: [
    { kind: 'cord', name: 'Market cotton', date: '2026-04-02', note: 'two rolls left', cord: { fibre: 'cotton', diameter: '4 mm' }, pullTests: [{ load: '210 N', how: 'straight' }] },
    { kind: 'mix', name: 'Bark and grit', date: '', note: '', mix: { kind: 'bark' } },
  ] }),
]

/** What a hostile input did that it must not; null where nothing. */
export interface Harm {
  readonly what: string
  readonly input: string
}

export interface Tally {
  tried: number
  read: number
  resolved: number
  checked: number
  /** Longest time one input took, ms, and that input. */
  slowest: number
  slowestInput: string
}

export const newTally = (): Tally => ({ tried: 0, read: 0, resolved: 0, checked: 0, slowest: 0, slowestInput: '' })

function hangerHarm(input: string, tally: Tally, check: boolean): string | null {
  const parsed = parseDocument(input)
  if (!parsed.ok) return parsed.problems.every((problem) => problemText(problem).length > 0) ? null : 'refused without a sentence'
  tally.read += 1
  const again = parseDocument(writeDocument(parsed.document))
  if (!again.ok) return 'what was read and written cannot be read again'
  if (!isDeepStrictEqual(again.document, parsed.document)) return 'what was read and written reads otherwise'
  const resolved = resolveDocument(parsed.document)
  if (!resolved.ok) return resolved.problems.every((problem) => problemText(problem).length > 0) ? null : 'refused without a sentence'
  tally.resolved += 1
  const [odd] = oddNumbers(resolved.hanger)
  if (odd !== undefined) return `read as ${odd}`
  if (!check) return null
  tally.checked += 1
  const [wrong] = oddNumbers(checkHanger(resolved.hanger))
  return wrong === undefined ? null : `checked as ${wrong}`
}

function shelfHarm(input: string, tally: Tally): string | null {
  const read = readShelf(input)
  if (!read.ok) return null
  tally.read += 1
  const again = readShelf(writeShelf(read.shelf))
  return again.ok && isDeepStrictEqual(again.shelf, read.shelf) ? null : 'what was read and written reads otherwise'
}

/**
 * Reads one mutated file as the app would, and says what harm it did: a crash, a number that is none, a prototype
 * changed, a file that does not come back as it was read.
 * @param check whether a file that can be read is checked whole too, which takes longer
 */
export function harmOf(chance: Chance, tally: Tally, check: boolean): Harm | null {
  const isShelf = chance.maybe(15)
  const input = mutated(isShelf ? chance.oneOf(SHELVES) : chance.oneOf(DEMOS).text, chance, WORDS)
  tally.tried += 1
  const start = performance.now()
  let what: string | null
  try {
    what = isShelf ? shelfHarm(input, tally) : hangerHarm(input, tally, check)
  } catch (error) {
    what = `crashed: ${error instanceof Error ? error.stack ?? error.message : String(error)}`
  }
  const took = performance.now() - start
  if (took > tally.slowest) Object.assign(tally, { slowest: took, slowestInput: input })
  if (what === null && !prototypesAreClean()) what = 'a prototype was changed'
  return what === null ? null : { what, input }
}
