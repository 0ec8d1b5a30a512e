import { bundle, strandsSeen } from './bundle'
import { uprightLine } from './measure'
import { ringLength, type Scene } from './scene'
import type { Dimension, Shape } from './shape'
import { tapeAt } from './tape'

/** The cord from the stick to the hook laid out straight beside the strand, for its length is measured along it: its place and ends, m; null where the hanger has none. */
function topCordTape(scene: Scene): { readonly x: number; readonly top: number; readonly bottom: number } | null {
  const { answers, hasStick, pose, unit } = scene
  if (!hasStick || answers['stick.held'] !== 'topCord') return null
  const top = pose.hangingPoint[2] + ringLength(scene)
  // Beyond the lines of the strand.
  const clear = answers['make.arrangement'] === 'panel' ? 6.4 : answers['cradle.second'] === null ? 10.4 : 14.4
  return { x: tapeAt(scene) - clear * unit, top, bottom: top - answers['stick.topCord'] }
}

export function topCordTapeShapes(scene: Scene): readonly Shape[] {
  const tape = topCordTape(scene)
  if (tape === null) return []
  const { answers, cord, unit, pencil } = scene
  const { x, top, bottom } = tape
  const across = (z: number): Shape => ({ link: null, ink: 'note', leg: null, pencil: false, kind: 'line', width: 0, behind: false, points: [[x - 0.5 * unit, z], [x + 0.5 * unit, z]] })
  return [
    { kind: 'cord', link: 'topCord', ink: 'cord', leg: null, pencil: pencil('stick.topCord', 'stick.topStrands', 'cord.diameter'), behind: false, ...bundle([[x, top], [x, bottom]], cord, strandsSeen(answers['stick.topStrands'])) },
    across(top), across(bottom),
  ]
}

export function topCordDimensions(scene: Scene): readonly Dimension[] {
  const tape = topCordTape(scene)
  if (tape === null) return []
  const { x, top, bottom } = tape
  return [uprightLine({ path: 'stick.topCord', value: scene.answers['stick.topCord'], pencil: scene.pencil, ends: [bottom, top], at: x - 2 * scene.unit, feet: [x, x] }, null)]
}
