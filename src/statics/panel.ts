import { metres, newtons, STANDARD_GRAVITY, type Metres, type Newtons, type Radians } from '../quantity/si'
import { mirrored, panelStrand, type NoPanelStrand, type PanelStrand } from './panelStrand'
import type { SlingInput, SlingRest, SlingResult, Vec3, Wall } from './sling/result'
import { solveSling } from './sling/solveSling'
import type { RoundSide } from './unrolled'

/** A wall planter: strands of a knotted panel behind a pot and round its front. Axes as in panelStrand.ts; lengths m. */
export interface PanelShape {
  readonly pot: RoundSide
  /** Cord and knots between the pot's back and the wall. */
  readonly behind: Metres
  /** The panel's lower edge: height above the pot's base, distance from the wall, half its width. */
  readonly edgeHeight: Metres
  readonly edgeFromWall: Metres
  readonly halfWidth: Metres
  /** Places across of the strands behind the pot, left negative. */
  readonly back: readonly Metres[]
  /** The first knot in front, on the right; the left is its mirror. */
  readonly knotHeight: Metres
  readonly knotTurn: Radians
}

export interface PanelInput extends PanelShape {
  readonly weight: Newtons
  readonly centreHeight: Metres
  /** Stiffness EA of all strands behind one place, and of those of one front corner, N. */
  readonly backStiffness: Newtons
  readonly frontStiffness: Newtons
  /** By how much the front strands are longer than drawn; negative: shorter. */
  readonly frontLonger: Metres
}

/** What a strand does at the panel's edge: place across, pull down, out from the wall, and to the right, N. */
export interface EdgeLoad {
  readonly across: Metres
  readonly down: Newtons
  readonly out: Newtons
  readonly aside: Newtons
}

export interface Panel {
  readonly ok: true
  readonly sling: SlingInput
  readonly rest: SlingRest
  /** Right front, left front, then those behind in the order given: tension, and what each does to the panel. */
  readonly tensions: readonly Newtons[]
  readonly edge: readonly EdgeLoad[]
  /** Share of the weight that the front strands bear; those behind bear the rest. */
  readonly frontShare: number
  /** Push of the wall at rim and at base, N. */
  readonly wallAtRim: Newtons
  readonly wallAtBase: Newtons
  readonly front: PanelStrand
}

/** A strand behind the pot hangs beside it. */
export interface BesidePot {
  readonly ok: false
  readonly reason: 'besidePot'
  readonly across: Metres
}

export type PanelOutcome =
  | Panel
  | NoPanelStrand
  | BesidePot
  /** The sling has no lasting rest, or its strands cannot be a hanger. */
  | { readonly ok: false; readonly reason: 'noRest'; readonly result: SlingResult }

/** Where a panel's strands hang and come to the pot. */
export interface PanelPoints {
  readonly ok: true
  readonly front: PanelStrand
  /** From the wall to the pot's axis, and the pot's greatest radius. */
  readonly axisFromWall: Metres
  readonly widest: Metres
  /** Right front, left front, then those behind: upper ends in the wall's axes, lower ends in the pot's frame. */
  readonly upper: readonly Vec3[]
  readonly lower: readonly Vec3[]
}

/**
 * Strands cut where they come to the pot: those behind come down to the back of the wider of rim and base, those in
 * front as panelStrand() finds them.
 */
export function panelPoints({ pot, behind, edgeHeight, edgeFromWall, halfWidth, back, knotHeight, knotTurn }: PanelShape): PanelPoints | NoPanelStrand | BesidePot {
  const widest = metres(Math.max(pot.rimRadius, pot.baseRadius))
  const axisFromWall = metres(widest + behind)
  const front = panelStrand({ pot, axisFromWall, across: halfWidth, fromWall: edgeFromWall, height: edgeHeight, knotHeight, knotTurn })
  if (!front.ok) return front
  const beside = back.find((across) => Math.abs(across) > widest)
  if (beside !== undefined) return { ok: false, reason: 'besidePot', across: beside }
  const backHeight = pot.rimRadius >= pot.baseRadius ? pot.height : 0
  const fronts = [front, mirrored(front)]
  return {
    ok: true, front, axisFromWall, widest,
    upper: [...fronts.map((strand) => strand.from), ...back.map((across): Vec3 => [across, edgeFromWall, edgeHeight])],
    lower: [...fronts.map(({ touch: [x, y, z] }): Vec3 => [x, y - axisFromWall, z]), ...back.map((across): Vec3 => [across, 0 - Math.sqrt(widest * widest - across * across), backHeight])],
  }
}

/** What of the pot may touch the wall: its rim and its base edge. */
const panelContacts = ({ height, rimRadius, baseRadius }: RoundSide): Wall['contacts'] => [{ type: 'circle', z: height, r: rimRadius }, { type: 'circle', z: 0, r: baseRadius }]

/**
 * Pot, net and gathering knot as one stiff body on strands cut where they come to the pot, leaning without friction
 * on the wall. Balance and stiffness decide which bears what (solveSling). The edge of the panel is held.
 */
export function panel(input: PanelInput): PanelOutcome {
  const { pot, weight, centreHeight, behind, frontLonger } = input
  const points = panelPoints(input)
  if (!points.ok) return points
  const { front, widest, axisFromWall, upper: A, lower } = points
  const isFront = (i: number): boolean => i < 2
  const sling: SlingInput = {
    A,
    B: lower,
    L0: A.map((a, i) => distance(a, shifted(lower[i] ?? a, axisFromWall)) + (isFront(i) ? frontLonger : 0)),
    EA: A.map((_, i) => (isFront(i) ? input.frontStiffness : input.backStiffness)),
    mass: weight / STANDARD_GRAVITY,
    cg: [0, 0, centreHeight],
    ell: widest,
    gravity: STANDARD_GRAVITY,
    wall: { n: [0, -1, 0], d: 0 - behind, contacts: panelContacts(pot) },
  }
  const result = solveSling(sling)
  // Two strands and the wall are enough for a lasting rest, so LOST_SUPPORT alone is no fault here.
  if (!('wallN' in result) || !result.stable) return { ok: false, reason: 'noRest', result }
  const edge = A.map((a, i) => edgeLoad(a, lowerEnd(sling, result, i), result.T[i] ?? 0))
  const [wallAtRim = newtons(0), wallAtBase = newtons(0)] = result.wallN
  const frontShare = edge.reduce((sum, { down }, i) => sum + (isFront(i) ? down : 0), 0) / weight
  return { ok: true, sling, rest: result, tensions: result.T, edge, frontShare, wallAtRim, wallAtBase, front }
}

const shifted = ([x, y, z]: Vec3, by: number): Vec3 => [x, y + by, z]

const distance = (a: Vec3, b: Vec3): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2])

/** Lower end of a strand at the rest, in the wall's axes. */
function lowerEnd({ B, cg }: SlingInput, rest: SlingRest, i: number): Vec3 {
  const b = B[i] ?? cg
  const arm = [b[0] - cg[0], b[1] - cg[1], b[2] - cg[2]] as const
  const along = (axis: 0 | 1 | 2): number => rest.cg[axis] + rest.R[axis][0] * arm[0] + rest.R[axis][1] * arm[1] + rest.R[axis][2] * arm[2]
  return [along(0), along(1), along(2)]
}

function edgeLoad(from: Vec3, to: Vec3, tension: number): EdgeLoad {
  const each = tension / distance(from, to)
  return { across: metres(from[0]), down: newtons(each * (from[2] - to[2])), out: newtons(each * (to[1] - from[1])), aside: newtons(each * (to[0] - from[0])) }
}
