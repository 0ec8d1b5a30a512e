import { cubicMetres, metres, type CubicMetres, type Metres } from '../quantity/si'
import { sectionArea, type Section } from './section'

/** A stretch of a pot's height, m above its base, over which the area of its section is quadratic in height. */
export interface Piece {
  readonly from: number
  readonly to: number
  readonly at: (height: number) => Section
}

/** A volume and the height of its centroid above the pot's base. */
export interface Solid {
  readonly volume: CubicMetres
  readonly centroid: Metres
}

/**
 * Volume and centroid between two heights, by Simpson's rule piece by piece: exact, for area and
 * first moment are at most cubic in height. Half way up where there is no volume.
 * @example solidBetween([{ from: 0, to: 3, at: (z) => ({ round: true, across: 2 + z, along: 2 + z }) }], 0, 3).volume // 122.52
 */
export function solidBetween(pieces: readonly Piece[], from: number, to: number): Solid {
  let volume = 0
  let moment = 0
  for (const piece of pieces) {
    const low = Math.max(from, piece.from)
    const high = Math.min(to, piece.to)
    if (high <= low) continue
    const middle = (low + high) / 2
    const [a, m, b] = [low, middle, high].map((z) => sectionArea(piece.at(z))) as [number, number, number]
    volume += ((high - low) / 6) * (a + 4 * m + b)
    moment += ((high - low) / 6) * (low * a + 4 * middle * m + high * b)
  }
  return { volume: cubicMetres(volume), centroid: metres(volume > 0 ? moment / volume : (from + to) / 2) }
}
