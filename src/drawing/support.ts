import type { Answers } from '../hanger/fields'
import type { Scene } from './scene'
import type { Dimension, Drawing, Point, Shape, Texture } from './shape'

/** Whether the hanger hangs from an arm on a wall. */
export const hasBracket = ({ 'place.support': support }: Answers): boolean => support === 'bracket' || support === 'swingArm'

/** Height of an arm that was not measured, m: only what is drawn. */
const USUAL_ARM = 0.012
/** A beam that a cord goes round, m: only what is drawn. */
const BEAM = { width: 0.06, height: 0.1, branch: 0.03, rail: 0.015 }
const ROUND_BARS: readonly string[] = ['branch', 'rail', 'curtainRod', 'showerRod', 'towelRod', 'tensionRod']

/** Middle line of a bracket's arm: what hangs from it hangs over it. */
const armHeight = ({ answers, bowl }: Scene): number => bowl - (answers['bracket.high'] ?? USUAL_ARM) / 2

/** The wall beside a bracket, cut through, with its plate, screws and arm; the arm as long as it reaches. */
export function bracketShapes(scene: Scene, texture: Texture): readonly Shape[] {
  const { answers, unit, pencil } = scene
  const arm = armHeight(scene)
  const wall = answers['bracket.reach']
  const [high, plate] = [answers['bracket.high'] ?? USUAL_ARM, 0.6 * unit]
  const foot = arm - answers['bracket.top']
  const place = { link: 'fixing', ink: 'building', leg: null, pencil: pencil('place.substrate'), behind: false } as const
  const metal = { ink: 'wire', leg: null, kind: 'line', behind: false } as const
  const [lower, upper] = [foot - 2 * unit, arm + 2.5 * unit]
  const n = answers['bracket.screws']
  const screws = Array.from({ length: n }, (_, i) => foot + (n === 1 ? answers['bracket.top'] : answers['bracket.bottom'] + ((answers['bracket.top'] - answers['bracket.bottom']) * i) / (n - 1)))
  return [
    { ...place, kind: 'area', points: [[wall, lower], [wall + 2 * unit, lower], [wall + 2 * unit, upper], [wall, upper]], texture },
    { ...place, kind: 'line', points: [[wall, lower - 0.6 * unit], [wall, upper + 0.6 * unit]], width: 0 },
    { ...metal, link: 'fixing', pencil: pencil('bracket.top'), points: [[wall - plate / 2, foot], [wall - plate / 2, arm + 0.5 * unit]], width: plate },
    ...screws.map((z): Shape => ({ ...metal, link: 'fixing', pencil: pencil('bracket.screws', 'bracket.top', 'bracket.bottom'), points: [[wall - 1.4 * plate, z], [wall + 1.2 * unit, z]], width: 0 })),
    { ...metal, link: 'bracket', pencil: pencil('bracket.reach') || answers['bracket.high'] === null, points: [[wall, arm], [-0.8 * unit, arm]], width: high },
  ]
}

/** The wall behind a hook that stands out towards the viewer, and the hook seen on end. */
export function wallHookShapes({ answers, bowl, unit, pencil }: Scene, texture: Texture): readonly Shape[] {
  const wire = answers['hook.wire']
  const half = 3 * unit
  const place = { link: 'fixing', ink: 'building', leg: null, pencil: pencil('place.substrate'), behind: false } as const
  const patch: readonly Point[] = [[-half, bowl - 0.6 * unit], [half, bowl - 0.6 * unit], [half, bowl + 3 * unit], [-half, bowl + 3 * unit]]
  const hook = { ink: 'wire', leg: null, pencil: pencil('hook.wire'), behind: false } as const
  return [
    { ...place, kind: 'area', points: patch, texture },
    { ...hook, kind: 'line', link: 'hook', points: [[0, bowl - wire / 2], [0, bowl + 2.5 * wire]], width: wire },
    { ...hook, kind: 'circle', link: 'pin', centre: [0, bowl - wire / 2], radius: wire / 4, width: wire / 2 },
  ]
}

/** A beam, rail or branch cut through, and the loop round it that the hanger hangs from. */
export function beamShapes({ answers, bowl, unit, pencil }: Scene, texture: Texture): readonly Shape[] {
  const place = { link: 'fixing', ink: 'building', leg: null, pencil: pencil('place.substrate'), behind: false } as const
  const substrate = answers['place.substrate']
  const bottom = bowl + 1.5 * unit
  const loop = (points: readonly Point[]): Shape => ({ ...place, ink: 'cord', kind: 'line', width: 0, points })
  if (ROUND_BARS.includes(substrate)) {
    const radius = substrate === 'branch' ? BEAM.branch : BEAM.rail
    return [{ ...place, kind: 'circle', centre: [0, bottom + radius], radius, width: 0 }, loop([[-radius, bottom + radius], [0, bowl], [radius, bottom + radius]])]
  }
  const [half, top] = [BEAM.width / 2, bottom + BEAM.height]
  return [{ ...place, kind: 'area', points: [[-half, bottom], [half, bottom], [half, top], [-half, top]], texture }, loop([[0, bowl], [-half, bottom], [-half, top], [half, top], [half, bottom], [0, bowl]])]
}

/** The reach of a bracket, above it. */
export function bracketDimensions(scene: Scene): readonly Dimension[] {
  const { answers, bowl, unit, pencil } = scene
  const reach = answers['bracket.reach']
  const z = bowl + 3.6 * unit
  return [{
    path: 'bracket.reach', value: reach, pencil: pencil('bracket.reach'), from: [0, z], to: [reach, z], feet: [[0, armHeight(scene)], [reach, armHeight(scene)]],
    number: [reach / 2, z + 0.8 * unit], side: 'middle',
  }]
}

/** Where the parts of the place are pointed at, under other supports than a hook in the ceiling. */
export function placeAnchors(scene: Scene): Drawing['anchors'] {
  const { answers, bowl, unit } = scene
  if (hasBracket(answers)) return { fixing: [answers['bracket.reach'], armHeight(scene)], bracket: [answers['bracket.reach'] / 2, armHeight(scene)] }
  if (answers['place.support'] === 'wallHook') return { fixing: [-unit, bowl + unit], pin: [0, bowl - answers['hook.wire'] / 2] }
  return answers['place.support'] === 'overBeam' ? { fixing: [0, bowl + 2 * unit] } : {}
}
