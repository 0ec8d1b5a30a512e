import type { Answers } from '../../hanger/fields'
import { pottedMass } from '../../load/pottedMass'
import { STATES, type MassRange, type State } from '../../load/states'
import { metres, newtons, STANDARD_GRAVITY, type Radians } from '../../quantity/si'
import { drawnKnot } from '../../statics/tiers'
import { hangerGeometry, type HangerGeometry } from '../geometry'
import type { Below } from './below'
import { patched } from './patched'

/** The gathering knot of a pot with another hung from it. */
export interface DrawnDown {
  /** How far it hangs below the base, m. */
  readonly drawn: number
  /** Angle of the strands from the vertical between base edge and knot. */
  readonly angleBelow: Radians
}

export interface TierGeometry {
  readonly geometry: HangerGeometry
  /** Null where nothing hangs from the knot, or the strands do not reach round the pot. */
  readonly knot: DrawnDown | null
}

/**
 * The geometry of a pot whose gathering knot is drawn down: in the state in which what hangs below is the
 * largest part of all, when strands stand steepest below the pot and flattest above it; friction left out
 * (statics/tiers.ts). Lengths are as tied; the way round the pot is the drawn one.
 */
export function drawnGeometry(answers: Answers, hanger: Readonly<Record<State, MassRange>>, below: Below): TierGeometry {
  const flat = hangerGeometry(answers)
  const { path, strand } = flat
  if (below.answers.length === 0 || answers['tiers.how'] === 'ownCords' || !path.ok) return { geometry: flat, knot: null }
  const potted = pottedMass(answers)
  const drawn = STATES.flatMap((state) => {
    const own = (potted[state].mass.high + hanger[state].high) * STANDARD_GRAVITY
    const lower = (below.potted[state].high + below.hanger[state].high) * STANDARD_GRAVITY
    const knot = drawnKnot({ strands: answers['make.legs'], own: newtons(own), lower: newtons(lower), leaveRadius: metres(path.leave.r), baseRadius: path.knotToBaseEdge, side: metres(path.knotToLeave - path.knotToBaseEdge), strand, friction: 0 })
    return knot.ok ? [knot] : []
  }).reduce<DrawnDown | null>((most, knot) => (most === null || knot.drawn > most.drawn ? knot : most), null)
  if (drawn === null) return { geometry: flat, knot: null }
  // Under the base each strand is longer by what it slants.
  const slant = path.knotToBaseEdge / Math.sin(drawn.angleBelow) - path.knotToBaseEdge
  const from = answers['make.legLength'] === null ? 'make.totalLength' : 'make.legLength'
  const steep = hangerGeometry(patched(answers, { [from]: (answers[from] ?? 0) - slant }))
  return steep.path.ok ? { geometry: { ...steep, strand, firstKnots: flat.firstKnots, onSide: flat.onSide }, knot: { drawn: drawn.drawn, angleBelow: drawn.angleBelow } } : { geometry: steep, knot: null }
}
