import { metres, newtons, type Metres, type Newtons } from '../quantity/si'

/**
 * Bending in a thin closed ring under two opposed pulls, N m: under a load it bends sharper (positive,
 * outer side stretched), half way between it straightens (negative, inner side stretched).
 */
export interface RingBending {
  readonly atLoad: number
  readonly atSide: number
  /** Pull along the bar half way between the loads. */
  readonly sidePull: Newtons
}

/**
 * W R / pi, W R (1/pi - 1/2), W / 2 (Roark, circular rings, case 1; elastic, thin). `mean`: radius to the
 * middle of the bar, m.
 * @example ringBending(newtons(80), metres(0.045)).atLoad // 1.1459
 */
export const ringBending = (load: Newtons, mean: Metres): RingBending => ({
  atLoad: (load * mean) / Math.PI,
  atSide: load * mean * (1 / Math.PI - 1 / 2),
  sidePull: newtons(load / 2),
})

/**
 * How much longer the ring grows along the pull, and how much narrower (negative) across it, m:
 * W R^3 / (E I) times pi/4 - 2/pi and 1/2 - 2/pi (the same case). `bendingStiffness`: E I, N m2.
 * @example ringStretch(newtons(80), metres(0.05), 2).along * 1000 // 0.744
 */
export const ringStretch = (load: Newtons, mean: Metres, bendingStiffness: number): { readonly along: Metres; readonly across: Metres } => {
  const unit = (load * mean ** 3) / bendingStiffness
  return { along: metres(unit * (Math.PI / 4 - 2 / Math.PI)), across: metres(unit * (1 / 2 - 2 / Math.PI)) }
}
