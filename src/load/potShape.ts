import type { Answers } from '../hanger/fields'
import { cubicMetres, metres, type CubicMetres, type Metres } from '../quantity/si'
import { potOutline, thickestWall, type OutlineAnswers } from './potOutline'
import { solidBetween, type Solid } from './solid'
import { wallThickness } from './wallThickness'

/** Volumes of a pot, and the heights of their centroids above its base. Inside, from below: layer, mix, topping, head. */
export interface PotShape {
  readonly height: Metres
  /** Height of the floor inside. */
  readonly floor: Metres
  /** Wall and base together, for the thin, likely and thick wall. */
  readonly shell: { readonly low: CubicMetres; readonly likely: CubicMetres; readonly high: CubicMetres; readonly centroid: Metres }
  /** The whole room inside, up to the rim. */
  readonly room: Solid
  /** Drainage layer on the floor. */
  readonly layer: Solid
  /** From there up to the fill line. */
  readonly mix: Solid
  /** Top dressing on the mix. */
  readonly topping: Solid
  /** What is left open below the rim: room for standing water. */
  readonly head: Solid
}

type PotAnswers = OutlineAnswers & Pick<Answers, 'pot.wall' | 'pot.fillGap' | 'pot.material' | 'layer.depth' | 'topping.depth'>

/**
 * The pot's shell and the rooms inside it, m and m3, from its outside measures and wall (floor as thick
 * as the wall). A layer takes room from the mix; a dressing deeper than the gap below the rim does too.
 */
export function potShape(answers: PotAnswers): PotShape {
  const height = answers['pot.height']
  const wall = wallThickness(answers['pot.material'], answers['pot.rim'], answers['pot.wall'])
  const most = thickestWall(answers)
  const outside = solidBetween(potOutline(answers, 0), 0, height)
  const roomOf = (thickness: number): Solid => solidBetween(potOutline(answers, thickness), thickness, height)
  const shellOf = (thickness: number): CubicMetres => cubicMetres(outside.volume - roomOf(Math.min(thickness, most)).volume)
  const floor = Math.min(wall.likely, most)
  const inside = potOutline(answers, floor)
  const room = roomOf(floor)
  const surface = Math.max(floor, height - Math.max(answers['pot.fillGap'], answers['topping.depth']))
  const layerTop = Math.min(surface, floor + answers['layer.depth'])
  const toppingTop = Math.min(height, surface + answers['topping.depth'])
  return {
    height: metres(height),
    floor: metres(floor),
    shell: {
      low: shellOf(wall.low), likely: shellOf(wall.likely), high: shellOf(wall.high),
      centroid: metres((outside.volume * outside.centroid - room.volume * room.centroid) / (outside.volume - room.volume)),
    },
    room,
    layer: solidBetween(inside, floor, layerTop),
    mix: solidBetween(inside, layerTop, surface),
    topping: solidBetween(inside, surface, toppingTop),
    head: solidBetween(inside, toppingTop, height),
  }
}
