import type { HangerDocument } from '../hanger/document'
import type { ShelfEntry } from './shelf'
import { hasPullTests, SHELF_PATHS, type ShelfKind } from './shelfKinds'

const isOf = (kind: ShelfKind, path: string): boolean => (SHELF_PATHS[kind] as readonly string[]).includes(path)

const picked = (typed: HangerDocument['typed'], keep: (path: string) => boolean): HangerDocument['typed'] =>
  Object.fromEntries(Object.entries(typed).filter(([path]) => keep(path)))

/**
 * A hanger's cord, pot, mix, hook or ring as an entry for the shelf: what was typed, nothing assumed.
 * Whether it may stand there is for `addEntry` to say.
 */
export const takeFromHanger = (document: HangerDocument, kind: ShelfKind, name: string, date: string, note: string): ShelfEntry => ({
  kind,
  name: name.trim(),
  date: date.trim(),
  note: note.trim(),
  typed: picked(document.typed, (path) => isOf(kind, path)),
  pullTests: hasPullTests(kind) ? document.pullTests : [],
  extra: {},
})

/**
 * The hanger with an entry in place of its own cord, pot, mix, hook or ring: a copy, not a link. What
 * the entry does not say is taken back, so that no mixture of two things arises. A pot that is put in
 * is there, whatever was said before.
 * @example putOnHanger({ name: '', typed: { 'mix.kind': 'coir', 'mix.porosity': '90 %' }, pullTests: [], extra: {} }, { kind: 'mix', name: 'Bark', date: '', note: '', typed: { 'mix.kind': 'bark' }, pullTests: [], extra: {} }).typed // { 'mix.kind': 'bark' }
 */
export function putOnHanger(document: HangerDocument, { kind, typed, pullTests }: ShelfEntry): HangerDocument {
  const others = picked(document.typed, (path) => !isOf(kind, path))
  const there = kind === 'pot' && others['pot.have'] === 'no' ? { 'pot.have': 'yes' } : {}
  return { ...document, typed: { ...others, ...there, ...typed }, pullTests: hasPullTests(kind) ? pullTests : document.pullTests }
}
