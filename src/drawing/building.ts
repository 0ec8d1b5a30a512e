import type { Scene } from './scene'
import type { Point, Shape, Texture } from './shape'
import { hookPlaces } from './stick'
import { beamShapes, bracketShapes, hasBracket, wallHookShapes } from './support'

const MASONRY: readonly string[] = ['masonry', 'solidBrick', 'perforatedBrick', 'denseBlock', 'aeratedBlock', 'concrete', 'postTensionedSlab']
const BOARD_LIKE: readonly string[] = ['plasterboard', 'plasterboardOnSteelStud', 'ceilingTileOrGrid', 'furringOrResilientChannel', 'lightingBox']

function textureOf(substrate: string): Texture {
  if (MASONRY.includes(substrate)) return 'masonry'
  if (BOARD_LIKE.includes(substrate)) return 'board'
  return ['timber', 'branch', 'chipboard', 'trim'].includes(substrate) ? 'timber' : 'unknown'
}

/** Thickness of a usual ceiling board, m: only what is drawn where nothing stands behind it. */
const BOARD = 0.0125

/** What the hanger hangs from: the ceiling cut through at the hook, and the thread in it to scale where it is known to be in timber; or a wall, with hook or bracket; or a beam. */
export function buildingShapes(scene: Scene): readonly Shape[] {
  const { answers, ceiling, unit, pencil } = scene
  const substrate = answers['place.substrate']
  const texture = textureOf(substrate)
  if (hasBracket(answers)) return bracketShapes(scene, texture)
  if (answers['place.support'] === 'wallHook') return wallHookShapes(scene, texture)
  if (answers['place.support'] === 'overBeam') return beamShapes(scene, texture)
  const place = { link: 'fixing', ink: 'building', leg: null, pencil: pencil('place.substrate') } as const
  const places = hookPlaces(scene)
  const half = 3 * unit + Math.max(...places)
  const top = sectionTop(scene)
  const cut: readonly Point[] = [[-half, ceiling], [half, ceiling], [half, top], [-half, top]]
  const shapes: Shape[] = [
    { ...place, kind: 'area', points: cut, texture, behind: false },
    { ...place, kind: 'line', points: [[-1.3 * half, ceiling], [1.3 * half, ceiling]], width: 0, behind: false },
  ]
  if (substrate === 'timber') shapes.push(...places.flatMap((x) => threadShapes(scene, x)))
  return shapes
}

/** How far up the section is drawn. */
function sectionTop({ answers, ceiling, unit }: Scene): number {
  if (answers['place.substrate'] === 'plasterboard') return ceiling + BOARD
  return ceiling + Math.max(2 * unit, answers['place.substrate'] === 'timber' ? answers['fixing.penetration'] + 0.5 * unit : 0)
}

/** The screw's thread: as long as it is in the timber and as thick as it is. */
function threadShapes({ answers, ceiling, pencil }: Scene, x: number): readonly Shape[] {
  const thread = { link: 'fixing', ink: 'wire', leg: null, pencil: pencil('fixing.penetration', 'fixing.diameter'), kind: 'line', behind: false } as const
  const long = answers['fixing.penetration']
  const thick = answers['fixing.diameter']
  const edge = thick / 2
  const turns = Math.min(40, Math.floor(long / (0.4 * thick)))
  const pitch = long / Math.max(1, turns)
  return [
    { ...thread, points: [[x, ceiling], [x, ceiling + long]], width: 0.7 * thick },
    ...Array.from({ length: turns }, (_, i): Shape => {
      const z = ceiling + (i + 0.5) * pitch
      return { ...thread, points: [[x - edge, z - 0.25 * pitch], [x + edge, z + 0.25 * pitch]], width: 0 }
    }),
  ]
}
