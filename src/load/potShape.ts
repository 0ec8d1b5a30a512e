import { LEAST_WALL_SHARE, POT_MATERIALS, WALLS_AT_RIM } from '../catalogue/potMaterials'
import type { Range } from '../catalogue/basis'
import type { Answers } from '../hanger/fields'
import { cubicMetres, metres, type CubicMetres, type Metres } from '../quantity/si'
import { frustumCentroid, frustumVolume, type Frustum } from './frustum'

/** Volumes of a tapered round pot, and the heights of their centroids above the pot's base. */
export interface PotShape {
  readonly rimRadius: Metres
  readonly baseRadius: Metres
  readonly height: Metres
  /** Wall and base together, for the thin, likely and thick wall. */
  readonly shell: { readonly low: CubicMetres; readonly likely: CubicMetres; readonly high: CubicMetres; readonly centroid: Metres }
  /** Inside, from the floor to the fill line. */
  readonly mix: { readonly volume: CubicMetres; readonly centroid: Metres }
  /** Inside, from the fill line to the rim: room for standing water. */
  readonly head: { readonly volume: CubicMetres; readonly centroid: Metres }
}

type PotAnswers = Pick<Answers, 'pot.rim' | 'pot.base' | 'pot.height' | 'pot.wall' | 'pot.fillGap' | 'pot.material'>

/** Wall thickness of the pot, m: measured, or the catalogue's range for its material and width. */
export function wallThickness(answers: PotAnswers): Range {
  const measured = answers['pot.wall']
  if (measured !== null) return { low: measured, likely: measured, high: measured, unit: 'm', basis: 'your own', source: 'measured wall' }
  const { wall, wallPerRim } = POT_MATERIALS[answers['pot.material']]
  const more = wallPerRim * (answers['pot.rim'] - WALLS_AT_RIM)
  const scale = Math.max(LEAST_WALL_SHARE.value, (wall.likely + more) / wall.likely)
  return { ...wall, low: wall.low * scale, likely: wall.likely * scale, high: wall.high * scale }
}

/**
 * The pot's shell, the room for the mix and the room above it, m and m3, from its outside measures
 * and wall (floor as thick as the wall). A wall too thick for the pot leaves a tenth of its least
 * radius or height open, so that there is always a pot to answer about.
 */
export function potShape(answers: PotAnswers): PotShape {
  const outer: Frustum = { baseRadius: metres(answers['pot.base'] / 2), topRadius: metres(answers['pot.rim'] / 2), height: answers['pot.height'] }
  const radiusAt = (z: number): number => outer.baseRadius + (outer.topRadius - outer.baseRadius) * (z / outer.height)
  const thinnest = Math.min(outer.baseRadius, outer.topRadius, outer.height)
  const inside = (thickness: number, from: number, to: number): Frustum => {
    const bottom = Math.min(from, to)
    return {
      baseRadius: metres(Math.max(0, radiusAt(bottom) - thickness)),
      topRadius: metres(Math.max(0, radiusAt(to) - thickness)),
      height: metres(to - bottom),
    }
  }
  const wall = wallThickness(answers)
  const clip = (thickness: number): number => Math.min(thickness, 0.9 * thinnest)
  const shellVolume = (thickness: number): CubicMetres =>
    cubicMetres(frustumVolume(outer) - frustumVolume(inside(clip(thickness), clip(thickness), outer.height)))
  const thickness = clip(wall.likely)
  const cavity = inside(thickness, thickness, outer.height)
  const fillLine = Math.max(thickness, outer.height - answers['pot.fillGap'])
  const mix = inside(thickness, thickness, fillLine)
  const head = inside(thickness, fillLine, outer.height)
  const outerVolume = frustumVolume(outer)
  const cavityVolume = frustumVolume(cavity)
  const shellMoment = outerVolume * frustumCentroid(outer) - cavityVolume * (thickness + frustumCentroid(cavity))
  return {
    rimRadius: outer.topRadius,
    baseRadius: outer.baseRadius,
    height: outer.height,
    shell: { low: shellVolume(wall.low), likely: shellVolume(wall.likely), high: shellVolume(wall.high), centroid: metres(shellMoment / (outerVolume - cavityVolume)) },
    mix: { volume: frustumVolume(mix), centroid: metres(thickness + frustumCentroid(mix)) },
    head: { volume: frustumVolume(head), centroid: metres(fillLine + frustumCentroid(head)) },
  }
}
