import type { FieldPath } from '../../hanger/fields'
import { columnsOf } from '../dimension/columns'
import { levelLine, uprightLine, type Measured } from '../measure'
import { panelOf } from '../panel/strands'
import { facing, widestHalf } from '../potFrame'
import { screwMeasured, screwOf } from '../section/screw'
import type { Stand } from '../scene'
import type { Dimension } from '../shape'
import { armHeight, armHigh, bracketScrews, hasBracket, plateFoot, sectionReach } from '../support'
import type { SideScene } from './sideScene'
import { shankHeight } from './wall'

type Height = readonly [path: FieldPath, from: number, to: number]

/** Lines of the pot and what it stands in that the view from the front has no room for, left of it and along its own axes: they tilt with it. */
export function sidePotDimensions(stand: Stand): readonly Dimension[] {
  const { answers, unit, pencil, check } = stand
  const { saucer, cover } = check.solved.geometry.outline
  const height = answers['pot.height']
  const topping = answers['topping.depth']
  const fill = height - Math.max(answers['pot.fillGap'], topping)
  const heights: readonly Height[] = [
    ...(topping > 0 ? [['topping.depth', fill, fill + topping] as const] : [['pot.fillGap', fill, height] as const]),
    ...(answers['layer.depth'] > 0 ? [['layer.depth', 0, answers['layer.depth']] as const] : []),
    ...(answers['pot.shape'] === 'bellied' ? [['pot.bellyHeight', 0, answers['pot.bellyHeight']] as const] : []),
    ...(saucer !== null && answers['saucer.depth'] !== null ? [['saucer.depth', 0, answers['saucer.depth']] as const] : []),
    ...(cover !== null && answers['cover.height'] !== null ? [['cover.height', 0, answers['cover.height']] as const] : []),
  ]
  const columns = columnsOf(heights.map(([, from, to]) => ({ from, to, number: (from + to) / 2 })), 0.7 * unit)
  const half = widestHalf(stand)
  const upright = heights.map(([path, from, to], i): Dimension => {
    const aside = 0 - half - (1.6 + 5 * (columns[i] ?? 0)) * unit
    return {
      path, value: to - from, pencil: pencil(path), from: facing(stand, aside, from), to: facing(stand, aside, to), feet: [facing(stand, 0 - half, from), facing(stand, 0 - half, to)],
      number: facing(stand, aside - 0.4 * unit, (from + to) / 2), side: 'left',
    }
  })
  const widths: readonly (readonly [FieldPath, number, number])[] = [
    ...(answers['pot.shape'] === 'trough' ? [['pot.rim', answers['pot.rim'], height] as const] : []),
    ...(saucer !== null && answers['saucer.width'] !== null ? [['saucer.width', answers['saucer.width'], answers['saucer.depth'] ?? 0] as const] : []),
    ...(cover !== null && answers['cover.inside'] !== null ? [['cover.inside', answers['cover.inside'], answers['cover.height'] ?? 0] as const] : []),
  ]
  const level = widths.map(([path, value, at], i): Dimension => {
    const below = (1.6 + 1.9 * i) * unit
    return {
      path, value, pencil: pencil(path), from: facing(stand, value / -2, 0 - below), to: facing(stand, value / 2, 0 - below), feet: [facing(stand, value / -2, at), facing(stand, value / 2, at)],
      number: facing(stand, value / 2 + 0.5 * unit, 0 - below), side: 'right',
    }
  })
  return [...upright, ...level]
}

/** Lines of a wall, and of what stands out from it: they stay as they are, however the pot tilts. */
export function wallDimensions(scene: SideScene): readonly Dimension[] {
  const { answers, wall, hookAt, unit, pencil } = scene
  if (wall === null) return []
  const bracket = hasBracket(answers)
  const arm = bracket ? armHeight(scene) : shankHeight(scene)
  const holder = bracket ? bracketScrews(scene).at(-1) ?? arm : arm
  const out = { path: bracket ? 'bracket.reach' : 'hook.projection', value: wall - hookAt, pencil, ends: [hookAt, wall], at: arm + 3.8 * unit, feet: [arm, arm] } as const
  const thread = screwOf(scene).thread[1]
  const lowest = bracket ? plateFoot(scene) - 2 * unit : arm - 3 * unit
  const deep: readonly Measured[] = screwMeasured(scene)
    ? [{ path: 'fixing.penetration', value: answers['fixing.penetration'], pencil, ends: [wall + thread - answers['fixing.penetration'], wall + thread], at: lowest - 1.2 * unit, feet: [holder, holder] }]
    : []
  return [
    // Too short for a number on it: beyond the wall, where there is room.
    levelLine(out, out.value < 5 * unit ? 0.5 * unit : null),
    ...deep.map((line) => levelLine(line, 0.5 * unit)),
    ...(bracket ? bracketDimensions(scene, wall) : []),
    ...thicknessBehind(scene, wall),
  ]
}

function bracketDimensions(scene: SideScene, wall: number): readonly Dimension[] {
  const { answers, unit, pencil, hookAt } = scene
  const [foot, arm, high] = [plateFoot(scene), armHeight(scene), armHigh(scene)]
  const at = wall + sectionReach(scene) + unit
  const [lower, upper] = [answers['bracket.bottom'], answers['bracket.top']]
  const up = (path: 'bracket.bottom' | 'bracket.top', value: number, x: number): Dimension =>
    uprightLine({ path, value, pencil, ends: [foot, foot + value], at: x, feet: [wall, wall] }, { side: 'right', away: 0.4 * unit, height: foot + value / 2 })
  const end = hookAt - 0.8 * unit
  return [
    ...(answers['bracket.screws'] > 1 ? [up('bracket.bottom', lower, at)] : []),
    up('bracket.top', upper, at + 4.8 * unit),
    ...(answers['bracket.high'] === null ? [] : [uprightLine({ path: 'bracket.high', value: high, pencil, ends: [arm - high / 2, arm + high / 2], at: end - unit, feet: [end, end] }, { side: 'left', away: 0.4 * unit, height: arm })]),
  ]
}

/** What lies between a panel's pot and the wall. */
function thicknessBehind(scene: SideScene, wall: number): readonly Dimension[] {
  const { answers, unit, pencil, gathering: [, z] } = scene
  const thick = answers['panel.thickness']
  if (panelOf(scene)?.onWall !== true || thick === 0) return []
  return [levelLine({ path: 'panel.thickness', value: thick, pencil, ends: [wall - thick, wall], at: z - 1.6 * unit, feet: [z, z] }, 0.5 * unit)]
}
