import { ceilingTop } from '../building'
import { levelLine, uprightLine, type Measured } from '../measure'
import { widestHalf } from '../potFrame'
import type { Scene } from '../scene'
import { screwMeasured, screwOf } from '../section/screw'
import type { Dimension } from '../shape'
import { hookPlaces } from '../stick'
import { armHeight, hasBracket } from '../support'

/** Dimension lines of the place from the front: how far a hook in the ceiling stands out, and the thread where it is in timber; of a bracket what faces the viewer. */
export function placeDimensions(scene: Scene): readonly Dimension[] {
  const { answers, bowl, ceiling, unit, pencil } = scene
  if (hasBracket(answers)) return bracketFace(scene)
  if (answers['place.support'] !== 'ceilingHook') return []
  const hook = Math.max(...hookPlaces(scene))
  const beside = Math.max(hook + 4.6 * unit, hookPlaces(scene).length > 1 ? answers['stick.length'] / 2 + 5.8 * unit : 0)
  // A plant that reaches up beside the hook has its line there.
  const plant = scene.pose.place([0, 0, answers['pot.height'] + answers['plant.height']])[2] > bowl - 3 * unit ? widestHalf(scene) + 5.2 * unit - scene.stickAt : 0
  // Numbers of short lines keep clear of each other.
  const clear = (length: number): number => Math.max(length / 2, 0.95 * unit)
  const line = (path: Measured['path'], value: number, half: number, lower: number, upper: number, height: number): Dimension =>
    uprightLine({ path, value, pencil, ends: [lower, upper], at: Math.max(beside, plant), feet: [hook + half, hook + half] }, { side: 'right', away: 0.5 * unit, height })
  const projection = line('hook.projection', answers['hook.projection'], answers['hook.wire'], bowl, ceiling, ceiling - clear(answers['hook.projection']))
  if (!screwMeasured(scene)) return [projection]
  const thread = answers['fixing.penetration']
  const tip = ceiling + screwOf(scene).thread[1]
  return [projection, line('fixing.penetration', thread, answers['fixing.diameter'] / 2, tip - thread, tip, tip - thread + clear(thread))]
}

/** The width of a bracket's plate, over it. */
function bracketFace(scene: Scene): readonly Dimension[] {
  const { answers, unit, pencil } = scene
  if (answers['place.support'] !== 'bracket') return []
  const wide = answers['bracket.wide']
  const top = armHeight(scene) + 0.5 * unit
  return [levelLine({ path: 'bracket.wide', value: wide, pencil, ends: [0 - wide / 2, wide / 2], at: top + 3 * unit, feet: [top, top] }, 0.5 * unit)]
}

/** Height above which nothing is drawn but dimension lines. */
export function topOfPlace(scene: Scene): number {
  const { answers, bowl, unit } = scene
  switch (answers['place.support']) {
    case 'ceilingHook': return ceilingTop(scene) + Math.max(0, 1.8 * unit - (ceilingTop(scene) - scene.ceiling))
    case 'wallHook': return bowl + 3 * unit
    case 'bracket': case 'swingArm': return armHeight(scene) + 4.2 * unit
    case 'overBeam': return bowl + 1.5 * unit + 0.1
  }
}
