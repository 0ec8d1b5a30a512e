import { metres, newtons, type Metres, type Newtons } from '../quantity/si'

/** A force at a place along a stick, m from its first end; a load counts downwards. */
export interface PointLoad {
  readonly at: Metres
  readonly force: Newtons
}

export interface BeamInput {
  readonly length: Metres
  /** Where the stick is held, in either order; it may overhang both. */
  readonly supports: readonly [Metres, Metres]
  readonly loads: readonly PointLoad[]
  /** Whether the supports also hold it down (screwed or bolted), or it only rests on them or hangs from them. */
  readonly heldDown: boolean
}

export interface Beam {
  readonly ok: true
  readonly length: Metres
  readonly supports: readonly [Metres, Metres]
  /** Upward force of each support, in the order given; negative where the stick is held down. */
  readonly reactions: readonly [Newtons, Newtons]
  /** Loads and reactions together, upwards, in order of their places. */
  readonly forces: readonly PointLoad[]
  /** Largest shear by size: the upward forces before that place, N, taken just before or just after it. */
  readonly shear: { readonly at: Metres; readonly force: Newtons }
  /** Largest bending, N m: sagging (never negative) stretches the under side, hogging (never positive) the upper. */
  readonly sagging: BendingPeak
  readonly hogging: BendingPeak
}

export interface BendingPeak {
  readonly at: Metres
  readonly moment: number
}

export type BeamOutcome =
  | Beam
  /** The stick would tip off: that support would have to pull down with `holdDown`. */
  | { readonly ok: false; readonly reason: 'lifts'; readonly support: 0 | 1; readonly holdDown: Newtons }
  /** Both supports in one place, or a support or load not on the stick. */
  | { readonly ok: false; readonly reason: 'supportsCoincide' }
  | { readonly ok: false; readonly reason: 'offStick'; readonly at: Metres }

/** A reaction below nothing by less than this share of all loads is rounding. */
const ROUNDING = 1e-12

/**
 * A straight stick on two supports under point loads: R_b = sum P (x - a) / (b - a), R_a = sum P - R_b;
 * M(x) = sum of upward F max(0, x - x_i) (statics of a simple beam). Between forces the shear is even and
 * the moment straight, so peaks stand at loads and supports only; both signs are looked at.
 * @example solveBeam({ length: metres(0.6), supports: [metres(0.1), metres(0.5)], loads: [{ at: metres(0), force: newtons(20) }, { at: metres(0.4), force: newtons(60) }], heldDown: false }).reactions // [40, 40]
 */
export function solveBeam({ length, supports, loads, heldDown }: BeamInput): BeamOutcome {
  const [a, b] = supports
  if (a === b) return { ok: false, reason: 'supportsCoincide' }
  const off = [...supports, ...loads.map((load) => load.at)].find((at) => !(at >= 0 && at <= length))
  if (off !== undefined) return { ok: false, reason: 'offStick', at: off }
  const reactions = [
    newtons(loads.reduce((sum, { at, force }) => sum + (force * (b - at)) / (b - a), 0)),
    newtons(loads.reduce((sum, { at, force }) => sum + (force * (at - a)) / (b - a), 0)),
  ] as const
  const rounding = ROUNDING * loads.reduce((sum, { force }) => sum + Math.abs(force), 0)
  const lifted = reactions[0] < -rounding ? 0 : 1
  if (!heldDown && reactions[lifted] < -rounding) return { ok: false, reason: 'lifts', support: lifted, holdDown: newtons(0 - reactions[lifted]) }
  const forces = [
    ...loads.map(({ at, force }) => ({ at, force: newtons(0 - force) })),
    { at: a, force: reactions[0] },
    { at: b, force: reactions[1] },
  ].sort((one, other) => one.at - other.at)
  return { ok: true, length, supports, reactions, forces, shear: largestShear(forces), ...bending(forces) }
}

/**
 * Bending moment at a place, N m, sagging positive.
 * @example momentAt([{ at: metres(0), force: newtons(30) }, { at: metres(0.2), force: newtons(-70) }], metres(0.3)) // 2
 */
export const momentAt = (forces: readonly PointLoad[], at: Metres): number => forces.reduce((sum, f) => sum + f.force * Math.max(0, at - f.at), 0)

function bending(forces: readonly PointLoad[]): Pick<Beam, 'sagging' | 'hogging'> {
  const peaks = forces.map(({ at }) => ({ at, moment: momentAt(forces, at) }))
  const none = { at: metres(0), moment: 0 }
  return {
    sagging: peaks.reduce((most, peak) => (peak.moment > most.moment ? peak : most), none),
    hogging: peaks.reduce((most, peak) => (peak.moment < most.moment ? peak : most), none),
  }
}

function largestShear(forces: readonly PointLoad[]): Beam['shear'] {
  let shear = 0
  let largest: Beam['shear'] = { at: metres(0), force: newtons(0) }
  forces.forEach(({ at, force }, i) => {
    shear += force
    // Forces in one place act as one: between them there is no stick to shear.
    if (forces[i + 1]?.at === at) return
    if (Math.abs(shear) > Math.abs(largest.force)) largest = { at, force: newtons(shear) }
  })
  return largest
}
