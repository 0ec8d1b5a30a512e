import { hasStick } from '../hanger/arrangement'
import type { CaseCode } from '../load/loadCases'
import { metres, newtons } from '../quantity/si'
import { solveBeam, type Beam } from '../statics/beam'
import { largestSag } from '../statics/deflection'
import { vCord } from '../statics/vCord'
import type { Finding } from './finding'
import { rowOf } from './row'
import type { Solved } from './solved'
import { stickLoads, type StickLoading } from './stickLoads'

/** What each newton of the hanger's weight does to the stick, with what hangs beside it, the worst of all ways it may hang. */
export interface StickBeam {
  readonly ok: true
  /** All that hangs on the stick over the hanger's weight: 1 where it hangs alone. */
  readonly carried: number
  /** Largest bending moment, m (N m for each N). */
  readonly moment: number
  /** Largest shear, of the weight. */
  readonly shear: number
  /** Largest part that one support bears: of all, and of this hanger's own. */
  readonly support: number
  readonly ownSupport: number
  /** How far the middle of the loads may lie from the middle of the stick, m. */
  readonly offset: number
  /** Thrust along the stick, of the weight; 0 on two hooks. */
  readonly thrust: number
  /** Height of the hook above the stick, m; 0 on two hooks. */
  readonly height: number
  /** Every way in which it may be loaded, solved for one newton of the weight. */
  readonly beams: readonly Beam[]
  /** The loading that bends it most, with its beam. */
  readonly worst: { readonly loading: StickLoading; readonly beam: Beam }
}

/** The stick cannot hang so; `fails` where the measures that say it were all given. */
export interface NoStickBeam {
  readonly ok: false
  readonly finding: Finding
  readonly fails: boolean
}

/**
 * The stick under all that hangs on it, held where the cord is tied or on two hooks. The top cord thrusts along it by
 * (s + 2 e) / (4 h) of the load. No answer where the cord is too short (TOP_CORD_TOO_SHORT), or where what hangs
 * reaches so far out that it tips (STICK_TIPS, ROW_TIPS where that is once one of a row is taken down), or beyond its ends (ROW_BEYOND_STICK).
 */
export function stickBeam(solved: Solved, code: CaseCode): StickBeam | NoStickBeam {
  const known = found.get(solved) ?? new Map<CaseCode, StickBeam | NoStickBeam>()
  found.set(solved, known)
  const beam = known.get(code) ?? reckoned(solved, code)
  known.set(code, beam)
  return beam
}

/** Hooks, connectors and fixings all ask for the same stick: it is reckoned once for each solved hanger. */
const found = new WeakMap<Solved, Map<CaseCode, StickBeam | NoStickBeam>>()

function reckoned(solved: Solved, code: CaseCode): StickBeam | NoStickBeam {
  const { answers, given } = solved.hanger
  const [length, span] = [answers['stick.length'], answers['stick.span']]
  const onCord = answers['stick.held'] === 'topCord'
  const cord = vCord({ cord: answers['stick.topCord'], span, weight: newtons(1) })
  if (onCord && !cord.ok) return { ok: false, finding: { code: 'TOP_CORD_TOO_SHORT', cord: answers['stick.topCord'], least: cord.least }, fails: given.has('stick.topCord') && given.has('stick.span') }
  const supports = [metres((length - span) / 2), metres((length + span) / 2)] as const
  const loadings = stickLoads(solved, code)
  const row = rowOf(solved, code)
  const wide = row === null ? 0 : 2 * Math.max(...row.places)
  if (wide > length) return { ok: false, finding: { code: 'ROW_BEYOND_STICK', least: wide }, fails: given.has('stick.length') && given.has('row.spacing') }
  const beams: Beam[] = []
  for (const { loads } of loadings) {
    const onStick = loads.map(({ at, share }) => ({ at: metres(Math.min(length, Math.max(0, length / 2 + at))), force: newtons(share) }))
    const beam = solveBeam({ length, supports, loads: onStick, heldDown: false })
    if (!beam.ok) return { ok: false, finding: { code: code === 'neighbourDown' ? 'ROW_TIPS' : 'STICK_TIPS' }, fails: given.has('stick.span') && (given.has('stick.bunch') || given.has('row.spacing') || given.has('panel.width')) }
    beams.push(beam)
  }
  const worst = (of: (beam: Beam) => number): number => Math.max(...beams.map(of))
  const bent = (beam: Beam): number => Math.max(beam.sagging.moment, 0 - beam.hogging.moment)
  const total = ({ loads }: StickLoading): number => loads.reduce((sum, { share }) => sum + share, 0)
  const offset = Math.max(...loadings.map((loading) => Math.abs(loading.loads.reduce((sum, { at, share }) => sum + share * at, 0)) / total(loading)))
  const carried = Math.max(...loadings.map(total))
  const height = onCord && cord.ok ? cord.height : 0
  const most = beams.reduce((best, beam, i) => (bent(beam) > bent(beams[best] ?? beam) ? i : best), 0)
  return {
    ok: true, offset, height, carried, beams,
    moment: worst(bent),
    shear: worst((beam) => Math.abs(beam.shear.force)),
    support: worst((beam) => Math.max(...beam.reactions)),
    ownSupport: Math.max(...loadings.map((loading) => largerPart(loading, span))),
    thrust: height > 0 ? (carried * (span + 2 * offset)) / (4 * height) : 0,
    worst: { loading: loadings[most] as StickLoading, beam: beams[most] as Beam },
  }
}

/** Largest sag of a stick times E I, for each newton of the weight, m3. */
export const stickSag = ({ beams }: StickBeam): number => Math.max(...beams.map((beam) => Math.abs(largestSag(beam, 1).sag)))

/** The larger part of this hanger's own weight on one of two supports, by lever. */
function largerPart({ own, loads }: StickLoading, span: number): number {
  const mine = loads.slice(0, own)
  const sum = mine.reduce((total, { share }) => total + share, 0)
  const lever = mine.reduce((total, { at, share }) => total + share * at, 0)
  return sum / 2 + Math.abs(lever) / span
}

/** What of the hanger's weight one hook bears. */
export interface HookShare {
  /** All that hangs on it over the weight: 1 of one hanger on one hook, the larger part of a stick on two; with all of a row. */
  readonly all: number
  /** The hanger's own part, which a jolt or a side pull meets. */
  readonly own: number
}

/** The share of one hook in a case; all of the weight where there is no stick, or where it cannot hang so. */
export function hookShare(solved: Solved, code: CaseCode): HookShare {
  const { answers } = solved.hanger
  if (!hasStick(answers)) return { all: rowOf(solved, code)?.carried ?? 1, own: 1 }
  const beam = stickBeam(solved, code)
  if (!beam.ok) return { all: 1, own: 1 }
  return answers['stick.held'] === 'topCord' ? { all: beam.carried, own: 1 } : { all: beam.support, own: Math.min(1, beam.ownSupport) }
}
