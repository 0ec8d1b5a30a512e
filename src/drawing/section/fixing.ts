import type { Answers } from '../../hanger/fields'
import type { Scene } from '../scene'
import type { Point, Shape } from '../shape'
import { anchorHole, type AnchorHole } from './anchorDepth'
import { slab, type Frame } from './frame'
import { BOARD, isBoard, isMasonry } from './layers'
import { screwOf } from './screw'
import { nailShapes, screwShapes } from './screwShapes'

type Fixed = Pick<Scene, 'answers' | 'check' | 'pencil'>
type Kind = Answers['fixing.kind']

/** A toggle behind a board, over the bolt's thickness: half its length, and how thick it is. */
const TOGGLE = { half: 6, thick: 1.6 }
/** A pad or magnet, m. */
const PAD = { half: 0.02, thick: 0.006 }

const FOR_TIMBER: readonly Kind[] = ['screwHook', 'woodScrew', 'lagScrew', 'nail']

const pen = (pencil: boolean) => ({ link: 'fixing', ink: 'wire', leg: null, pencil, behind: false } as const)

/** One fixing in its section, at a place along the surface: of its true length and thickness where these were said; nothing where it is not known what it is, or is not made for what it is in. */
export function fixingShapes(scene: Fixed, at: Frame, along: number): readonly Shape[] {
  const { answers, pencil } = scene
  const [kind, substrate] = [answers['fixing.kind'], answers['place.substrate']]
  if (kind === 'adhesive' || kind === 'magnet') return [{ ...pen(pencil('fixing.kind')), kind: 'area', texture: 'open', points: slab(at, [0 - PAD.thick, 0], [along - PAD.half, along + PAD.half]) }]
  if (substrate === 'timber') {
    if (!FOR_TIMBER.includes(kind)) return []
    return kind === 'nail' ? nailShapes(screwOf(scene), at, along) : screwShapes(screwOf(scene), at, along, kind !== 'screwHook')
  }
  if (isBoard(substrate) && kind === 'boardFixing') return toggleShapes(scene, at, along)
  const hole = isMasonry(substrate) || isBoard(substrate) ? anchorHole(scene) : null
  return hole === null ? [] : anchorShapes(scene, hole, at, along)
}

/** A bolt through the board with a bar across its back. */
function toggleShapes({ answers }: Fixed, at: Frame, along: number): readonly Shape[] {
  const bolt = answers['fixing.diameter']
  const common = pen(true)
  return [
    { ...common, kind: 'line', points: [at(0, along), at(BOARD + 3 * bolt, along)], width: bolt },
    { ...common, kind: 'area', texture: 'paper', points: slab(at, [BOARD, BOARD + TOGGLE.thick * bolt], [along - TOGGLE.half * bolt, along + TOGGLE.half * bolt]) },
    { ...common, kind: 'area', texture: 'open', points: slab(at, [BOARD, BOARD + TOGGLE.thick * bolt], [along - TOGGLE.half * bolt, along + TOGGLE.half * bolt]) },
  ]
}

/** A plug with its screw, or a bolt that spreads or is glued in its hole. */
function anchorShapes({ answers, pencil }: Fixed, { hole, deep, said }: AnchorHole, at: Frame, along: number): readonly Shape[] {
  const isPlug = answers['fixing.kind'] === 'plug'
  const unsure = !said || pencil('fixing.kind', ...(isPlug ? ['fixing.plugHole'] as const : []))
  const half = hole / 2
  const sleeve: readonly Point[] = answers['fixing.kind'] === 'resinAnchor'
    ? slab(at, [0, deep], [along - half, along + half])
    : [at(0, along - half), at(0, along + half), at(0.55 * deep, along + half), at(deep, along + 1.25 * half), at(deep, along - 1.25 * half), at(0.55 * deep, along - half)]
  const common = pen(unsure)
  return [
    { ...common, kind: 'area', texture: 'paper', points: sleeve },
    { ...common, kind: 'area', texture: 'open', points: sleeve },
    { ...common, kind: 'line', points: [at(0, along), at(0.95 * deep, along)], width: 0.5 * hole },
    // Teeth of a plug, the split of an anchor.
    ...(isPlug ? [0.3, 0.5, 0.7, 0.85] : []).map((share): Shape => ({ ...common, kind: 'line', width: 0, points: [at(share * deep, along - half), at((share - 0.06) * deep, along), at(share * deep, along + half)] })),
  ]
}
