import { cubicMetres, metres, type CubicMetres, type Metres } from '../quantity/si'

/** A frustum of a cone standing on its base: radii at base and top, height. */
export interface Frustum {
  readonly baseRadius: Metres
  readonly topRadius: Metres
  readonly height: Metres
}

/**
 * Volume of a frustum, pi h / 3 (R^2 + R r + r^2), as in any geometry textbook.
 * @example frustumVolume({ baseRadius: metres(2), topRadius: metres(5), height: metres(3) }) // 122.52
 */
export function frustumVolume({ baseRadius: b, topRadius: t, height }: Frustum): CubicMetres {
  return cubicMetres((Math.PI * height / 3) * (b * b + b * t + t * t))
}

/**
 * Height of a frustum's centroid above its base, h/4 (b^2 + 2 b t + 3 t^2) / (b^2 + b t + t^2), as in
 * any geometry textbook; half way up where both radii are zero.
 * @example frustumCentroid({ baseRadius: metres(2), topRadius: metres(5), height: metres(3) }) // 1.9038
 */
export function frustumCentroid({ baseRadius: b, topRadius: t, height }: Frustum): Metres {
  const area = b * b + b * t + t * t
  return metres(area === 0 ? height / 2 : (height / 4) * (b * b + 2 * b * t + 3 * t * t) / area)
}
