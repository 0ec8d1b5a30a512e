import { checkHanger, governingOf, type CheckResult } from '../check/checkHanger'
import type { LinkCode } from '../check/linkResult'
import type { Verdict } from '../check/verdict'
import type { HangerDocument } from '../hanger/document'
import { resolveDocument } from '../hanger/resolve'

/** Of which parts a map tells: of the hanger from ring to seat, of the whole with its place, or of one part. */
export type MapScope = 'hanger' | 'whole' | LinkCode

/** The check of a hanger at one point of a map. */
export interface MapCell {
  /** Of the part that decides; null where that is not known. */
  readonly utilisation: number | null
  readonly verdict: Verdict
  /** The part that decides. */
  readonly link: LinkCode | null
}

/** The cell of a check; null where the part asked about is not in it. */
export function cellOf(check: CheckResult, scope: MapScope): MapCell | null {
  const links = check.links.filter((l) => (scope === 'whole' ? true : scope === 'hanger' ? l.side === 'hanger' : l.link === scope))
  const governing = governingOf(links)
  return governing === null ? null : { utilisation: governing.utilisation, verdict: governing.verdict, link: governing.link }
}

/** The whole check of a document, as a cell; null where its answers cannot be read together. */
export function cellAt(document: HangerDocument | null, scope: MapScope): MapCell | null {
  const resolved = document === null ? null : resolveDocument(document)
  return resolved?.ok === true ? cellOf(checkHanger(resolved.hanger), scope) : null
}
