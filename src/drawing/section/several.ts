import type { Scene } from '../scene'
import type { Shape } from '../shape'
import { slab, type Frame } from './frame'
import { screwOf } from './screw'

type Fixed = Pick<Scene, 'answers' | 'check' | 'pencil'>

/** How far apart several fixings of one hook are drawn, over their thickness, and how thick the plate they go through. */
const APART = 5
const PLATE = 0.003

const apart = (scene: Fixed): number => APART * screwOf(scene).diameter

/** Where the fixings of one hook are along the surface: one in its middle, several side by side, for how far apart was not asked. */
export function fixingPlaces(scene: Fixed, middle: number): readonly number[] {
  const count = scene.answers['fixing.count']
  return Array.from({ length: count }, (_, i) => middle + (i - (count - 1) / 2) * apart(scene))
}

/** The plate under several fixings; none under one. */
export function fixingPlate(scene: Fixed, at: Frame, middle: number): readonly Shape[] {
  const count = scene.answers['fixing.count']
  if (count === 1) return []
  const half = ((count - 1) / 2 + 0.6) * apart(scene)
  return [{ link: 'fixing', ink: 'wire', leg: null, pencil: true, behind: false, kind: 'area', texture: 'open', points: slab(at, [0 - PLATE, 0], [middle - half, middle + half]) }]
}
