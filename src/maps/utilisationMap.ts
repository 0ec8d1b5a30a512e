import type { HangerDocument } from '../hanger/document'
import { resolveDocument } from '../hanger/resolve'
import { pottedMass } from '../load/pottedMass'
import { axisOf, type Axis, type AxisCode, type AxisOf } from './axis'
import { cellAt, type MapCell, type MapScope } from './cell'

/** What may be mapped, by what lies along and what lies up. */
export const MAPS = ['cordByPot', 'lengthByPot', 'strandsByWeight'] as const
export type MapCode = (typeof MAPS)[number]
export const MAP_AXES: Readonly<Record<MapCode, readonly [along: AxisCode, up: AxisCode]>> = {
  cordByPot: ['rim', 'cordDiameter'],
  lengthByPot: ['rim', 'length'],
  strandsByWeight: ['watered', 'strands'],
}

export interface MapAsked {
  readonly document: HangerDocument
  readonly map: MapCode
  readonly scope: MapScope
}

export type MapStep =
  /** A grid begins, finer than the one before; its rows follow. */
  | { readonly kind: 'grid'; readonly along: Axis; readonly up: Axis }
  /** `row`: its place among the values that lie up. A cell is null where the answers cannot be read together. */
  | { readonly kind: 'row'; readonly row: number; readonly cells: readonly (MapCell | null)[] }
  /** The hanger as it is. */
  | { readonly kind: 'present'; readonly cell: MapCell | null }

/** Why there is no map: nothing can be read, there is no hanger yet, or it has no such measure. */
export type NoMap = 'unread' | 'noHanger' | 'notConcerned'
export type MapOutcome = { readonly ok: true; readonly checks: number } | { readonly ok: false; readonly why: NoMap }

/** Points along each axis: a coarse grid is seen at once, a fine one follows. */
const POINTS = [7, 21] as const

/**
 * Utilisation of a hanger over two of its measures: the whole check run again at every point, the present hanger first, then a
 * coarse grid and a fine one, row by row, so that it can be shown as it comes and stopped.
 */
export function* utilisationMap({ document, map, scope }: MapAsked): Generator<MapStep, MapOutcome, void> {
  const resolved = resolveDocument(document)
  if (!resolved.ok) return { ok: false, why: 'unread' }
  const { answers } = resolved.hanger
  if (answers['make.have'] === 'no') return { ok: false, why: 'noHanger' }
  const now = pottedMass(answers).watered.mass.high
  let checks = 1
  yield { kind: 'present', cell: cellAt(document, scope) }
  for (const points of POINTS) {
    const [along, up] = MAP_AXES[map].map((code) => axisOf(code, resolved.hanger, now, points)) as [AxisOf | null, AxisOf | null]
    if (along === null || up === null) return { ok: false, why: 'notConcerned' }
    yield { kind: 'grid', along: along.axis, up: up.axis }
    const alongBare = along.bare(document)
    const bare = alongBare === null ? null : up.bare(alongBare)
    for (const [row, y] of up.axis.values.entries()) {
      const put = bare === null ? null : up.put(bare, y)
      const cells = along.axis.values.map((x) => cellAt(put === null ? null : along.put(put, x), scope))
      checks += cells.length
      yield { kind: 'row', row, cells }
    }
  }
  return { ok: true, checks }
}

/** The hanger at one point of a map, to be tried on; null where that point cannot be had. */
export function mappedDocument({ document, map }: Pick<MapAsked, 'document' | 'map'>, x: number, y: number): HangerDocument | null {
  const resolved = resolveDocument(document)
  if (!resolved.ok) return null
  const [along, up] = MAP_AXES[map].map((code) => axisOf(code, resolved.hanger, pottedMass(resolved.hanger.answers).watered.mass.high, 2)) as [AxisOf | null, AxisOf | null]
  const bare = along?.bare(document) ?? null
  const both = bare === null ? null : up?.bare(bare) ?? null
  return both === null || along === null || up === null ? null : along.put(up.put(both, y), x)
}
