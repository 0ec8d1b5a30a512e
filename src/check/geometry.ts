import { UNMEASURED_DIAMETER } from '../catalogue/cords'
import { hangsFrom, hasStick } from '../hanger/arrangement'
import type { Answers } from '../hanger/fields'
import { cradledOutline, cradledProfile, type CradledOutline } from '../load/outline'
import { metres, newtons, type Metres } from '../quantity/si'
import { tautPath, type NoTautPath, type TautPath } from '../statics/tautPath'
import { vCord } from '../statics/vCord'

/** How the hanger hangs: strand length from hanging point to gathering knot, and the taut way round the pot. */
export interface HangerGeometry {
  /** What the strands hang from, and whether there is a stick, under them or over several hangers. */
  readonly hangsFrom: Answers['make.top']
  readonly hasStick: boolean
  /** From the ring's lower edge, or the hook's bowl, along one leg to the gathering knot. */
  readonly strand: Metres
  readonly path: TautPath | NoTautPath
  /** What lies in the cradle, outside. */
  readonly outline: CradledOutline
  /** Length of the gathering knot along the cords. */
  readonly knot: Metres
  /** From the hook's bowl down to where the legs hang; null where the top cord does not reach. */
  readonly top: Metres | null
  /** From the hook's bowl to the end of the fringe when hung with the pot; null where no path exists, or the top cord does not reach. */
  readonly drop: Metres | null
  /** Where the cradle's first knots lie, measured from the gathering knot along a leg, against the pot. */
  readonly firstKnots: 'under the base' | 'on the side' | 'above the rim' | null
}

/**
 * Length of what is above the legs: a ring, and a stick with the height of its top cord; nothing where they are bunched
 * on the hook or their stick rests on two; null where the top cord does not reach.
 */
export function topLength(answers: Answers): number | null {
  const ring = hangsFrom(answers) === 'ring' ? answers['ring.inside'] + 2 * answers['ring.wire'] : 0
  if (!hasStick(answers)) return ring
  const stick = stickLength(answers)
  return stick === null ? null : ring + stick
}

/** The same of a stick alone, under which its legs or the rings of a row hang. */
function stickLength(answers: Answers): number | null {
  if (answers['stick.held'] === 'twoHooks') return 0
  const cord = vCord({ cord: metres(answers['stick.topCord']), span: metres(answers['stick.span']), weight: newtons(1) })
  return cord.ok ? cord.height + answers['stick.diameter'] / 2 : null
}

/**
 * Geometry of a hanger with legs from one point to one gathering knot: strand length from the leg
 * length and the cradle, or from the whole length less ring, knot and fringe; then the taut path.
 * Strands too short for the pot are an answer (`path.ok` false, LEG_TOO_SHORT of the leg).
 */
export function hangerGeometry(answers: Answers): HangerGeometry {
  const knot = answers['gathering.wraps'] * (answers['cord.diameter'] ?? UNMEASURED_DIAMETER.value)
  const top = topLength(answers)
  const ring = hangsFrom(answers) === 'ring' ? answers['ring.inside'] + 2 * answers['ring.wire'] : 0
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
    hangsFrom: hangsFrom(answers),
    hasStick: hasStick(answers),
    strand: metres(strand),
    path,
    outline,
    knot: metres(knot),
    top: top === null ? null : metres(top),
    drop: path.ok && top !== null ? metres(top + path.top + knot + answers['make.fringe']) : null,
    firstKnots,
  }
}
