import { slab, wallFrame } from '../section/frame'
import { sectionShapes } from '../section/section'
import { fixingPlaces, fixingPlate } from '../section/several'
import { armHeight, armHigh, bracketScrews, hasBracket, plateFoot } from '../support'
import type { Point, Shape } from '../shape'
import type { SideScene } from './sideScene'

const STEPS = 24
/** Thickness of a bracket's plate, m: only what is drawn. */
const PLATE = 0.004

/** Radius to the middle of an eye's or hook's wire; no wider than fits between the wall and where it carries. */
const eyeRadius = ({ answers }: Pick<SideScene, 'answers'>): number =>
  Math.max(answers['hook.wire'] / 2, Math.min((answers['hook.inside'] + answers['hook.wire']) / 2, answers['hook.projection'] - answers['hook.wire'] / 2))

/** Middle line of the shank of a hook in a wall: an eye is held in its middle, an open hook turns up at its end. */
export const shankHeight = (scene: Pick<SideScene, 'answers' | 'bowl'>): number =>
  scene.bowl - scene.answers['hook.wire'] / 2 + (scene.answers['fixing.kind'] === 'nail' || scene.answers['hook.kind'] !== 'closed' ? 0 : eyeRadius(scene))

/** The wall behind the hanger cut through, with hook or bracket in true profile and what holds it in the wall. */
export function wallShapes(scene: SideScene, wall: number): readonly Shape[] {
  const { answers, bowl, ceiling, unit } = scene
  const at = wallFrame(wall)
  const bracket = hasBracket(answers)
  const middle = shankHeight(scene)
  const [from, to] = bracket ? [plateFoot(scene) - 2 * unit, armHeight(scene) + 2.5 * unit] : [middle - 3 * unit, middle + 3 * unit]
  const surface = [ceiling - 40 * unit, bowl + 5 * unit] as const
  const fixings = bracket ? bracketScrews(scene) : fixingPlaces(scene, middle)
  return [
    ...sectionShapes(scene, at, { from, to, least: 2 * unit, surface, fixings }),
    ...(bracket ? bracketProfile(scene, wall) : [...fixingPlate(scene, at, middle), ...hookProfile(scene, wall)]),
  ]
}

/** Plate and arm, as long as it reaches and as high as it is. */
function bracketProfile(scene: SideScene, wall: number): readonly Shape[] {
  const { answers, pencil, unit, hookAt } = scene
  const [arm, foot, high] = [armHeight(scene), plateFoot(scene), armHigh(scene)]
  const metal = { ink: 'wire', leg: null, behind: false, kind: 'area' } as const
  const plate = slab(wallFrame(wall), [0 - PLATE, 0], [foot, arm + 0.5 * unit])
  const beyond = 0.8 * unit
  const outline: readonly Point[] = [[wall - PLATE, arm + high / 2], [hookAt - beyond, arm + high / 2], [hookAt - beyond, arm - high / 2], [wall - PLATE, arm - high / 2]]
  const bracket = { ...metal, link: 'bracket', pencil: pencil('bracket.reach') || answers['bracket.high'] === null, points: outline } as const
  return [
    { ...metal, link: 'fixing', pencil: pencil('bracket.top'), texture: 'paper', points: plate },
    { ...metal, link: 'fixing', pencil: pencil('bracket.top'), texture: 'open', points: plate },
    { ...bracket, texture: 'paper' }, { ...bracket, texture: 'open' },
  ]
}

/** A nail, a hook turned up at its end, with its latch, or an eye: out from the wall to where it carries. */
export function hookProfile(scene: SideScene, wall: number): readonly Shape[] {
  const { answers, bowl, pencil, hookAt } = scene
  const [wire, inside] = [answers['hook.wire'], answers['hook.inside']]
  const z = shankHeight(scene)
  const hook = { ink: 'wire', leg: null, behind: false, kind: 'line', width: wire } as const
  const shank = (end: number): Shape => ({ ...hook, link: 'pin', pencil: pencil('hook.projection', 'hook.wire'), points: [[wall, z], [end, z]] })
  if (answers['fixing.kind'] === 'nail') return [shank(hookAt - 1.5 * wire), { ...hook, link: 'hook', pencil: pencil('hook.wire'), width: 0.5 * wire, points: [[hookAt - 1.75 * wire, z - wire], [hookAt - 1.75 * wire, z + wire]] }]
  const pen = pencil('hook.kind', 'hook.wire', 'hook.inside')
  const radius = eyeRadius(scene)
  if (answers['hook.kind'] === 'closed') {
    const eye = Array.from({ length: STEPS + 1 }, (_, i): Point => [hookAt + radius * Math.cos((2 * Math.PI * i) / STEPS), z + radius * Math.sin((2 * Math.PI * i) / STEPS)])
    return [shank(Math.min(wall, hookAt + radius)), { ...hook, link: 'hook', pencil: pen, points: eye }]
  }
  const bend = Math.min(radius, 1.5 * wire)
  const corner = Array.from({ length: 7 }, (_, i): Point => [hookAt - wire - bend * Math.sin((i * Math.PI) / 12), z + bend * (1 - Math.cos((i * Math.PI) / 12))])
  const tip: Point = [hookAt - wire - bend, bowl + inside]
  const latch: Shape = { ...hook, link: 'hook', pencil: pen, width: 0, points: [tip, [Math.min(wall, tip[0] + inside + wire), z + wire / 2]] }
  return [shank(hookAt - wire), { ...hook, link: 'hook', pencil: pen, points: [...corner, tip] }, ...(answers['hook.kind'] === 'latched' ? [latch] : [])]
}
