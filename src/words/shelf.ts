import type { FieldPath } from '../hanger/fields'
import type { EntryProblem, RefusedEntry, ShelfFileProblem } from '../shelf/problem'
import type { ShelfEntry } from '../shelf/shelf'
import type { ShelfKind } from '../shelf/shelfKinds'
import { problemText, valueText } from './problems'

/** What the kinds are called: one, several, and in the middle of a sentence with their article. */
export const SHELF_KIND_NAMES: Readonly<Record<ShelfKind, { readonly one: string; readonly many: string; readonly article: string }>> = {
  cord: { one: 'cord', many: 'Cords', article: 'a cord' },
  pot: { one: 'pot', many: 'Pots', article: 'a pot' },
  mix: { one: 'mix', many: 'Mixes', article: 'a mix' },
  hook: { one: 'hook', many: 'Hooks', article: 'a hook' },
  ring: { one: 'ring', many: 'Rings', article: 'a ring' },
}

const KINDS_ALLOWED = Object.keys(SHELF_KIND_NAMES).join(', ')

type Words<P extends { readonly code: string }> = { readonly [C in P['code']]: (problem: Extract<P, { code: C }>) => string }

const FILE_WORDS: Words<ShelfFileProblem> = {
  NOT_JSON: ({ detail }) => `This is not a shelf file: it cannot be read as JSON (${detail}).`,
  HANGER_FILE: () => 'This is a hanger file, not a shelf. Open it as a hanger; its cord, pot, mix, hook and ring can then be kept on the shelf one by one.',
  NOT_A_SHELF: ({ found }) => `This is not a shelf file: "format" should be "strandwise-shelf" and is ${found}.`,
  BAD_VERSION: ({ found }) => `This is not a shelf file: "version" should be a whole number from 1 and is ${found}.`,
  NEWER_VERSION: ({ version }) => `This shelf file is of version ${version}, made by a newer Strandwise; this one reads version 1.`,
  NO_LIST: ({ found }) => `This is not a shelf file: "entries" should be a list and is ${found}.`,
}

const ENTRY_WORDS: Words<EntryProblem> = {
  NOT_AN_ENTRY: ({ found }) => `An entry should be an object with its kind, its name and its values, and is ${found}.`,
  UNKNOWN_KIND: ({ found }) => `“kind” is ${found}. Allowed: ${KINDS_ALLOWED}.`,
  NO_NAME: () => 'It has no name, and without one it could not be told from others. Give it a name of up to 80 characters.',
  NOTHING_IN_IT: ({ kind }) => `There is nothing in it: give at least one thing that you know of the ${SHELF_KIND_NAMES[kind].one}.`,
  NOT_TEXT: ({ path, found }) => `“${path}” should be a text, such as "3 mm", and is ${found}.`,
  NOT_A_GROUP: ({ kind, found }) => `“${kind}” should hold what is known of the ${SHELF_KIND_NAMES[kind].one}, each under its name, and is ${found}.`,
  NOT_A_LOG: ({ found }) => `“pullTests” should be a list of pull tests, each with its load, and is ${found}.`,
  BAD_HEADING: ({ why }) => valueText(HEADING_NAMES[why.path], why),
  BAD_VALUE: ({ why }) => problemText(why),
  NAME_TAKEN: ({ kind, name }) => `There is already ${SHELF_KIND_NAMES[kind].article} called “${name}”, and it differs: rename one of the two.`,
  SAME_THERE: ({ kind, name }) => `The ${SHELF_KIND_NAMES[kind].one} “${name}” is on the shelf already, the very same.`,
}

const HEADING_NAMES = { name: 'Name', date: 'Date', note: 'Note' } as const

/** The sentence for a text that is no shelf. */
export const shelfFileText = (problem: ShelfFileProblem): string => (FILE_WORDS[problem.code] as (p: ShelfFileProblem) => string)(problem)

/** The sentence for what keeps an entry from the shelf: which value, what was given, what is allowed. */
export const entryProblemText = (problem: EntryProblem): string => (ENTRY_WORDS[problem.code] as (p: EntryProblem) => string)(problem)

/** What a refused entry is called in a report: its kind and name, and where it stands in its file. */
export function refusedEntryName({ kind, name, position }: Pick<RefusedEntry, 'kind' | 'name' | 'position'>): string {
  const named = [kind === null ? '' : SHELF_KIND_NAMES[kind].one, name === null ? '' : `“${name}”`].filter((part) => part !== '').join(' ')
  return named === '' ? `Entry ${position}` : `Entry ${position}, ${named}`
}

/** What kept an entry of a file out, in full sentences that name it. */
export const refusedEntryText = (refused: RefusedEntry): string => `${refusedEntryName(refused)}: ${refused.why.map(entryProblemText).join(' ')}`

const count = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`

/** What an import came to. */
export function importText({ added, skipped, refused }: { readonly added: readonly unknown[]; readonly skipped: readonly unknown[]; readonly refused: readonly unknown[] }): string {
  if (added.length + skipped.length + refused.length === 0) return 'There was nothing in that shelf file.'
  const parts = [
    added.length > 0 ? `${count(added.length, 'entry', 'entries')} came in` : 'Nothing new came in',
    ...(skipped.length > 0 ? [`${count(skipped.length, 'was', 'were')} here already`] : []),
    ...(refused.length > 0 ? [`${count(refused.length, 'was', 'were')} refused`] : []),
  ]
  return `${parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`}.`
}

/** What stands in a hanger that was made or weighed with the thing now replaced. */
const LEFT_BEHIND: Readonly<Partial<Record<ShelfKind, readonly { readonly paths: readonly FieldPath[]; readonly says: string }[]>>> = {
  pot: [{ paths: ['weighed.mass'], says: 'The weighing still counts: take it back if it was of another pot.' }],
  mix: [{ paths: ['weighed.mass'], says: 'The weighing still counts: take it back if it was with another mix.' }],
  cord: [{ paths: ['testHang.mass', 'testHang.volume'], says: 'The test hang still counts: take it back if it was with another cord.' }],
  hook: [
    { paths: ['testHang.mass', 'testHang.volume'], says: 'The test hang still counts: take it back if it was on another hook.' },
    { paths: ['fixing.proof'], says: 'The pull in place still counts: take it back if it was on another screw.' },
  ],
  ring: [{ paths: ['testHang.mass', 'testHang.volume'], says: 'The test hang still counts: take it back if it was on another ring.' }],
}

/** Says what was put on the hanger, and what of its own still stands beside it. `typed`: the hanger's texts. */
export function putText({ kind, name }: ShelfEntry, typed: Readonly<Partial<Record<FieldPath, string>>>): string {
  const left = (LEFT_BEHIND[kind] ?? []).filter(({ paths }) => paths.some((path) => typed[path] !== undefined)).map(({ says }) => says)
  return [`The ${SHELF_KIND_NAMES[kind].one} “${name}” is in this hanger now, in place of its own; Undo takes it back.`, ...left].join(' ')
}

/** In one or two sentences, what a shelf with nothing on it is for. */
export const EMPTY_SHELF_TEXT = 'Nothing is on your shelf yet. Keep here the cords, pots, mixes, hooks and rings that you weighed or tested yourself, and use them again in other hangers.'

/** Why later edits of a hanger do not reach the shelf. */
export const SHELF_COPIES_TEXT = 'A hanger gets a copy: what you change in the hanger afterwards changes nothing on the shelf, and the other way round.'
