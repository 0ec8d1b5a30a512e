import { COUNTED_LEGS } from '../catalogue/legs'
import { hasStick } from '../hanger/arrangement'
import type { Answers } from '../hanger/fields'
import type { Hanger } from '../hanger/hanger'
import { metres, newtons } from '../quantity/si'
import { solveBeam, type Beam } from '../statics/beam'
import { largestSag } from '../statics/deflection'
import { vCord } from '../statics/vCord'
import type { Finding } from './finding'

/** What each newton of the weight does to the stick, the worst of all ways the legs may share it. */
export interface StickBeam {
  readonly ok: true
  /** Largest bending moment, m (N m for each N). */
  readonly moment: number
  /** Largest shear, of the weight. */
  readonly shear: number
  /** Largest part that one support bears. */
  readonly support: number
  /** How far the middle of the loads may lie from the middle of the stick, m. */
  readonly offset: number
  /** Thrust along the stick, of the weight; 0 on two hooks. */
  readonly thrust: number
  /** Height of the hook above the stick, m; 0 on two hooks. */
  readonly height: number
  /** Largest sag times E I, for each newton, m3. */
  readonly sag: number
}

/** The stick cannot hang so; `fails` where the measures that say it were all given. */
export interface NoStickBeam {
  readonly ok: false
  readonly finding: Finding
  readonly fails: boolean
}

/** Where the legs hang, m from the stick's end: evenly over the row in its middle. */
function hangingPlaces(answers: Answers): readonly number[] {
  const legs = answers['make.legs']
  const [length, bunch] = [answers['stick.length'], answers['stick.bunch']]
  return Array.from({ length: legs }, (_, i) => length / 2 + bunch * (i / (legs - 1) - 0.5))
}

/**
 * The stick under its legs: each takes W / m, and every one in turn as much as a counted leg, W / min(m, 3), the
 * others the rest alike; held where the cord is tied or on two hooks. The top cord thrusts along it by
 * (s + 2 e) / (4 h) of the weight. No answer where the cord is too short (TOP_CORD_TOO_SHORT), or where the legs
 * reach so far out that it tips (STICK_TIPS).
 */
export function stickBeam({ answers, given }: Hanger): StickBeam | NoStickBeam {
  const [length, span] = [answers['stick.length'], answers['stick.span']]
  const onCord = answers['stick.held'] === 'topCord'
  const cord = vCord({ cord: answers['stick.topCord'], span, weight: newtons(1) })
  if (onCord && !cord.ok) return { ok: false, finding: { code: 'TOP_CORD_TOO_SHORT', cord: answers['stick.topCord'], least: cord.least }, fails: given.has('stick.topCord') && given.has('stick.span') }
  const places = hangingPlaces(answers)
  const most = 1 / Math.min(places.length, COUNTED_LEGS.value)
  const beams: Beam[] = []
  const offsets: number[] = []
  for (const heavy of places.keys()) {
    const loads = places.map((at, i) => ({ at: metres(Math.min(length, Math.max(0, at))), force: newtons(i === heavy ? most : (1 - most) / (places.length - 1)) }))
    const beam = solveBeam({ length, supports: [metres((length - span) / 2), metres((length + span) / 2)], loads, heldDown: false })
    if (!beam.ok) return { ok: false, finding: { code: 'STICK_TIPS' }, fails: given.has('stick.span') && given.has('stick.bunch') }
    beams.push(beam)
    offsets.push(Math.abs(loads.reduce((sum, { at, force }) => sum + force * (at - length / 2), 0)))
  }
  const worst = (of: (beam: Beam) => number): number => Math.max(...beams.map(of))
  const offset = Math.max(...offsets)
  const height = onCord && cord.ok ? cord.height : 0
  return {
    ok: true, offset, height,
    moment: worst((beam) => Math.max(beam.sagging.moment, -beam.hogging.moment)),
    shear: worst((beam) => Math.abs(beam.shear.force)),
    support: worst((beam) => Math.max(...beam.reactions)),
    thrust: height > 0 ? (span + 2 * offset) / (4 * height) : 0,
    sag: worst((beam) => Math.abs(largestSag(beam, 1).sag)),
  }
}

/**
 * What one hook bears of the weight: all of it, or of a stick on two hooks the larger part.
 * All of it too where the stick cannot hang so.
 */
export function hookShare(hanger: Hanger): number {
  if (!hasStick(hanger.answers) || hanger.answers['stick.held'] !== 'twoHooks') return 1
  const beam = stickBeam(hanger)
  return beam.ok ? beam.support : 1
}
