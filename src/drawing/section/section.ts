import type { Scene } from '../scene'
import type { Shape } from '../shape'
import { fixingShapes } from './fixing'
import { slab, type Frame } from './frame'
import { isBoard, layersOf, type Layer } from './layers'

/** What is cut through: how much of the surface, how deep at least, how far beyond it the surface is drawn, and where fixings are; m. */
export interface Cut {
  readonly from: number
  readonly to: number
  readonly least: number
  readonly surface: readonly [number, number]
  readonly fixings: readonly number[]
}

const pen = { link: 'fixing', ink: 'building', leg: null, behind: false } as const

/** Wall or ceiling cut through at the fixing: its layers, as far as they are known, the surface, and each fixing in it. */
export function sectionShapes(scene: Pick<Scene, 'answers' | 'check' | 'pencil'>, at: Frame, cut: Cut): readonly Shape[] {
  const layers = layersOf(scene, cut.least)
  return [
    ...layers.map((layer): Shape => ({ ...pen, pencil: layer.pencil, kind: 'area', texture: layer.texture, points: slab(at, [layer.from, layer.to], [cut.from, cut.to]) })),
    ...layers.filter(({ ends }) => ends).map((layer) => farSide(layer, at, cut)),
    ...(scene.answers['place.substrate'] === 'plasterboardOnSteelStud' ? [studLine(layers, at, cut)] : []),
    { ...pen, pencil: scene.pencil('place.substrate'), kind: 'line', width: 0, points: [at(0, cut.surface[0]), at(0, cut.surface[1])] },
    ...cut.fixings.flatMap((along) => fixingShapes(scene, at, along)),
  ]
}

const farSide = ({ to, pencil }: Layer, at: Frame, cut: Cut): Shape => ({ ...pen, pencil, kind: 'line', width: 0, points: [at(to, cut.from), at(to, cut.to)] })

/** Sheet steel behind the board. */
const studLine = (layers: readonly Layer[], at: Frame, cut: Cut): Shape => {
  const behind = (layers[0] as Layer).to + 0.0006
  return { ...pen, pencil: true, kind: 'line', width: 0.0012, points: [at(behind, cut.from), at(behind, cut.to)] }
}

/** How deep the section shows, m. */
export const sectionDepth = (scene: Pick<Scene, 'answers' | 'check' | 'pencil'>, least: number): number =>
  Math.max(...layersOf(scene, least).map(({ to }) => to), isBoard(scene.answers['place.substrate']) ? 0 : least)
