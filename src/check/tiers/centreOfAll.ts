import type { CaseLoad } from '../solved'
import type { DrawnDown } from './drawnDown'

/**
 * Height of the common centre of gravity above the base and its offset from the axis, m: a pot hung from the
 * gathering knot pulls there straight down, the same as a mass fixed to the upper one at that place.
 */
export function centreOfAll(centre: number, offset: number, { potted, hanger, below }: Pick<CaseLoad, 'potted' | 'hanger' | 'below'>, knot: DrawnDown | null): { readonly centre: number; readonly offset: number } {
  if (knot === null) return { centre, offset }
  const share = below / (potted + hanger)
  return { centre: centre * (1 - share) - knot.drawn * share, offset: offset * (1 - share) }
}
