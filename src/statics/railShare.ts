import { newtons, type Metres, type Newtons } from '../quantity/si'
import { momentAt, solveBeam, type Beam, type BendingPeak, type BeamOutcome, type PointLoad } from './beam'

export interface RailInput {
  readonly length: Metres
  readonly supports: readonly [Metres, Metres]
  /** One for each hanger on the rail, downwards. */
  readonly loads: readonly PointLoad[]
}

/** What a support bears with every hanger in place, and the most and least of it while some are taken down; negative: it would lift. */
export interface SupportShare {
  readonly together: Newtons
  readonly most: Newtons
  readonly least: Newtons
}

export interface RailShare {
  readonly ok: true
  /** In the order of the supports given. */
  readonly shares: readonly [SupportShare, SupportShare]
  /** Most bending either way, whichever hangers are in place, N m: sagging positive, hogging negative. */
  readonly sagging: BendingPeak
  readonly hogging: BendingPeak
}

export type RailOutcome = RailShare | Extract<BeamOutcome, { readonly reason: 'supportsCoincide' | 'offStick' }>

/**
 * Several hangers on one rail or stick on two supports: each hanger's part is that of a simple beam, and
 * parts of one sign alone are the worst that taking some down can bring (influence lines).
 * @example railShare({ length: metres(1), supports: [metres(0.2), metres(0.8)], loads: [{ at: metres(0), force: newtons(30) }, { at: metres(0.5), force: newtons(50) }] }).shares[1] // { together: 15, most: 25, least: -10 }
 */
export function railShare({ length, supports, loads }: RailInput): RailOutcome {
  const parts: Beam[] = []
  // An empty rail is solved too, so that its faults are told.
  for (const part of [[], ...loads.map((load) => [load])]) {
    const beam = solveBeam({ length, supports, loads: part, heldDown: true })
    if (beam.ok) parts.push(beam)
    else if (beam.reason !== 'lifts') return beam
  }
  const places = [...supports, ...loads.map((load) => load.at)]
  const bent = places.map((at) => ({ at, moments: parts.map((part) => momentAt(part.forces, at)) }))
  const sagging = bent.map(({ at, moments }) => ({ at, moment: sumOf(moments, 1) }))
  const hogging = bent.map(({ at, moments }) => ({ at, moment: sumOf(moments, -1) }))
  const share = (support: 0 | 1): SupportShare => {
    const reactions = parts.map((part) => part.reactions[support])
    return { together: newtons(reactions.reduce((sum, r) => sum + r, 0)), most: newtons(sumOf(reactions, 1)), least: newtons(sumOf(reactions, -1)) }
  }
  return {
    ok: true,
    shares: [share(0), share(1)],
    sagging: sagging.reduce((most, peak) => (peak.moment > most.moment ? peak : most)),
    hogging: hogging.reduce((most, peak) => (peak.moment < most.moment ? peak : most)),
  }
}

/** Sum of the numbers of one sign. */
const sumOf = (numbers: readonly number[], sign: 1 | -1): number => numbers.reduce((sum, x) => sum + (x * sign > 0 ? x : 0), 0)

/**
 * Load of one of several fixings behind a stiff part, N, of which only `carrying` may bear at first, since
 * no two are set alike: load over the lesser of both numbers.
 * @example sharedLoad(newtons(90), 4, 2) // 45
 */
export const sharedLoad = (load: Newtons, fixings: number, carrying: number): Newtons => newtons(load / Math.min(fixings, carrying))
