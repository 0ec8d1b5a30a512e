import type { Scene } from './scene'
import { ceilingFrame } from './section/frame'
import { layersOf, textureOf } from './section/layers'
import { sectionShapes } from './section/section'
import { fixingPlaces, fixingPlate } from './section/several'
import type { Shape } from './shape'
import { hookPlaces } from './stick'
import { beamShapes, bracketOnWall, hasBracket, wallHookShapes } from './support'

/** What the hanger hangs from, from the front: the ceiling cut through at the hook with the fixing in it to scale, as far as both are known; or the wall behind a hook or bracket; or a beam. */
export function buildingShapes(scene: Scene): readonly Shape[] {
  const { answers } = scene
  const texture = textureOf(answers['place.substrate'])
  if (hasBracket(answers)) return bracketOnWall(scene, texture)
  if (answers['place.support'] === 'wallHook') return wallHookShapes(scene, texture)
  if (answers['place.support'] === 'overBeam') return beamShapes(scene, texture)
  const places = hookPlaces(scene)
  return ceilingShapes(scene, places, places.flatMap((x) => fixingPlaces(scene, x)), places.flatMap((x) => fixingPlate(scene, ceilingFrame(scene.ceiling), x)))
}

/** The ceiling cut through where hooks stand in it, with their fixings and plates. */
export function ceilingShapes(scene: Scene, places: readonly number[], fixings: readonly number[], plates: readonly Shape[]): readonly Shape[] {
  const { ceiling, unit } = scene
  const at = ceilingFrame(ceiling)
  const [left, right] = [Math.min(...places) - 3 * unit, Math.max(...places) + 3 * unit]
  return [
    ...sectionShapes(scene, at, { from: left, to: right, least: 2 * unit, surface: [left - unit, right + unit], fixings }),
    ...plates,
  ]
}

/** Height of the highest part of the section of a ceiling. */
export const ceilingTop = (scene: Scene): number => scene.ceiling + Math.max(...layersOf(scene, 2 * scene.unit).map(({ to }) => to))
