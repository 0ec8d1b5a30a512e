import { pascals, type Metres, type Newtons, type Pascals } from '../quantity/si'
import { ringBending } from './ring'
import { fibreStress, rectangleSection } from './section'

export interface WoodenRingInput {
  readonly load: Newtons
  /** Radius to the middle of the bar, m. */
  readonly mean: Metres
  /** Thickness of the board the ring is cut from, and width of the bar in the plane of the ring, m. */
  readonly thickness: Metres
  readonly width: Metres
}

/**
 * Stresses in a wooden ring under two opposed pulls. Cut from board the grain lies across the bar at two
 * places, so that `atLoad` or `atSide` may be tension across the grain; `splitting` pulls the bar apart
 * toward and from the middle, whatever way it was made.
 */
export interface WoodenRing {
  readonly atLoad: Pascals
  readonly atSide: Pascals
  readonly splitting: Pascals
}

/**
 * Bending 6 M / (b h^2) under the load, the same and W / (2 b h) at the side, and 3 M / (2 R b h) at the
 * side, where the bar straightens (radial tension: National Design Specification, 5.4.1). The bar is taken as
 * straight: at R = 4.5 h its inner side bears 8 % more (Winkler and Bach).
 * @example woodenRing({ load: newtons(100), mean: metres(0.045), thickness: metres(0.01), width: metres(0.01) }).atLoad / 1e6 // 8.59
 */
export function woodenRing({ load, mean, thickness, width }: WoodenRingInput): WoodenRing {
  const section = rectangleSection(thickness, width)
  const { atLoad, atSide, sidePull } = ringBending(load, mean)
  return {
    atLoad: pascals(Math.abs(atLoad) / section.modulus),
    atSide: fibreStress(section, atSide, sidePull),
    splitting: pascals((3 * Math.abs(atSide)) / (2 * mean * section.area)),
  }
}
