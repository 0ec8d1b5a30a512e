import { CATALOGUE_CORDS, type CatalogueCord } from '../catalogue/cords'
import type { CheckResult } from '../check/checkHanger'
import type { LinkCode } from '../check/linkResult'
import { isWorse } from '../check/verdict'
import type { HangerDocument, Patch } from '../hanger/document'
import { checkPatched } from './evaluate'

export interface SmallestCord {
  readonly cord: CatalogueCord
  readonly patch: Patch
  readonly check: CheckResult
}

/** Links that the cord decides. */
const CORD_LINKS: ReadonlySet<LinkCode> = new Set(['ringCord', 'leg', 'gatheringTurn', 'wrapHoop'])

const cordPatch = (cord: CatalogueCord): Patch =>
  ({ 'make.have': 'yes', 'cord.fibre': cord.fibre, 'cord.make': cord.make, 'cord.diameter': `${cord.diameter * 1000} mm` })

/**
 * The thinnest of the catalogue's cords with which every link that the cord decides holds or just
 * holds, on the document's build (or the usual one where it is not said): every cord is checked whole.
 * Null if none does.
 */
export function smallestCord(document: HangerDocument): SmallestCord | null {
  for (const cord of CATALOGUE_CORDS) {
    const patch = cordPatch(cord)
    const check = checkPatched(document, patch)
    if (check?.links.every((l) => !CORD_LINKS.has(l.link) || !isWorse(l.verdict, 'just holds'))) return { cord, patch, check }
  }
  return null
}
