import { levelLine, uprightLine } from '../measure'
import type { Scene } from '../scene'
import type { Dimension } from '../shape'
import { stickBottom } from '../stick'
import { topOfPlace } from './place'

/** Lines over one another above the place, m over unit: the first, and from one to the next. */
const ABOVE = { first: 1.2, next: 1.7 }

/** Dimension lines of what the legs hang from: a ring to its left; a stick and what is measured along it over everything. */
export function topDimensions(scene: Scene): readonly Dimension[] {
  return [...ringDimensions(scene), ...stickDimensions(scene)]
}

function ringDimensions(scene: Scene): readonly Dimension[] {
  const { answers, hangsFrom, pose, unit, pencil, carried, check: { solved: { geometry: { ringRadius } } } } = scene
  if (hangsFrom !== 'ring') return []
  const [wire, inside, bottom] = [answers['ring.wire'], answers['ring.inside'], pose.hangingPoint[2]]
  if (ringRadius > 0) {
    const at = 0 - ringRadius - 1.6 * unit
    return [
      uprightLine({ path: 'ring.rise', value: answers['ring.rise'], pencil, ends: [bottom, carried], at, feet: [0 - ringRadius, 0] }, { side: 'left', away: 0.4 * unit, height: (bottom + carried) / 2 }),
      levelLine({ path: 'ring.inside', value: inside, pencil, ends: [0 - inside / 2, inside / 2], at: bottom - 1.2 * unit, feet: [bottom, bottom] }, Math.max(0.5 * unit, wire + 0.8 * unit)),
    ]
  }
  const low = bottom + wire
  // Clear of the wall that is drawn behind it.
  const at = Math.min(0 - inside / 2 - wire - 1.4 * unit, scene.answers['place.support'] === 'ceilingHook' ? 0 : -3.6 * unit)
  return [uprightLine({ path: 'ring.inside', value: inside, pencil, ends: [low, low + inside], at, feet: [0, 0] }, { side: 'left', away: 0.4 * unit, height: scene.hasStick ? Math.min(low + inside / 2, stickBottom(scene) - 0.9 * unit) : low + inside / 2 })]
}

function stickDimensions(scene: Scene): readonly Dimension[] {
  const { answers, hasStick, stickAt, unit, pencil, pose, view, check } = scene
  if (!hasStick) return []
  const bottom = stickBottom(scene)
  const thick = answers['stick.diameter']
  const [length, span] = [answers['stick.length'], answers['stick.span']]
  const top = bottom + thick
  const panel = check.solved.geometry.panel !== null
  const uppers = panel || answers['make.arrangement'] === 'row' ? [] : Array.from({ length: pose.legs }, (_, leg) => view.front(pose.upperEnd(leg))[0])
  const bunch = answers['stick.bunch']
  const along: readonly (readonly [path: 'stick.bunch' | 'stick.span' | 'row.spacing' | 'stick.length', value: number, from: number])[] = [
    ...(uppers.length > 0 && bunch > 0 ? [['stick.bunch', bunch, Math.min(...uppers)] as const] : []),
    ...(answers['make.arrangement'] === 'row' ? [['row.spacing', answers['row.spacing'], 0 - answers['row.spacing']] as const] : []),
    ['stick.span', span, stickAt - span / 2],
    ['stick.length', length, stickAt - length / 2],
  ]
  const foot = panel ? top : bottom
  const end = stickAt + length / 2
  return [
    ...along.map(([path, value, from], i) => levelLine({ path, value, pencil, ends: [from, from + value], at: topOfPlace(scene) + (ABOVE.first + i * ABOVE.next) * unit, feet: [path === 'row.spacing' ? foot : top, path === 'row.spacing' ? foot : top] }, null)),
    uprightLine({ path: 'stick.diameter', value: thick, pencil, ends: [bottom, top], at: end + unit, feet: [end, end] }, { side: 'right', away: 0.5 * unit, height: bottom + thick / 2 }),
  ]
}
