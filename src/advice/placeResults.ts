import type { LinkCode, LinkResult } from '../check/linkResult'
import { LOAD_PATH } from '../check/loadPath'
import { solve } from '../check/solve'
import type { Solved } from '../check/solved'
import { temperLowReserve } from '../check/temperLowReserve'
import { hasStick } from '../hanger/arrangement'
import { editField, type HangerDocument } from '../hanger/document'
import type { Answers, FieldPath } from '../hanger/fields'
import { resolveDocument } from '../hanger/resolve'
import type { PlaceChanges } from './placeCandidates'

/** Links that a fixing and what it holds decide; a chain or stick below them is the hanger's own matter. */
const FIXED: readonly LinkCode[] = ['fixing', 'bracket', 'pin', 'hook', 'hookShank']

/** A document with other answers about its place; null takes one back. */
export const withPlace = (document: HangerDocument, changes: PlaceChanges): HangerDocument =>
  (Object.entries(changes) as [FieldPath, string | null][]).reduce((changed, [path, text]) => editField(changed, path, text), document)

/** Whether it is the same hanger by either: round a beam a row hangs without its stick, and a panel leans on its wall as far as its hook lets it. */
const hangsAlike = (a: Answers, b: Answers): boolean =>
  hasStick(a) === hasStick(b) && (a['make.arrangement'] !== 'panel' || (a['place.support'] === b['place.support'] && a['hook.projection'] === b['hook.projection']))

/**
 * How the links of the place stand with other answers about it. What hangs there seldom depends
 * on them, so `solved`, of the document itself, serves for all but a row that loses its stick
 * and a panel that comes nearer to its wall. Null if the changed document cannot be read.
 */
export function placeResults(document: HangerDocument, solved: Solved, changes: PlaceChanges): readonly LinkResult[] | null {
  const resolved = resolveDocument(withPlace(document, changes))
  if (!resolved.ok) return null
  const there: Solved = hangsAlike(resolved.hanger.answers, solved.hanger.answers) ? { ...solved, hanger: resolved.hanger } : solve(resolved.hanger)
  return temperLowReserve(resolved.hanger.answers, FIXED.flatMap((link) => LOAD_PATH[link](there))).filter((l) => l.side === 'place')
}
