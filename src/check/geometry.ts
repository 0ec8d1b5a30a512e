import { UNMEASURED_DIAMETER } from '../catalogue/cords'
import { hangsFrom, hasStick, liesLevel } from '../hanger/arrangement'
import type { Answers } from '../hanger/fields'
import { gatheredStrands } from '../hanger/strandCount'
import { cradledOutline, type CradledOutline } from '../load/outline'
import { metres, newtons, type Metres } from '../quantity/si'
import type { NoTautPath, TautPath } from '../statics/tautPath'
import { vCord } from '../statics/vCord'
import { panelGeometry, type PanelGeometry } from './panel/panelGeometry'
import type { NoPanelSide } from './panel/panelSide'
import { frontTurn, isSpread, legPlaces, upperRadius, waysBetween, type LegPlace } from './legPlaces'

/** How the hanger hangs: strand length from hanging point to gathering knot, and the taut way round the pot. */
export interface HangerGeometry {
  /** What the strands hang from, and whether there is a stick, under them or over several hangers. */
  readonly hangsFrom: Answers['make.top']
  readonly hasStick: boolean
  /** From the ring's lower edge, or the hook's bowl, along one leg to the gathering knot. */
  readonly strand: Metres
  /** The way of the leg that leans most. */
  readonly path: TautPath | NoTautPath
  /** Every leg; none where the strands do not reach round the pot. */
  readonly legs: readonly LegPlace[]
  /** Radius of the level ring from which the legs hang, 0 where they hang from one place or a stick; what a ring takes of the height, 0 without one. */
  readonly ringRadius: Metres
  readonly ringHeight: Metres
  /** Whether the legs' upper ends are spread along a stick. */
  readonly spread: boolean
  /** The way of a wall planter's strands, or why they cannot go so; null of any other hanger. */
  readonly panel: PanelGeometry | NoPanelSide | null
  /** Ways between each leg and the next. */
  readonly between: readonly Pick<LegPlace, 'angle' | 'path'>[]
  /** The turn at which the hanger is looked at from the front, rad. */
  readonly turn: number
  /** What lies in the cradle, outside. */
  readonly outline: CradledOutline
  /** Strands that come together in the gathering knot. */
  readonly gathered: number
  /** Length of the gathering knot along the cords. */
  readonly knot: Metres
  /** From the hook's bowl down to where the legs hang; null where the top cord does not reach. */
  readonly top: Metres | null
  /** From the hook's bowl to the end of the fringe when hung with the pot; null where no path exists, or the top cord does not reach. */
  readonly drop: Metres | null
  /** Where the cradle's first knots lie, between the legs, measured from the gathering knot along a strand, against the pot. */
  readonly firstKnots: 'under the base' | 'on the side' | 'above the rim' | null
  /** From which length on, and up to which, they all lie on its side, m. */
  readonly onSide: { readonly from: number; readonly to: number }
}

/**
 * Length of what is above the legs: a ring, and a stick with the height of its top cord; nothing where they are bunched
 * on the hook or their stick rests on two; null where the top cord does not reach.
 */
export function topLength(answers: Answers): number | null {
  const onRing = hangsFrom(answers) === 'ring'
  if (!hasStick(answers)) return onRing ? ringHeight(answers) : 0
  const stick = stickLength(answers)
  // The ring goes round the stick and hangs from the top of it.
  return stick === null ? null : stick + (onRing ? answers['ring.inside'] + answers['ring.wire'] - answers['stick.diameter'] : 0)
}

/** What a ring takes of the hanger's height: its own, or that of the cords by which it lies level. */
export const ringHeight = (answers: Answers): number => (liesLevel(answers) ? answers['ring.rise'] : answers['ring.inside'] + 2 * answers['ring.wire'])

/** The same of a stick alone, under which its legs or the rings of a row hang. */
function stickLength(answers: Answers): number | null {
  if (answers['stick.held'] === 'twoHooks') return 0
  const cord = vCord({ cord: metres(answers['stick.topCord']), span: metres(answers['stick.span']), weight: newtons(1) })
  return cord.ok ? cord.height + answers['stick.diameter'] / 2 : null
}

const widest = (legs: readonly LegPlace[]): TautPath => legs.reduce((most, { path }) => (path.angle > most.angle ? path : most), (legs[0] as LegPlace).path)

/**
 * Geometry of a hanger with legs down to one gathering knot: strand length from the leg
 * length and the cradle, or from the whole length less ring, knot and fringe; then the taut path.
 * Strands too short for the pot are an answer (`path.ok` false, LEG_TOO_SHORT of the leg).
 */
export function hangerGeometry(answers: Answers): HangerGeometry {
  const knot = answers['gathering.wraps'] * (answers['cord.diameter'] ?? UNMEASURED_DIAMETER.value)
  const top = topLength(answers)
  const ring = hangsFrom(answers) === 'ring' ? ringHeight(answers) : 0
  const legLength = answers['make.legLength']
  const strand = legLength !== null
    ? legLength + answers['cradle.first']
    : answers['make.totalLength'] - answers['make.fringe'] - ring - knot
  const outline = cradledOutline(answers)
  const panel = answers['make.arrangement'] === 'panel' ? panelGeometry(answers, outline, top ?? 0) : null
  const places = panel === null ? legPlaces(answers, outline, metres(strand)) : { ok: false, least: metres(0) } as const
  const legs = 'ok' in places ? [] : places
  const path = panel?.ok ? panel.path : 'ok' in places ? places : widest(places)
  const between = waysBetween(outline, legs)
  const onSide = {
    from: Math.max(...between.map((way) => way.path.knotToBaseEdge), path.ok && panel?.ok === true ? path.knotToBaseEdge : 0),
    to: path.ok ? Math.min(...between.map((way) => way.path.knotToLeave), ...(panel?.ok === true ? [path.knotToLeave] : [])) : 0,
  }
  return {
    hangsFrom: hangsFrom(answers),
    hasStick: hasStick(answers),
    strand: panel?.ok ? panel.strand : metres(strand),
    path,
    legs,
    panel,
    ringRadius: metres(upperRadius(answers)),
    ringHeight: metres(ring),
    spread: isSpread(answers),
    between,
    // Whoever looks at a panel looks at the wall.
    turn: panel === null ? frontTurn(answers) : Math.PI,
    outline,
    gathered: gatheredStrands(answers),
    knot: metres(knot),
    top: top === null ? null : metres(top),
    drop: path.ok && top !== null ? metres(top + path.top + knot + answers['make.fringe']) : null,
    firstKnots: panel?.ok ? (panel.side.knotHeight > 0 ? 'on the side' : 'under the base') : firstKnots(answers['cradle.first'], onSide),
    onSide,
  }
}

/** Null where a strand leaves the pot at its base edge: it has no side to be tied on. */
function firstKnots(first: number, { from, to }: HangerGeometry['onSide']): HangerGeometry['firstKnots'] {
  if (to <= from) return null
  return first <= from ? 'under the base' : first > to ? 'above the rim' : 'on the side'
}
