import { newtons, type Metres, type Newtons, type Radians } from '../quantity/si'

/** Place of a screw: sideways from any upright line, and above the lower edge on which the bracket turns (never below it), m. */
export interface ScrewPlace {
  readonly across: Metres
  readonly up: Metres
}

export interface BracketInput {
  readonly load: Newtons
  /** From the wall to the load along the arm, m. */
  readonly reach: Metres
  /** How far the arm is swung from straight out, up to a right angle; to the side of growing `across` positive. */
  readonly swing: Radians
  readonly screws: readonly ScrewPlace[]
}

export interface Bracket {
  readonly ok: true
  /** In the order of the screws: pull out of the wall, and force along the wall, never negative. */
  readonly pulls: readonly Newtons[]
  readonly shears: readonly Newtons[]
  /** Push of the lower edge on the wall: the sum of the pulls. */
  readonly edge: Newtons
  /** Moment that turns the plate in the plane of the wall, N m, of the sign of the swing. */
  readonly sideMoment: number
}

export type BracketOutcome =
  | Bracket
  /** No screw stands above the edge on which it turns, or there is none. */
  | { readonly ok: false; readonly reason: 'noLever' }
  /** A swung arm turns a plate held at one place. */
  | { readonly ok: false; readonly reason: 'turns' }

/** A moment below this share of load times reach is rounding. */
const ROUNDING = 1e-12

/**
 * A stiff bracket that turns on its lower edge: T_i = M y_i / sum y^2, M = W a cos(swing); shear W / n down,
 * and from the side moment W a sin(swing) a force M r_i / sum r^2 square to the line from the middle of the
 * screws (elastic sharing of a screw group: Shigley, Mechanical Engineering Design, bolted joints loaded in
 * shear with eccentric load).
 * @example bracketScrews({ load: newtons(120), reach: metres(0.25), swing: radians(0), screws: [{ across: metres(0), up: metres(0.15) }, { across: metres(0), up: metres(0.05) }] }).pulls // [180, 60]
 */
export function bracketScrews({ load, reach, swing, screws }: BracketInput): BracketOutcome {
  const squares = screws.reduce((sum, { up }) => sum + up * up, 0)
  if (squares === 0) return { ok: false, reason: 'noLever' }
  const tilting = load * reach * Math.cos(swing)
  const sideMoment = load * reach * Math.sin(swing)
  const n = screws.length
  const middle = { across: screws.reduce((sum, s) => sum + s.across, 0) / n, up: screws.reduce((sum, s) => sum + s.up, 0) / n }
  const spread = screws.reduce((sum, s) => sum + (s.across - middle.across) ** 2 + (s.up - middle.up) ** 2, 0)
  const swung = Math.abs(sideMoment) > ROUNDING * load * reach
  if (swung && spread === 0) return { ok: false, reason: 'turns' }
  const perLever = swung ? sideMoment / spread : 0
  const pulls = screws.map(({ up }) => newtons((tilting * up) / squares))
  return {
    ok: true,
    pulls,
    shears: screws.map((s) => newtons(Math.hypot(perLever * (s.up - middle.up), load / n + perLever * (s.across - middle.across)))),
    edge: newtons(pulls.reduce((sum, pull) => sum + pull, 0)),
    sideMoment,
  }
}
