import type { Patch } from '#core'

/** A hook on a wall from which the pot leans, a bracket, and a cord round something; each everything said of its own parts. */
export const WALL_HOOK = { 'place.support': 'wallHook', 'hook.projection': '24 mm', 'hook.wire': '8 mm', 'hook.metal': 'steel', 'seat.offset': '4 mm' } as const satisfies Patch
export const BRACKET = {
  'place.support': 'bracket', 'bracket.reach': '220 mm', 'bracket.screws': '2', 'bracket.top': '130 mm', 'bracket.bottom': '25 mm',
  'bracket.metal': 'steel', 'bracket.thick': '6 mm', 'bracket.high': '25 mm', 'fixing.kind': 'woodScrew',
} as const satisfies Patch
export const ROUND = { 'place.support': 'overBeam' } as const satisfies Patch
