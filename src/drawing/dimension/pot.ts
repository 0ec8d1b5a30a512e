import { facing, widestHalf } from '../potFrame'
import type { Stand } from '../scene'
import type { Dimension } from '../shape'

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
