import type { PanelGeometry } from '../../check/panel/panelGeometry'
import type { Scene } from '../scene'
import type { Dimension, Point, Shape } from '../shape'

/** The knotted panel from the front: its strands at their thickness from stick to lower edge, in alternating rows of square knots, and lark's heads on the stick. */
export function panelShapes(scene: Scene, { stickHeight, edgeHeight }: PanelGeometry): readonly Shape[] {
  const { answers, cord, pencil, view } = scene
  const cords = answers['panel.cords']
  const strands = 2 * cords
  const x = (i: number): number => answers['panel.width'] * (i / (strands - 1) - 0.5)
  const rows = knotRows(scene, stickHeight, edgeHeight)
  const pen = { link: 'leg', ink: 'cord', leg: null, pencil: pencil('panel.width', 'panel.height', 'panel.cords', 'cord.diameter'), behind: false } as const
  const point = (across: number, z: number): Point => view.front([across, 0, z])
  const heads = Array.from({ length: cords }, (_, i): Shape => {
    const middle = (x(2 * i) + x(2 * i + 1)) / 2
    return { ...pen, kind: 'line', width: Math.min(2 * cord, answers['panel.width'] / cords), points: [point(middle, stickHeight + answers['stick.diameter'] + 0.3 * cord), point(middle, stickHeight - 0.6 * cord)] }
  })
  return [
    ...Array.from({ length: strands }, (_, i): Shape => ({
      ...pen, kind: 'line', width: cord,
      points: [point(x(i), stickHeight), ...rows.flatMap((row) => through(row, i, x, cord)).map(([across, z]) => point(across, z)), point(x(i), edgeHeight)],
    })),
    ...rows.flatMap(({ z, firsts }) => firsts.flatMap((first) => [0.45, -0.45].map((up): Shape => {
      const middle = x(first + 1.5)
      return { ...pen, kind: 'line', width: 0.9 * cord, points: [point(middle - 2 * cord, z + (up - 0.1) * cord), point(middle, z + (up + 0.1) * cord), point(middle + 2 * cord, z + (up - 0.1) * cord)] }
    }))),
    ...heads,
  ]
}

/** A row of square knots: its height, and the first of the four strands of each. */
interface KnotRow {
  readonly z: number
  readonly firsts: readonly number[]
}

/** Where a strand passes a row: drawn together with three others in its knot, or where it hangs. */
function through({ z, firsts }: KnotRow, strand: number, x: (i: number) => number, cord: number): readonly (readonly [number, number])[] {
  const first = firsts.find((f) => strand >= f && strand < f + 4)
  if (first === undefined) return [[x(strand), z]]
  const across = x(first + 1.5) + (strand - first - 1.5) * cord
  return [[across, z + 1.1 * cord], [across, z - 1.1 * cord]]
}

/** Rows of square knots that alternate by two strands, from the stick to the edge. */
function knotRows({ answers, cord, unit }: Scene, top: number, edge: number): readonly KnotRow[] {
  const strands = 2 * answers['panel.cords']
  const pitch = Math.max(6 * cord, 0.9 * unit)
  const rows = Math.max(1, Math.floor((top - edge) / pitch))
  return Array.from({ length: rows }, (_, row): KnotRow => {
    const first = row % 2 === 0 ? 0 : 2
    const count = Math.max(0, Math.floor((strands - first) / 4))
    return { z: top - ((row + 0.5) * (top - edge)) / rows, firsts: Array.from({ length: count }, (__, i) => first + 4 * i) }
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
