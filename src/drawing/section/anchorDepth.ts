import type { Scene } from '../scene'

/** Depth of a plug or anchor over its hole, where its length was not said: only what is drawn, in pencil. */
const USUAL_DEPTH = 6

/** The hole of a plug or anchor, and how deep it goes from the surface, m; `said`: whether that is known. */
export interface AnchorHole {
  readonly hole: number
  readonly deep: number
  readonly said: boolean
}

export function anchorHole({ answers }: Pick<Scene, 'answers'>): AnchorHole | null {
  const kind = answers['fixing.kind']
  if (kind !== 'plug' && kind !== 'metalAnchor' && kind !== 'resinAnchor') return null
  const hole = kind === 'plug' ? answers['fixing.plugHole'] : 2 * answers['fixing.diameter']
  // Elsewhere its length is not asked.
  const length = answers['place.substrate'] === 'aeratedBlock' || answers['place.substrate'] === 'concrete' ? answers['fixing.length'] : null
  return { hole, deep: length ?? answers['fixing.between'] + USUAL_DEPTH * hole, said: length !== null }
}
