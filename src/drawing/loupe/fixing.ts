import { hookShapes } from '../hook'
import { levelLine, uprightLine, type Measured } from '../measure'
import type { Scene } from '../scene'
import { ceilingFrame, wallFrame, slab, type Frame } from '../section/frame'
import { layersOf } from '../section/layers'
import { screwMeasured, screwOf } from '../section/screw'
import { sectionShapes } from '../section/section'
import { sideScene } from '../side/sideScene'
import { bracketScrews, hasBracket } from '../support'
import { hookProfile, shankHeight } from '../side/wall'
import type { Shape } from '../shape'
import { hookPlaces } from '../stick'
import { shiftedShape } from '../shifted'
import { around, type Detail } from './detail'

/** Half as much of wall or ceiling is shown at least, m, and a plate's thickness. */
const LEAST = 0.025
const PLATE = 0.003

/** One fixing in its section, large; null where what hangs goes round a beam. */
export function fixingDetail(scene: Scene): Detail | null {
  if (scene.answers['place.support'] === 'overBeam') return null
  return scene.answers['place.support'] === 'ceilingHook' ? overhead(scene) : inWall(scene)
}

/** Half of the surface shown. */
const halfOf = (scene: Scene): number => Math.max(LEAST, 0.55 * deepest(scene), scene.answers['fixing.kind'] === 'boardFixing' ? 8 * scene.answers['fixing.diameter'] : 0)
const deepest = (scene: Scene): number => Math.max(scene.answers['place.substrate'] === 'timber' ? screwOf(scene).length : 0, Math.min(scene.answers['fixing.length'] ?? 0, 0.2))

function overhead(scene: Scene): Detail {
  const { ceiling, stickAt } = scene
  const x = stickAt + Math.max(...hookPlaces(scene))
  const half = halfOf(scene)
  const hook = hookShapes(scene, 0).filter(({ link }) => link === 'hookShank').map((shape) => shiftedShape(shape, x))
  const at = ceilingFrame(ceiling)
  return {
    code: 'fixing', link: 'fixing', of: around([x, ceiling + 0.4 * half], 1.3 * half),
    shapes: [...section(scene, at, x, half), ...hook],
    dimensions: (unit) => depths(scene, unit, half).map(([line, side]) => ({ ...line, at: x + line.at, ends: [ceiling + line.ends[0], ceiling + line.ends[1]] as const, feet: [x, x] as const, side })).map(({ side, ...line }) =>
      uprightLine(line, { side, away: 0.4 * unit, height: (line.ends[0] + line.ends[1]) / 2 })),
  }
}

function inWall(front: Scene): Detail {
  const scene = sideScene(front)
  const bracket = hasBracket(scene.answers)
  const height = bracket ? bracketScrews(scene).at(-1) ?? scene.bowl : shankHeight(scene)
  const wall = scene.wall ?? 0
  const half = halfOf(scene)
  const at = wallFrame(wall)
  const plate: Shape = { kind: 'area', link: 'fixing', ink: 'wire', leg: null, pencil: true, behind: false, texture: 'open', points: slab(at, [0 - PLATE, 0], [height - half, height + half]) }
  return {
    code: 'fixing', link: 'fixing', of: around([0, height], 1.3 * half),
    shapes: [...section(scene, at, height, half), ...(bracket ? [plate] : hookProfile(scene, wall))],
    dimensions: (unit) => depths(scene, unit, half).map(([line]) => levelLine({ ...line, at: height + (line.at > 0 ? 1 : -1) * Math.abs(line.at), ends: [wall + line.ends[0], wall + line.ends[1]], feet: [height, height] }, 0.5 * unit)),
  }
}

const section = (scene: Scene, at: Frame, along: number, half: number): readonly Shape[] =>
  sectionShapes(scene, at, { from: along - half, to: along + half, least: 1.2 * half, surface: [along - 1.1 * half, along + 1.1 * half], fixings: [along] })

/** Lines along the fixing: their ends from the surface inwards, and how far aside they stand; those of the whole to the other side. */
function depths(scene: Scene, unit: number, half: number): readonly (readonly [Measured, 'left' | 'right'])[] {
  const { answers, pencil } = scene
  const aside = 1.1 * half
  const line = (path: Measured['path'], value: number, from: number, at: number): Measured => ({ path, value, pencil, ends: [from, from + value], at, feet: [0, 0] })
  const between = layersOf(scene, 0.1).length > 1 ? answers['fixing.between'] : 0
  const drilled = answers['place.substrate'] === 'timber' || answers['place.substrate'] === 'concrete' || answers['place.substrate'] === 'aeratedBlock'
  const length = drilled && answers['fixing.rated'] === null ? answers['fixing.length'] : null
  const thread = screwOf(scene).thread[1]
  const depth = answers['place.substrate'] === 'timber' ? answers['fixing.timberDepth'] : null
  return [
    ...(screwMeasured(scene) ? [[line('fixing.penetration', answers['fixing.penetration'], thread - answers['fixing.penetration'], aside + unit), 'right'] as const] : []),
    ...(length === null ? [] : [[line('fixing.length', length, 0, 0 - aside - unit), 'left'] as const]),
    ...(between > 0 ? [[line('fixing.between', between, 0, aside + 6 * unit), 'right'] as const] : []),
    ...(depth === null ? [] : [[line('fixing.timberDepth', depth, between, 0 - aside - 6 * unit), 'left'] as const]),
  ]
}

