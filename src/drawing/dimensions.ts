import { facing } from './potFrame'
import { sectionTop } from './building'
import { bowlRadius } from './hook'
import type { Scene } from './scene'
import type { Dimension, Point } from './shape'

/** Dimension lines of pot and plant, along the pot's own axes: they tilt with it. */
export function potDimensions(scene: Scene): readonly Dimension[] {
  const { answers, unit, pencil } = scene
  const [rim, base, height, plant] = [answers['pot.rim'] / 2, answers['pot.base'] / 2, answers['pot.height'], answers['plant.height']]
  const beside = Math.max(rim, base) + 2.4 * unit
  const upright = (path: 'pot.height' | 'plant.height', value: number, lower: readonly [number, number], upper: readonly [number, number]): Dimension => ({
    path, value, pencil: pencil(path),
    from: facing(scene, beside, lower[1]), to: facing(scene, beside, upper[1]), feet: [facing(scene, ...lower), facing(scene, ...upper)],
    number: facing(scene, beside, (lower[1] + upper[1]) / 2), side: 'middle',
  })
  const level = (path: 'pot.rim' | 'pot.base', half: number, at: number, below: number): Dimension => ({
    path, value: 2 * half, pencil: pencil(path),
    from: facing(scene, -half, -below), to: facing(scene, half, -below), feet: [facing(scene, -half, at), facing(scene, half, at)],
    number: facing(scene, half + 0.5 * unit, -below), side: 'right',
  })
  const lines = [upright('pot.height', height, [base, 0], [rim, height]), level('pot.base', base, 0, 1.5 * unit), level('pot.rim', rim, height, 3.1 * unit)]
  return plant > 0 ? [...lines, upright('plant.height', plant, [rim, height], [0, height + plant])] : lines
}

/** Dimension lines at the ceiling: how far the hook stands out, and the thread where it is in timber. */
export function placeDimensions(scene: Scene): readonly Dimension[] {
  const { answers, bowl, ceiling, unit, pencil } = scene
  const x = 2.2 * unit + bowlRadius(scene)
  const line = (path: 'hook.projection' | 'fixing.penetration', value: number, foot: number, lower: number, upper: number): Dimension => {
    const at = (z: number): Point => [x, z]
    return { path, value, pencil: pencil(path), from: at(lower), to: at(upper), feet: [[foot, lower], [foot, upper]], number: [x + 0.5 * unit, (lower + upper) / 2], side: 'right' }
  }
  const projection = line('hook.projection', answers['hook.projection'], 0, bowl, ceiling)
  if (answers['place.substrate'] !== 'timber' || sectionTop(scene) <= ceiling) return [projection]
  return [projection, line('fixing.penetration', answers['fixing.penetration'], answers['fixing.diameter'] / 2, ceiling, ceiling + answers['fixing.penetration'])]
}
