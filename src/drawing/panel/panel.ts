import type { PanelGeometry } from '../../check/panel/panelGeometry'
import type { Scene } from '../scene'
import type { Dimension, Point, Shape } from '../shape'

/** The knotted panel from the front: its strands at their thickness from stick to lower edge, in alternating rows of square knots, and lark's heads on the stick. */
export function panelShapes(scene: Scene, { stickHeight, edgeHeight }: PanelGeometry): readonly Shape[] {
  const { answers, cord, pencil, view } = scene
  const cords = answers['panel.cords']
  const strands = 2 * cords
  const x = (i: number): number => answers['panel.width'] * (i / (strands - 1) - 0.5)
  const pen = { link: 'leg', ink: 'cord', leg: null, pencil: pencil('panel.width', 'panel.height', 'panel.cords', 'cord.diameter'), behind: false } as const
  const point = (across: number, z: number): Point => view.front([across, 0, z])
  const heads = Array.from({ length: cords }, (_, i): Shape => {
    const middle = (x(2 * i) + x(2 * i + 1)) / 2
    return { ...pen, kind: 'line', width: Math.min(2 * cord, answers['panel.width'] / cords), points: [point(middle, stickHeight + answers['stick.diameter'] + 0.3 * cord), point(middle, stickHeight - 0.6 * cord)] }
  })
  return [
    ...Array.from({ length: strands }, (_, i): Shape => ({ ...pen, kind: 'line', width: cord, points: [point(x(i), stickHeight), point(x(i), edgeHeight)] })),
    ...knots(scene, stickHeight, edgeHeight).map(([first, z]): Shape => ({ ...pen, kind: 'line', width: 0, points: bow(x(first), x(Math.min(strands - 1, first + 3)), z, cord).map(([across, at]) => point(across, at)) })),
    ...heads,
  ]
}

/** A square knot over four strands as a bow. */
const bow = (left: number, right: number, z: number, cord: number): readonly (readonly [number, number])[] =>
  [[left - 0.6 * cord, z + 0.5 * cord], [(left + right) / 2, z - 0.5 * cord], [right + 0.6 * cord, z + 0.5 * cord]]

/** First strand and height of every square knot, in rows that alternate by two strands. */
function knots({ answers, cord, unit }: Scene, top: number, edge: number): readonly (readonly [number, number])[] {
  const strands = 2 * answers['panel.cords']
  const pitch = Math.max(6 * cord, 0.9 * unit)
  const rows = Math.max(1, Math.floor((top - edge) / pitch))
  return Array.from({ length: rows }, (_, row) => row).flatMap((row) => {
    const first = row % 2 === 0 ? 0 : 2
    const count = Math.max(0, Math.floor((strands - first) / 4))
    return Array.from({ length: count }, (_, i) => [first + 4 * i, top - ((row + 0.5) * (top - edge)) / rows] as const)
  })
}

/** The panel's own measures: its width, under those of the pot, and how far its lower edge is above the rim. */
export function panelDimensions({ answers, unit, pencil }: Scene, { edgeHeight }: PanelGeometry): readonly Dimension[] {
  const half = answers['panel.width'] / 2
  const z = 0 - (answers['pot.shape'] === 'bellied' ? 7.1 : 5.2) * unit
  const x = 0 - half - 1.2 * unit
  const rim = answers['pot.height']
  return [
    { path: 'panel.width', value: 2 * half, pencil: pencil('panel.width'), from: [0 - half, z], to: [half, z], feet: [[0 - half, edgeHeight], [half, edgeHeight]], number: [half + 0.5 * unit, z], side: 'right' },
    { path: 'panel.rise', value: answers['panel.rise'], pencil: pencil('panel.rise'), from: [x, rim], to: [x, edgeHeight], feet: [[0 - answers['pot.rim'] / 2, rim], [0 - half, edgeHeight]], number: [x - 0.4 * unit, (rim + edgeHeight) / 2], side: 'left' },
  ]
}
