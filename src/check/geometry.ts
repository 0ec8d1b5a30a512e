import { UNMEASURED_DIAMETER } from '../catalogue/cords'
import type { Answers } from '../hanger/fields'
import { cradledOutline, cradledProfile, type CradledOutline } from '../load/outline'
import { metres, type Metres } from '../quantity/si'
import { tautPath, type NoTautPath, type TautPath } from '../statics/tautPath'

/** How the hanger hangs: strand length from hanging point to gathering knot, and the taut way round the pot. */
export interface HangerGeometry {
  /** From the ring's lower edge, or the hook's bowl, along one leg to the gathering knot. */
  readonly strand: Metres
  readonly path: TautPath | NoTautPath
  /** What lies in the cradle, outside. */
  readonly outline: CradledOutline
  /** Length of the gathering knot along the cords. */
  readonly knot: Metres
  /** From the hook's bowl to the end of the fringe when hung with the pot; null where no path exists. */
  readonly drop: Metres | null
  /** Where the cradle's first knots lie, measured from the gathering knot along a leg, against the pot. */
  readonly firstKnots: 'under the base' | 'on the side' | 'above the rim' | null
}

/**
 * Geometry of a hanger with legs from one point to one gathering knot: strand length from the leg
 * length and the cradle, or from the whole length less ring, knot and fringe; then the taut path.
 * Strands too short for the pot are an answer (`path.ok` false, LEG_TOO_SHORT of the leg).
 */
export function hangerGeometry(answers: Answers): HangerGeometry {
  const knot = answers['gathering.wraps'] * (answers['cord.diameter'] ?? UNMEASURED_DIAMETER.value)
  const ring = answers['make.top'] === 'ring' ? answers['ring.inside'] + 2 * answers['ring.wire'] : 0
  const legLength = answers['make.legLength']
  const strand = legLength !== null
    ? legLength + answers['cradle.first']
    : answers['make.totalLength'] - answers['make.fringe'] - ring - knot
  const outline = cradledOutline(answers)
  const path = tautPath({ profile: cradledProfile(outline), strand: metres(strand) })
  const first = answers['cradle.first']
  // A strand that leaves the pot at its base edge has no side to be tied on.
  const firstKnots = !path.ok || path.knotToLeave <= path.knotToBaseEdge ? null : first <= path.knotToBaseEdge ? 'under the base' : first > path.knotToLeave ? 'above the rim' : 'on the side'
  return {
    strand: metres(strand),
    path,
    outline,
    knot: metres(knot),
    drop: path.ok ? metres(ring + path.top + knot + answers['make.fringe']) : null,
    firstKnots,
  }
}
