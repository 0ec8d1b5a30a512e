import type { Answers } from '../hanger/fields'
import type { Scene } from './scene'
import { layersOf, textureOf } from './section/layers'
import { screwOf } from './section/screw'
import type { Drawing, Point, Shape, Texture } from './shape'

/** Whether the hanger hangs from an arm on a wall. */
export const hasBracket = ({ 'place.support': support }: Pick<Answers, 'place.support'>): boolean => support === 'bracket' || support === 'swingArm'

/** Height and thickness of an arm that was not measured, m: only what is drawn. */
const USUAL_ARM = { high: 0.012, thick: 0.006 }
/** A beam that a cord goes round, m: only what is drawn. */
const BEAM = { width: 0.06, height: 0.1, branch: 0.03, rail: 0.015 }
const ROUND_BARS: readonly string[] = ['branch', 'rail', 'curtainRod', 'showerRod', 'towelRod', 'tensionRod']

export const armHigh = ({ answers }: Pick<Scene, 'answers'>): number => answers['bracket.high'] ?? USUAL_ARM.high

/** Middle line of a bracket's arm: what hangs from it hangs over it; and the lower edge of its plate. */
export const armHeight = (scene: Pick<Scene, 'answers' | 'bowl'>): number => scene.bowl - armHigh(scene) / 2
export const plateFoot = (scene: Pick<Scene, 'answers' | 'bowl'>): number => armHeight(scene) - scene.answers['bracket.top']

/** Heights of a bracket's screws, from the lowest, evenly. */
export function bracketScrews(scene: Pick<Scene, 'answers' | 'bowl'>): readonly number[] {
  const { 'bracket.screws': n, 'bracket.top': top, 'bracket.bottom': bottom } = scene.answers
  return Array.from({ length: n }, (_, i) => plateFoot(scene) + (n === 1 ? top : bottom + ((top - bottom) * i) / (n - 1)))
}

const face = ({ pencil }: Scene, points: readonly Point[], texture: Texture): Shape =>
  ({ link: 'fixing', ink: 'building', leg: null, pencil: pencil('place.substrate'), behind: false, kind: 'area', points, texture })

const box = ([left, right]: readonly [number, number], [bottom, top]: readonly [number, number]): readonly Point[] => [[left, bottom], [right, bottom], [right, top], [left, top]]

/** The wall behind a bracket with its plate and screws, and the arm that comes towards the viewer. */
export function bracketOnWall(scene: Scene, texture: Texture): readonly Shape[] {
  const { answers, unit, pencil } = scene
  const [arm, foot, high] = [armHeight(scene), plateFoot(scene), armHigh(scene)]
  // A swing arm's plate is not asked for.
  const wide = answers['place.support'] === 'bracket' ? answers['bracket.wide'] : 2 * (answers['bracket.thick'] ?? USUAL_ARM.thick)
  const thick = answers['bracket.thick'] ?? USUAL_ARM.thick
  const metal = { ink: 'wire', leg: null, behind: false } as const
  const plate = { ...metal, link: 'fixing', kind: 'area', pencil: pencil('bracket.top', ...(answers['place.support'] === 'bracket' ? ['bracket.wide'] as const : [])), points: box([0 - wide / 2, wide / 2], [foot, arm + 0.5 * unit]) } as const
  const radius = 0.9 * screwOf(scene).diameter
  const end = { ...metal, link: 'bracket', kind: 'area', pencil: answers['bracket.high'] === null || answers['bracket.thick'] === null, points: box([0 - thick / 2, thick / 2], [arm - high / 2, arm + high / 2]) } as const
  return [
    face(scene, box([-3 * unit, 3 * unit], [foot - 2 * unit, arm + 2.5 * unit]), texture),
    { ...plate, texture: 'paper' }, { ...plate, texture: 'open' },
    ...bracketScrews(scene).map((z): Shape => ({ ...metal, link: 'fixing', kind: 'circle', pencil: pencil('bracket.screws', 'bracket.top', 'bracket.bottom'), centre: [0, z], radius, width: 0 })),
    { ...end, texture: 'paper' }, { ...end, texture: 'open' },
  ]
}

/** The wall behind a hook that stands out towards the viewer, and the hook seen on end. */
export function wallHookShapes(scene: Scene, texture: Texture): readonly Shape[] {
  const { answers, bowl, unit, pencil } = scene
  const wire = answers['hook.wire']
  const hook = { ink: 'wire', leg: null, pencil: pencil('hook.wire'), behind: false } as const
  return [
    face(scene, box([-3 * unit, 3 * unit], [bowl - 0.6 * unit, bowl + 3 * unit]), texture),
    { ...hook, kind: 'line', link: 'hook', points: [[0, bowl - wire / 2], [0, bowl + 2.5 * wire]], width: wire },
    { ...hook, kind: 'circle', link: 'pin', centre: [0, bowl - wire / 2], radius: wire / 4, width: wire / 2 },
  ]
}

const beam = ({ bowl, unit, answers }: Scene): { readonly bottom: number; readonly top: number; readonly radius: number | null } => {
  const substrate = answers['place.substrate']
  const bottom = bowl + 1.5 * unit
  const radius = !ROUND_BARS.includes(substrate) ? null : substrate === 'branch' ? BEAM.branch : BEAM.rail
  return { bottom, top: bottom + (radius === null ? BEAM.height : 2 * radius), radius }
}

/** A beam, rail or branch cut through, and the loop round it that the hanger hangs from. */
export function beamShapes(scene: Scene, texture: Texture): readonly Shape[] {
  const { bowl, pencil } = scene
  const { bottom, top, radius } = beam(scene)
  const place = { link: 'fixing', ink: 'building', leg: null, pencil: pencil('place.substrate'), behind: false } as const
  const loop = (points: readonly Point[]): Shape => ({ ...place, ink: 'cord', kind: 'line', width: 0, points })
  if (radius !== null) return [{ ...place, kind: 'circle', centre: [0, bottom + radius], radius, width: 0 }, loop([[-radius, bottom + radius], [0, bowl], [radius, bottom + radius]])]
  const half = BEAM.width / 2
  return [face(scene, box([-half, half], [bottom, top]), texture), loop([[0, bowl], [-half, bottom], [-half, top], [half, top], [half, bottom], [0, bowl]])]
}

/** The same along its length, from the side. */
export function beamAlong(scene: Scene, at: number): readonly Shape[] {
  const { bowl, unit, pencil, answers } = scene
  const { bottom, top } = beam(scene)
  const place = { link: 'fixing', ink: 'building', leg: null, pencil: pencil('place.substrate'), behind: false } as const
  const edge = (z: number): Shape => ({ ...place, kind: 'line', width: 0, points: [[at - 4 * unit, z], [at + 4 * unit, z]] })
  return [
    face(scene, box([at - 4 * unit, at + 4 * unit], [bottom, top]), textureOf(answers['place.substrate'])), edge(bottom), edge(top),
    { ...place, ink: 'cord', kind: 'line', width: 0, points: [[at, bowl], [at, top]] },
  ]
}

/** Where the parts of the place are pointed at from the front, under other supports than a hook in the ceiling. */
export function placeAnchors(scene: Scene): Drawing['anchors'] {
  const { answers, bowl, unit } = scene
  if (hasBracket(answers)) return { fixing: [0, bracketScrews(scene).at(-1) ?? bowl], bracket: [0, armHeight(scene)] }
  if (answers['place.support'] === 'wallHook') return { fixing: [-unit, bowl + unit], pin: [0, bowl - answers['hook.wire'] / 2] }
  return answers['place.support'] === 'overBeam' ? { fixing: [0, bowl + 2 * unit] } : {}
}

/** How deep a section of a wall or ceiling is drawn in a view, m. */
export const sectionReach = (scene: Scene): number => Math.max(...layersOf(scene, 2 * scene.unit).map(({ to }) => to))
