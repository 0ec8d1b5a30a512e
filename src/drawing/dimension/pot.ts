import { facing, widestHalf } from './potFrame'
import type { Scene, Stand } from './scene'
import type { Dimension, Point } from './shape'
import { hookPlaces } from './stick'
import { bracketDimensions, hasBracket } from './support'

/** Dimension lines of pot and plant, along the pot's own axes: they tilt with it. */
export function potDimensions(scene: Stand): readonly Dimension[] {
  const { answers, unit, pencil } = scene
  const shape = answers['pot.shape']
  const [rim, height, plant] = [answers['pot.rim'] / 2, answers['pot.height'], answers['plant.height']]
  const base = shape === 'cylinder' ? rim : answers['pot.base'] / 2
  const beside = widestHalf(scene) + 2.4 * unit
  const upright = (path: 'pot.height' | 'plant.height', value: number, lower: readonly [number, number], upper: readonly [number, number]): Dimension => ({
    path, value, pencil: pencil(path),
    from: facing(scene, beside, lower[1]), to: facing(scene, beside, upper[1]), feet: [facing(scene, ...lower), facing(scene, ...upper)],
    number: facing(scene, beside, lower[1] + 0.4 * (upper[1] - lower[1])), side: 'middle',
  })
  const level = (path: 'pot.rim' | 'pot.base' | 'pot.belly' | 'pot.length', half: number, at: number, below: number): Dimension => ({
    path, value: 2 * half, pencil: pencil(path),
    from: facing(scene, -half, -below), to: facing(scene, half, -below), feet: [facing(scene, -half, at), facing(scene, half, at)],
    number: facing(scene, half + 0.5 * unit, -below), side: 'right',
  })
  const plantLine = (from: readonly [number, number]): readonly Dimension[] => (plant > 0 ? [upright('plant.height', plant, from, [0, height + plant])] : [])
  const lines = [upright('pot.height', height, [base, 0], [rim, height])]
  // A trough stands with its length to the viewer.
  const longer = answers['pot.length'] > answers['pot.rim'] ? 'pot.length' : 'pot.rim'
  const long = answers[longer] / 2
  if (shape === 'trough') return [upright('pot.height', height, [base + long - rim, 0], [long, height]), level(longer, long, height, 1.4 * unit), ...plantLine([long, height])]
  if (shape !== 'cylinder') lines.push(level('pot.base', base, 0, 1.4 * unit))
  lines.push(level('pot.rim', rim, height, 3.3 * unit))
  if (shape === 'bellied') lines.push(level('pot.belly', answers['pot.belly'] / 2, answers['pot.bellyHeight'], 5.2 * unit))
  return [...lines, ...plantLine([rim, height])]
}

/** Dimension lines at the ceiling: how far the hook stands out, and the thread where it is in timber; at a wall the reach of a bracket. */
export function placeDimensions(scene: Scene): readonly Dimension[] {
  const { answers, bowl, ceiling, unit, pencil } = scene
  if (hasBracket(answers)) return bracketDimensions(scene)
  if (answers['place.support'] !== 'ceilingHook') return []
  const hook = Math.max(...hookPlaces(scene))
  const x = hook + 4.6 * unit
  // Numbers of short lines keep clear of each other.
  const clear = (length: number): number => Math.max(length / 2, 0.95 * unit)
  const line = (path: 'hook.projection' | 'fixing.penetration', value: number, foot: number, lower: number, upper: number, number: number): Dimension => {
    const at = (z: number): Point => [x, z]
    return { path, value, pencil: pencil(path), from: at(lower), to: at(upper), feet: [[hook + foot, lower], [hook + foot, upper]], number: [x + 0.5 * unit, number], side: 'right' }
  }
  const projection = line('hook.projection', answers['hook.projection'], answers['hook.wire'], bowl, ceiling, ceiling - clear(answers['hook.projection']))
  if (answers['place.substrate'] !== 'timber') return [projection]
  const thread = answers['fixing.penetration']
  return [projection, line('fixing.penetration', thread, answers['fixing.diameter'] / 2, ceiling, ceiling + thread, ceiling + clear(thread))]
}
