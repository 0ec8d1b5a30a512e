import { connectorShapes } from '../connector'
import { hookShapes, ringShapes } from '../hook'
import { panelOf } from '../panel/strands'
import type { Scene } from '../scene'
import { levelLine, uprightLine } from '../measure'
import type { Dimension, Point, Shape } from '../shape'
import { shiftedShape } from '../shifted'
import { stickBottom, stickSaid, topCordAxis } from '../stick'
import { between } from '../bundle'
import type { Detail } from './detail'
import { larksHead, type CordPen } from './knots'
import { headsOf } from './ring'

/** The right end of the stick, from the middle of what hangs from it: its true thickness, each lark's head, how it is held. */
export function stickDetail(scene: Scene): Detail | null {
  const { answers, hasStick, stickAt, pencil } = scene
  if (!hasStick) return null
  const thick = answers['stick.diameter']
  const bottom = stickBottom(scene)
  const end = stickAt + answers['stick.length'] / 2
  // A hanger of a row that is wider than the stick hangs beyond its end, which is shown all the same.
  const from = Math.max(stickAt - answers['stick.length'] / 2, Math.min(Math.min(...firstHeads(scene)) - 2.5 * thick, end - 6 * thick))
  const points: readonly Point[] = [[from, bottom], [end, bottom], [end, bottom + thick], [from, bottom + thick]]
  const stick = { kind: 'area', link: 'stick', ink: 'wire', leg: null, pencil: pencil(...stickSaid(scene), 'stick.length', 'stick.diameter'), points, behind: false } as const
  return {
    code: 'stick', link: 'stick', of: { left: from, right: end + thick, bottom: bottom - 3 * thick, top: bottom + 4 * thick },
    shapes: [...holds(scene, false), { ...stick, texture: 'paper' }, { ...stick, texture: 'open' }, ...holds(scene, true), ...heads(scene)],
    dimensions: (unit) => stickDimensions(scene, unit),
  }
}

/** Where the heads nearest the right end begin: of a panel the last quarter of its cords, else the last leg, or this hanger's ring. */
function firstHeads(scene: Scene): readonly number[] {
  const { answers, hangsFrom, pose, view, cord } = scene
  if (panelOf(scene) !== null) return [answers['panel.width'] / 4]
  if (hangsFrom !== 'stick') return [0 - answers['ring.inside'] / 2]
  const uppers = Array.from({ length: pose.legs }, (_, leg) => view.front(pose.upperEnd(leg))[0]).sort((a, b) => a - b)
  return [(uppers.at(-2) ?? 0) - headsOf(answers['make.strands']) * cord]
}

function heads(scene: Scene): readonly Shape[] {
  const { answers, hangsFrom, pose, view, cord, pencil } = scene
  const bottom = stickBottom(scene)
  const thick = answers['stick.diameter']
  const panel = panelOf(scene)
  if (panel === null && hangsFrom !== 'stick') return ringShapes(scene)
  const pen: CordPen = { link: 'leg', ink: 'cord', leg: null, pencil: panel === null ? pencil('make.legs', 'make.strands', 'stick.bunch', 'cord.diameter') : pencil('panel.cords', 'panel.width', 'cord.diameter'), behind: false }
  const tail = 2.4 * thick
  const head = (x: number): readonly Shape[] => [
    ...[-0.5, 0.5].map((side): Shape => ({ ...pen, kind: 'line', width: cord, points: [[x + side * cord, bottom], [x + side * cord, bottom - tail]] })),
    ...larksHead(pen, [x, bottom + thick / 2], [0, -1], thick, cord),
  ]
  const least = Math.min(...firstHeads(scene))
  if (panel !== null) {
    const cords = answers['panel.cords']
    return Array.from({ length: cords }, (_, i) => answers['panel.width'] * ((i + 0.5) / cords - 0.5)).filter((x) => x >= least).flatMap(head)
  }
  const each = headsOf(answers['make.strands'])
  return Array.from({ length: pose.legs }, (_, leg) => view.front(pose.upperEnd(leg))[0]).flatMap((x) => Array.from({ length: each }, (_, i) => x + (i - (each - 1) / 2) * 2 * cord))
    .filter((x) => x >= least).flatMap(head)
}

/** The top cord, two turns round the stick, or the hook it rests in; what passes before the stick is drawn over it. */
function holds(scene: Scene, before: boolean): readonly Shape[] {
  const { answers, stickAt, cord, pencil } = scene
  const thick = answers['stick.diameter']
  const middle = stickBottom(scene) + thick / 2
  const at = answers['stick.span'] / 2
  if (answers['stick.held'] === 'twoHooks') return before ? [] : [...hookShapes(scene, at).filter(({ link }) => link === 'hook'), ...connectorShapes(scene, at)].map((shape) => shiftedShape(shape, stickAt))
  const axis = topCordAxis(scene)
  if (axis === null) return []
  const strands = Math.min(4, answers['stick.topStrands'])
  const pen = { link: 'topCord', ink: 'cord', leg: null, pencil: pencil('stick.topCord', 'stick.span', 'stick.topStrands', 'cord.diameter'), behind: false, kind: 'line', width: cord } as const
  const x = stickAt + at
  if (before) {
    return Array.from({ length: strands }, (_, i): Shape => {
      const across = x + (i - (strands - 1) / 2) * cord
      return { ...pen, points: [[across - 0.3 * cord, middle + thick / 2 + 0.3 * cord], [across + 0.3 * cord, middle - thick / 2 - 0.3 * cord]] }
    })
  }
  const [, top, tied] = axis
  const far = Math.hypot(top[0] - tied[0], top[1] - tied[1])
  const upper = between(tied, top, Math.min(1, (3.5 * thick) / Math.max(1e-9, far)))
  return Array.from({ length: strands }, (_, i): Shape => {
    const across = (i - (strands - 1) / 2) * cord
    return { ...pen, points: [[x + across, middle], [stickAt + upper[0] + across, upper[1]]] }
  })
}

function stickDimensions(scene: Scene, unit: number): readonly Dimension[] {
  const { answers, stickAt, pencil, cord } = scene
  const thick = answers['stick.diameter']
  const bottom = stickBottom(scene)
  const end = stickAt + answers['stick.length'] / 2
  return [
    uprightLine({ path: 'stick.diameter', value: thick, pencil, ends: [bottom, bottom + thick], at: end + 1.2 * unit, feet: [end, end] }, { side: 'right', away: 0.4 * unit, height: bottom + thick / 2 }),
    ...(answers['cord.diameter'] === null || panelOf(scene) === null ? [] : cordLine(scene, unit, bottom - 2.4 * thick, cord)),
  ]
}

/** The thickness of the outermost strand of a panel. */
function cordLine({ answers, pencil }: Scene, unit: number, at: number, cord: number): readonly Dimension[] {
  const cords = answers['panel.cords']
  const x = answers['panel.width'] * ((cords - 0.5) / cords - 0.5) + cord / 2
  return [levelLine({ path: 'cord.diameter', value: cord, pencil, ends: [x - cord / 2, x + cord / 2], at: at - 1.2 * unit, feet: [at, at] }, 0.5 * unit)]
}
