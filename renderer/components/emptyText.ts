import { fieldOf, type FieldPath } from '#core'
import { texts } from '../texts/texts'

const t = texts.form

/** What is left open because there is none of it, not because it is not known. */
const NONE: ReadonlySet<FieldPath> = new Set([
  'weighed.tare', 'saucer.width', 'reservoir.volume', 'cover.inside', 'cradle.second', 'testHang.mass', 'testHang.volume', 'cord.rated', 'ring.rated', 'hook.rated', 'fixing.rated', 'fixing.proof', 'reserve.own',
])

/** What stands in pencil where nothing is typed and nothing is assumed. */
export function emptyText(path: FieldPath): string {
  const { type } = fieldOf(path)
  if (type === 'text') return ''
  if (type === 'date') return t.dateExample
  return NONE.has(path) ? t.none : t.notKnown
}
