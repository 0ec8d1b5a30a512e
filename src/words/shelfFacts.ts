import type { FieldPath } from '../hanger/fields'
import type { ShelfEntry } from '../shelf/shelf'
import type { ShelfKind } from '../shelf/shelfKinds'
import { FIELD_WORDS } from './fields'
import { PULL_TEST_WORDS } from './pullTests'

type Typed = ShelfEntry['typed']
/** A part of the line of facts; empty where it is not known. */
type Fact = (typed: Typed) => string

const said: (path: FieldPath) => Fact = (path) => (typed) => {
  const text = typed[path]
  return text === undefined || text === 'unknown' ? '' : FIELD_WORDS[path].choices[text] ?? text
}
const withWords = (before: string, path: FieldPath, after: string): Fact => (typed) => {
  const text = said(path)(typed)
  return text === '' ? '' : `${before}${text}${after}`
}
const together = (...facts: readonly Fact[]): Fact => (typed) => facts.map((fact) => fact(typed)).filter((text) => text !== '').join(' ')
const weighed: Fact = (typed) => (typed['cord.weighedMass'] === undefined || typed['cord.weighedLength'] === undefined ? '' : `${typed['cord.weighedMass']} in ${typed['cord.weighedLength']}`)

/** What a maker tells one thing from another by, most telling first. */
const FACTS: Readonly<Record<ShelfKind, readonly Fact[]>> = {
  cord: [together(said('cord.diameter'), said('cord.fibre')), said('cord.make'), said('cord.linearDensity'), weighed, withWords('breaks at ', 'cord.rated', '')],
  pot: [together(said('pot.rim'), said('pot.material')), said('pot.shape'), withWords('', 'pot.height', ' high'), withWords('', 'pot.emptyMass', ' empty')],
  mix: [said('mix.kind'), withWords('', 'mix.bulkDensity', ' dry'), withWords('holds ', 'mix.capacity', ' water'), withWords('', 'mix.porosity', ' pores')],
  hook: [said('hook.kind'), together(said('hook.wire'), said('hook.metal')), withWords('rated ', 'hook.rated', '')],
  ring: [said('ring.metal'), withWords('', 'ring.wire', ' thick'), withWords('', 'ring.inside', ' inside'), withWords('rated ', 'ring.rated', '')],
}

const things = (facts: readonly Fact[], typed: Typed): readonly string[] => facts.map((fact) => fact(typed)).filter((text) => text !== '')

/**
 * The main facts of an entry in one line, as typed.
 * @example shelfFacts({ kind: 'cord', name: 'B12', date: '', note: '', typed: { 'cord.diameter': '3 mm', 'cord.fibre': 'cotton', 'cord.lot': 'B12' }, pullTests: [{ typed: { load: '118 N' }, extra: {} }], extra: {} }) // '3 mm cotton, 1 pull test, lot B12'
 */
export function shelfFacts({ kind, typed, pullTests }: Pick<ShelfEntry, 'kind' | 'typed' | 'pullTests'>): string {
  const tests = pullTests.length === 0 ? [] : [`${pullTests.length} pull test${pullTests.length === 1 ? '' : 's'}`]
  const lot = typed['cord.lot'] === undefined ? [] : [`lot ${typed['cord.lot']}`]
  return [...things(FACTS[kind], typed), ...tests, ...lot].join(', ') || (kind === 'cord' ? 'of unknown kind' : 'no more is known')
}

/** A name to offer for a thing: the roll or lot of a cord, else its two most telling facts. */
export const proposedName = ({ kind, typed }: Pick<ShelfEntry, 'kind' | 'typed'>): string =>
  (typed['cord.lot'] ?? things(FACTS[kind], typed).slice(0, 2).join(', ')).trim().slice(0, 60)

/** All that is known of an entry, value by value and test by test, as it was typed. */
export function shelfDetails({ typed, pullTests }: Pick<ShelfEntry, 'typed' | 'pullTests'>): readonly { readonly label: string; readonly text: string }[] {
  const values = (Object.entries(typed) as [FieldPath, string][]).map(([path, text]) => ({ label: FIELD_WORDS[path].label, text: FIELD_WORDS[path].choices[text] ?? text }))
  const tests = pullTests.map((row, i) => ({
    label: `Pull test ${i + 1}`,
    text: (Object.entries(row.typed) as [keyof typeof PULL_TEST_WORDS, string][])
      .map(([column, text]) => (column === 'broke' ? `broke: ${PULL_TEST_WORDS.broke.choices[text] ?? text}` : PULL_TEST_WORDS[column].choices[text] ?? text)).join(', '),
  }))
  return [...values, ...tests]
}
