import type { HangerDocument } from '../hanger/document'
import { FIELD_PATHS, fieldOf, type FieldPath } from '../hanger/fields'
import type { Hanger } from '../hanger/hanger'
import { defaultCounts, isRelevant } from '../hanger/relevance'
import type { QuantityKind } from '../quantity/quantityKind'

/** What one of the two says in a field: as typed, as assumed, nothing though it is asked, or that it has no bearing there. */
export type Saying =
  | { readonly how: 'said' | 'assumed'; readonly text: string }
  | { readonly how: 'open' | 'noBearing' }

/** A field in which two hangers differ. */
export interface Difference {
  readonly path: FieldPath
  readonly first: Saying
  readonly second: Saying
  /** The same value, said in one and assumed in the other. */
  readonly onlySaid: boolean
  /** How its texts are read; null of choices and words. */
  readonly kind: QuantityKind | null
}

/** One of the two, as typed and as read. */
export interface Said {
  readonly document: HangerDocument
  readonly hanger: Hanger
}

function sayingOf({ document, hanger }: Said, path: FieldPath): Saying {
  const typed = document.typed[path]
  if (!isRelevant(path, hanger.answers)) return { how: 'noBearing' }
  if (typed !== undefined) return { how: 'said', text: typed }
  const assumed = hanger.assumed.find((a) => a.path === path)
  if (assumed === undefined) return { how: 'open' }
  return defaultCounts(path, hanger.answers) ? { how: 'assumed', text: assumed.text } : { how: 'noBearing' }
}

const isSilent = ({ how }: Saying): boolean => how === 'open' || how === 'noBearing'

/**
 * In which fields two hangers differ, in the order of the table: another value, or the same that was said in one and assumed in
 * the other. What is written differently but means the same ("20 cm", "200 mm") is no difference; nor is what has a bearing on neither.
 */
export function differences(first: Said, second: Said): readonly Difference[] {
  return FIELD_PATHS.flatMap((path): readonly Difference[] => {
    const [a, b] = [sayingOf(first, path), sayingOf(second, path)]
    if (isSilent(a) && isSilent(b)) return []
    const same = first.hanger.answers[path] === second.hanger.answers[path]
    if (a.how === b.how && same) return []
    const field = fieldOf(path)
    return [{ path, first: a, second: b, onlySaid: same && !isSilent(a) && !isSilent(b), kind: 'kind' in field ? field.kind : null }]
  })
}
