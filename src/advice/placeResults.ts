import type { LinkCode, LinkResult } from '../check/linkResult'
import { LOAD_PATH } from '../check/loadPath'
import { solve } from '../check/solve'
import type { Solved } from '../check/solved'
import { temperLowReserve } from '../check/temperLowReserve'
import { hasStick } from '../hanger/arrangement'
import { editFields, type HangerDocument } from '../hanger/document'
import type { Answers } from '../hanger/fields'
import type { Hanger } from '../hanger/hanger'
import { resolveDocument } from '../hanger/resolve'
import type { PlaceChanges } from './placeCandidates'

/** Links that a fixing and what it holds decide; a chain or stick below them is the hanger's own matter. */
const FIXED: readonly LinkCode[] = ['fixing', 'bracket', 'pin', 'hook', 'hookShank']

/** A document with other answers about its place; null takes one back. */
export const withPlace = (document: HangerDocument, changes: PlaceChanges): HangerDocument => editFields(document, changes)

/** What of its place a hanger hangs by: round a beam a row hangs without its stick, and a panel leans on its wall as far as its hook lets it. */
const hangsBy = (a: Answers): string => (a['make.arrangement'] === 'panel' ? `${String(hasStick(a))} ${a['place.support']} ${a['hook.projection']}` : String(hasStick(a)))

/** By the hanger where it is, the same elsewhere by what it hangs by there: many fixings are tried at one place. */
const elsewhere = new WeakMap<Solved, Map<string, Solved>>()

function solvedAt(solved: Solved, hanger: Hanger): Solved {
  const by = hangsBy(hanger.answers)
  if (by === hangsBy(solved.hanger.answers)) return { ...solved, hanger }
  const known = elsewhere.get(solved) ?? new Map<string, Solved>()
  elsewhere.set(solved, known)
  const there = known.get(by) ?? solve(hanger)
  known.set(by, there)
  return { ...there, hanger }
}

/**
 * How the links of the place stand with other answers about it. What hangs there seldom depends
 * on them, so `solved`, of the document itself, serves for all but a row that loses its stick
 * and a panel that comes nearer to its wall. Null if the changed document cannot be read.
 */
export function placeResults(document: HangerDocument, solved: Solved, changes: PlaceChanges): readonly LinkResult[] | null {
  const resolved = resolveDocument(withPlace(document, changes))
  if (!resolved.ok) return null
  const there = solvedAt(solved, resolved.hanger)
  return temperLowReserve(resolved.hanger.answers, FIXED.flatMap((link) => LOAD_PATH[link](there))).filter((l) => l.side === 'place')
}
