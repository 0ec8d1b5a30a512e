import type { Answers } from '../../hanger/fields'
import type { CradledOutline } from '../../load/outline'
import { metres, newtons, radians, type Metres } from '../../quantity/si'
import { panelPoints, type PanelPoints } from '../../statics/panel'
import { panelLean } from '../../statics/panelStick'
import { slantOf } from '../../statics/unrolled'
import type { TautPath } from '../../statics/tautPath'
import type { Finding } from '../finding'
import { frontWays, type FrontWays } from './frontWays'
import type { SlingPlan } from '../slingPlan'
import { panelPlan } from './panelPlan'
import { panelSide, type NoPanelSide, type PanelSide } from './panelSide'

/** A wall planter as it hangs: where its panel ends, and its strands behind the pot and round its front; m. */
export interface PanelGeometry {
  readonly ok: true
  readonly side: PanelSide
  readonly points: PanelPoints
  /** Whether the pot leans on a wall. */
  readonly onWall: boolean
  /** The stick above the pot's base; it, and the panel's lower edge, from the wall, or from the pot's axis where there is none. */
  readonly stickHeight: Metres
  readonly stickFromAxis: number
  readonly edgeFromAxis: number
  readonly edgeHeight: Metres
  /** The way of one strand in front, drawn in one plane: `top` is the stick. */
  readonly path: TautPath
  /** Length of that strand from the stick to the gathering knot. */
  readonly strand: Metres
  readonly plan: SlingPlan
  readonly ways: FrontWays
}

/** The strands behind the pot make two groups, the left half and the right half, each in its middle. */
export const behindPlaces = (answers: Pick<Answers, 'panel.behind' | 'panel.behindWidth'>): readonly [Metres, Metres] => {
  const strands = answers['panel.behind']
  const half = Math.floor(strands / 2)
  // Evenly over the width: the mean of the outer half of their places.
  const mean = (answers['panel.behindWidth'] / 2) * (1 - (half - 1) / (strands - 1))
  return [metres(mean), metres(0 - mean)]
}

interface Hanging {
  readonly edgeFromWall: number
  readonly onWall: boolean
}

/**
 * How far the panel's edge stands from the wall: on the line of pull from the fixing, as if the panel were a chain
 * (panelLean). Clear of the wall, or with no wall behind it, over the pot's axis.
 */
function hanging(answers: Answers, { side, touches }: PanelSide, top: number): Hanging | null {
  const axis = Math.max(side.rimRadius, side.baseRadius) + answers['panel.thickness']
  const below = top + answers['panel.height']
  const lean = answers['place.support'] !== 'wallHook' ? null : panelLean({
    weight: newtons(1), centreFromWall: metres(axis), projection: metres(answers['hook.projection']),
    drop: metres(below + answers['panel.rise'] + answers['pot.height'] - touches), edgeBelow: metres(below),
  })
  if (lean === null) return { edgeFromWall: axis, onWall: false }
  if (!lean.ok) return null
  return lean.fixing.leans ? { edgeFromWall: lean.edgeFromWall, onWall: true } : { edgeFromWall: axis, onWall: false }
}

/**
 * The way of a wall planter's strands; `top`: from the hook down to the stick, m. Findings where they cannot go so:
 * PANEL_NARROW, PANEL_LOW, PANEL_OFF_BASE, and those of panelSide().
 */
export function panelGeometry(answers: Answers, outline: CradledOutline, top: number): PanelGeometry | NoPanelSide {
  const side = panelSide(answers, outline)
  if (!side.ok) return side
  const hung = hanging(answers, side, top)
  if (hung === null) return { ok: false, finding: { code: 'PANEL_LOW' }, fails: true }
  const edgeHeight = metres(answers['pot.height'] + answers['panel.rise'])
  const at = (width: number): ReturnType<typeof panelPoints> => panelPoints({
    pot: side.side, behind: metres(answers['panel.thickness']), edgeHeight, edgeFromWall: metres(hung.edgeFromWall),
    halfWidth: metres(width / 2), back: behindPlaces(answers), knotHeight: side.knotHeight, knotTurn: radians(0),
  })
  const points = at(answers['panel.width'])
  if (!points.ok) return { ok: false, finding: refusal(points.reason, answers, (width) => at(width).ok), fails: true }
  const axis = points.axisFromWall
  const { front } = points
  const stickHeight = metres(edgeHeight + answers['panel.height'])
  const projection = hung.onWall ? answers['hook.projection'] : axis
  const first = answers['cradle.first']
  const leave = { r: Math.hypot(front.touch[0], front.touch[1] - axis), z: front.touch[2] }
  const baseEdge = { r: side.side.baseRadius, z: 0 }
  return {
    ok: true, side, points, onWall: hung.onWall, stickHeight, edgeHeight,
    stickFromAxis: projection - axis, edgeFromAxis: hung.edgeFromWall - axis,
    path: {
      ok: true, leave, touched: leave.z > 0 ? [leave, baseEdge] : [baseEdge], top: stickHeight,
      free: front.free, angle: front.angle,
      // Only the turn over the base edge: less friction lets more of the pull reach the knot.
      turn: radians(Math.PI / 2 - Math.max(0, slantOf(side.side))),
      knotToBaseEdge: metres(baseEdge.r), knotToLeave: metres(Math.max(first, baseEdge.r) + front.onPot),
    },
    strand: metres(answers['panel.height'] + front.free + front.onPot + Math.max(first, baseEdge.r)),
    ways: frontWays(answers, side.side, points),
    plan: panelPlan(answers, points, side.contacts, hung.onWall),
  }
}

/** Widths tried beyond the one told, m: every so far, so many. */
const WIDER = { step: 0.005, most: 200 }

function refusal(reason: Exclude<ReturnType<typeof panelPoints>, { ok: true }>['reason'], answers: Answers, reaches: (width: number) => boolean): Finding {
  if (reason === 'panelTooLow') return { code: 'PANEL_LOW' }
  if (reason === 'offBase' || reason === 'roundTip') return { code: 'PANEL_OFF_BASE' }
  const told = answers['panel.width']
  const wider = Array.from({ length: WIDER.most }, (_, i) => (Math.ceil(told / WIDER.step) + i) * WIDER.step).find(reaches)
  return wider === undefined ? { code: 'PANEL_OVER_RIM' } : { code: 'PANEL_NARROW', width: told, least: wider }
}
