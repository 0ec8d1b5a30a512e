import type { Scene } from '../scene'
import type { Texture } from '../shape'
import { anchorHole } from './anchorDepth'
import { screwOf } from './screw'

const MASONRY: readonly string[] = ['masonry', 'solidBrick', 'perforatedBrick', 'denseBlock', 'aeratedBlock', 'concrete', 'postTensionedSlab']
const BOARD_LIKE: readonly string[] = ['plasterboard', 'plasterboardOnSteelStud', 'ceilingTileOrGrid', 'furringOrResilientChannel', 'lightingBox']
const WOODEN: readonly string[] = ['timber', 'branch', 'chipboard', 'trim']

/** How what it is fixed into is filled. */
export function textureOf(substrate: string): Texture {
  if (MASONRY.includes(substrate)) return 'masonry'
  if (BOARD_LIKE.includes(substrate)) return 'board'
  return WOODEN.includes(substrate) ? 'timber' : 'unknown'
}

export const isMasonry = (substrate: string): boolean => MASONRY.includes(substrate)
export const isBoard = (substrate: string): boolean => substrate === 'plasterboard' || substrate === 'plasterboardOnSteelStud'

/** Thickness of a usual board, m: only what is drawn where nothing else is said of it. */
export const BOARD = 0.0125

/** One material of a section, from the surface inwards, m. */
export interface Layer {
  readonly texture: Texture
  readonly from: number
  readonly to: number
  /** Whether it ends there; else it is only drawn no further. */
  readonly ends: boolean
  readonly pencil: boolean
}

/** What a hole would go through; `least`: how deep a section is drawn at least. */
export function layersOf(scene: Pick<Scene, 'answers' | 'check' | 'pencil'>, least: number): readonly Layer[] {
  const { answers, pencil } = scene
  const substrate = answers['place.substrate']
  const [texture, unsure] = [textureOf(substrate), pencil('place.substrate')]
  if (isBoard(substrate)) return [{ texture, from: 0, to: BOARD, ends: true, pencil: true }]
  const before = substrate === 'timber' || substrate === 'aeratedBlock' || substrate === 'concrete' ? answers['fixing.between'] : 0
  const depth = substrate === 'timber' ? answers['fixing.timberDepth'] : null
  const held = substrate === 'timber' ? screwOf(scene).length : anchorHole(scene)?.deep ?? 0
  const reach = held + 0.25 * least
  return [
    ...(before > 0 ? [{ texture: 'board', from: 0, to: before, ends: true, pencil: pencil('fixing.between') } as const] : []),
    { texture, from: before, to: depth === null ? Math.max(least, reach, before + 0.5 * least) : before + depth, ends: depth !== null, pencil: unsure },
  ]
}
