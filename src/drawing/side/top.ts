import { CHAIN_LINKS, wireOf } from '../connectorLength'
import { bundle, strandsSeen } from '../bundle'
import { levelRingShapes } from '../levelRing'
import { stickBottom, stickSaid } from '../stick'
import type { Point, Shape } from '../shape'
import type { SideScene } from './sideScene'

/** What the legs hang from, from the side: a ring on edge, a level ring, or the end of a stick with the lark's heads round it. */
export function sideTop(scene: SideScene): readonly Shape[] {
  if (scene.check.solved.geometry.ringRadius > 0) return levelRingShapes(scene)
  return [...sideRing(scene), ...sideStick(scene)]
}

function sideRing({ answers, hangsFrom, pose, hookAt, cord, pencil }: SideScene): readonly Shape[] {
  if (hangsFrom !== 'ring') return []
  const wire = answers['ring.wire']
  const bottom = pose.hangingPoint[2]
  const ring: Shape = {
    kind: 'line', link: 'ring', ink: 'wire', leg: null, pencil: pencil('make.top', 'ring.wire', 'ring.inside'), width: wire, behind: false,
    points: [[hookAt, bottom], [hookAt, bottom + answers['ring.inside'] + 2 * wire]],
  }
  const [half, under] = [(wire + cord) / 2, bottom - cord / 2]
  const over: readonly Point[] = [[hookAt - half, under - 1.4 * cord], [hookAt - half, bottom + wire], [hookAt, bottom + wire + cord / 2], [hookAt + half, bottom + wire], [hookAt + half, under - 1.4 * cord]]
  return [ring, { kind: 'line', link: 'leg', ink: 'cord', leg: null, pencil: pencil('make.legs', 'cord.diameter'), width: cord, behind: false, points: over }]
}

/** The stick seen on its end, and the cords that go round it. */
function sideStick(scene: SideScene): readonly Shape[] {
  const { answers, hasStick, hangsFrom, hookAt, cord, pencil, check } = scene
  if (!hasStick) return []
  const radius = answers['stick.diameter'] / 2
  const centre: Point = [hookAt, stickBottom(scene) + radius]
  const stick = { link: 'stick', ink: 'wire', leg: null, pencil: pencil(...stickSaid(scene), 'stick.diameter') } as const
  const edge = Array.from({ length: 24 }, (_, i): Point => [centre[0] + radius * Math.cos((i * Math.PI) / 12), centre[1] + radius * Math.sin((i * Math.PI) / 12)])
  const heads: Shape = { kind: 'circle', link: 'leg', ink: 'cord', leg: null, pencil: pencil('cord.diameter', check.solved.geometry.panel === null ? 'make.legs' : 'panel.cords'), centre, radius: radius + cord / 2, width: cord, behind: false }
  return [
    ...(hangsFrom === 'stick' ? [heads] : []),
    { ...stick, kind: 'area', points: edge, texture: 'paper', behind: false },
    { ...stick, kind: 'area', points: edge, texture: 'open', behind: false },
  ]
}

/** The top cord on edge, from the stick up to the hook, turned once round the stick. */
export function sideTopCord(scene: SideScene): readonly Shape[] {
  const { answers, hasStick, carried, hookAt, cord, pencil, check } = scene
  if (!hasStick || answers['stick.held'] !== 'topCord' || check.solved.geometry.top === null) return []
  const radius = answers['stick.diameter'] / 2
  const middle = stickBottom(scene) + radius
  const common = { link: 'topCord', ink: 'cord', leg: null, pencil: pencil('stick.topCord', 'stick.span', 'stick.topStrands', 'cord.diameter'), behind: false } as const
  return [
    { ...common, kind: 'cord', ...bundle([[hookAt, carried], [hookAt, middle]], cord, Math.min(2, strandsSeen(answers['stick.topStrands']))) },
    { ...common, kind: 'circle', centre: [hookAt, middle], radius: radius + cord / 2, width: cord },
  ]
}

/** What hangs between hook and hanger, on edge; of a chain every other link shows its face. */
export function sideConnector({ answers, bowl, carried, hookAt, pencil }: SideScene): readonly Shape[] {
  const kind = answers['connector.kind']
  if (kind === 'none') return []
  const wire = wireOf(answers)
  const common = { kind: 'line', link: 'connector', ink: 'wire', leg: null, pencil: pencil('connector.kind', 'connector.wire', 'connector.inside'), behind: false, width: wire } as const
  const [top, bottom] = [bowl + wire, carried - wire]
  const upright = (from: number, to: number): Shape => ({ ...common, points: [[hookAt, from], [hookAt, to]] })
  if (kind !== 'chain') return [upright(top, bottom)]
  const pitch = (bowl - carried) / CHAIN_LINKS
  const face = (from: number, to: number): Shape => {
    const half = Math.min(1.4 * wire, (from - to) / 2)
    return { ...common, points: [[hookAt - half, from - half], [hookAt, from], [hookAt + half, from - half], [hookAt + half, to + half], [hookAt, to], [hookAt - half, to + half], [hookAt - half, from - half]] }
  }
  return Array.from({ length: CHAIN_LINKS }, (_, i) => {
    const [from, to] = [bowl - i * pitch, bowl - (i + 1) * pitch]
    return i % 2 === 0 ? upright(from + wire / 2, to - wire / 2) : face(from, to)
  })
}
