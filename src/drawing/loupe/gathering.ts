import { gatheredHalf } from '../gathering'
import { strandsSeen } from '../bundle'
import { uprightLine } from '../measure'
import { panelOf } from '../panel/strands'
import type { Scene } from '../scene'
import type { Point, Shape } from '../shape'
import { curve } from './curve'
import type { Detail } from './detail'

/** Length of fringe shown, in cords. */
const FRINGE = 9

/** The gathering knot: strands that turn into it from all round, each of its wraps, and the fringe that leaves it. */
export function gatheringDetail(scene: Scene): Detail {
  const { answers, cord, pencil, gathering: [x, z], check } = scene
  const knot = check.solved.geometry.knot
  const half = gatheredHalf(scene) * 0.8
  const reach = half + 8 * cord
  const low = z - knot - FRINGE * cord
  return {
    code: 'gathering', link: 'gatheringGrip', of: { left: x - reach, right: x + reach, bottom: low, top: z + 4 * cord },
    shapes: [...turns(scene, reach), ...inside(scene, low), ...wraps(scene)],
    dimensions: (unit) => (answers['cord.diameter'] === null ? [] : [
      uprightLine({ path: 'cord.diameter', value: cord, pencil, ends: [z - knot, z - knot + cord], at: x + half + cord + 1.6 * unit, feet: [x + half + cord, x + half + cord] }, { side: 'right', away: 0.4 * unit, height: z - knot + cord / 2 }),
    ]),
  }
}

/** Strands from under the base, left and right, bent down into the wraps; as many as are seen from here. */
function turns(scene: Scene, reach: number): readonly Shape[] {
  const { answers, cord, pencil, gathering: [x, z], drawnDown } = withDrop(scene)
  const panel = panelOf(scene) !== null
  const pen = { kind: 'line', link: 'gatheringTurn', ink: 'cord', leg: null, pencil: panel ? pencil('panel.front', 'panel.behind', 'cord.diameter') : pencil('make.legs', 'make.strands', 'cord.diameter'), behind: false, width: cord } as const
  const half = gatheredHalf(scene) * 0.8
  const seen = Math.max(2, Math.min(6, Math.ceil(strandsSeen(scene.check.solved.geometry.gathered) / 2)))
  const start: Point = [reach, drawnDown]
  const sides = [-1, 1].flatMap((side) => Array.from({ length: seen }, (_, i): Shape => {
    const into = half * (1 - (i + 0.5) / seen)
    const above = i * 0.55 * cord
    return { ...pen, points: curve([[x + side * start[0], z + start[1] + above - 0.5 * cord], [x + side * (into + 2.2 * cord), z + start[1] * 0.25 + above - 0.5 * cord], [x + side * (into + 0.5 * cord), z + 0.3 * above - 0.9 * cord], [x + side * into, z - 2.2 * cord]]) }
  }))
  const base: Shape = { kind: 'line', link: 'load', ink: 'pot', leg: null, pencil: pencil(answers['pot.shape'] === 'cylinder' ? 'pot.rim' : 'pot.base'), behind: false, width: 0, points: [[x - reach, z + drawnDown + (seen * 0.55 + 0.4) * cord], [x + reach, z + drawnDown + (seen * 0.55 + 0.4) * cord]] }
  return [base, ...sides]
}

/** How far the knot is drawn down under the base, as far as that is shown. */
const withDrop = (scene: Scene): Scene & { readonly drawnDown: number } => ({ ...scene, drawnDown: Math.min(6 * scene.cord, scene.code === 'lowerOut' ? 0 : scene.check.solved.drawnKnot?.drawn ?? 0) })

/** The gathered strands below the wraps: the fringe, or strands that go on to the pot below. */
function inside(scene: Scene, low: number): readonly Shape[] {
  const { answers, cord, pencil, gathering: [x, z], check } = scene
  const goesOn = check.solved.tiers.length > 0
  if (answers['make.fringe'] <= 0 && !goesOn) return []
  const top = z - check.solved.geometry.knot
  const half = gatheredHalf(scene) * 0.8
  const seen = strandsSeen(check.solved.geometry.gathered)
  const bottom = goesOn ? low : Math.max(low, top - answers['make.fringe'])
  return Array.from({ length: seen }, (_, i): Shape => {
    const across = half * (seen === 1 ? 0 : (2 * i) / (seen - 1) - 1)
    const spread = 1 + (0.25 * (top - bottom)) / Math.max(cord, FRINGE * cord)
    return { kind: 'line', link: goesOn ? 'gatheringGrip' : null, ink: 'cord', leg: null, pencil: pencil('make.fringe'), behind: false, width: cord, points: [[x + across, top + cord], [x + across, top], [x + across * spread, bottom]] }
  })
}

/** Each wrap at its true thickness, bulging round the strands; the ends of the wrapping cord come out above and below. */
function wraps(scene: Scene): readonly Shape[] {
  const { answers, cord, gathering: [x, z], pencil } = scene
  const half = gatheredHalf(scene) * 0.8 + 0.6 * cord
  const count = answers['gathering.wraps']
  const pen = { ink: 'cord', leg: null, pencil: pencil('gathering.wraps', 'cord.diameter'), width: cord, behind: false, kind: 'line' } as const
  return Array.from({ length: count }, (_, i): Shape => {
    const y = z - (i + 0.5) * cord
    return { ...pen, link: i === 0 ? 'wrapHoop' : 'gatheringGrip', points: curve([[x - half, y + 0.1 * cord], [x - 0.5 * half, y - 0.05 * cord], [x + 0.5 * half, y - 0.05 * cord], [x + half, y + 0.1 * cord]]) }
  })
}
