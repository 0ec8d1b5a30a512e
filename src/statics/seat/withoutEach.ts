import { newtons, radians, type Newtons, type Radians } from '../../quantity/si'
import { slingRests } from '../sling/slingRests'
import type { NotConvergedReason, SlingErrorCode, SlingInput } from '../sling/result'
import { lasts } from './slidingSeat'

/** What is left when one leg, or one strand of a leg, has parted. */
export interface Without {
  /** Which leg, from 0. */
  readonly leg: number
  /** `tips`: it hangs, but tilted too far. `falls`: fewer than three legs (or two and a wall) hold it, or nothing lasts. `unknown`: no answer was found. */
  readonly outcome: 'stays' | 'tips' | 'falls' | 'unknown'
  readonly why: 'LOST_SUPPORT' | 'UNSTABLE' | NotConvergedReason | SlingErrorCode | null
  /** The greatest tilt of any rest found, and the greatest tension of any leg in any; null where there is none. */
  readonly tilt: Radians | null
  readonly worst: Newtons | null
  /** Greatest tension of every leg over the rests found, N, 0 of a leg that is gone. */
  readonly tensions: readonly Newtons[] | null
}

/** Takes away each leg in turn; all rests that are found count, the worst of each figure is told. */
export const withoutEachLeg = (input: SlingInput, tipsAbove: Radians): readonly Without[] =>
  input.A.map((_, leg) => withoutLeg(input, leg, tipsAbove))

/** Parts one strand of each leg in turn, of which it has so many: the leg is left as many times less stiff. */
export const withoutEachStrand = (input: SlingInput, strands: readonly number[], tipsAbove: Radians): readonly Without[] =>
  input.A.map((_, leg) => {
    const count = strands[leg] ?? 1
    if (!(count > 1)) return withoutLeg(input, leg, tipsAbove)
    return judged(leg, { ...input, EA: input.EA.map((EA, i) => (i === leg ? (EA * (count - 1)) / count : EA)) }, tipsAbove, null)
  })

/** Takes away one leg, counted from 0. */
export function withoutLeg(input: SlingInput, gone: number, tipsAbove: Radians): Without {
  const left = <T>(list: readonly T[]): T[] => list.filter((_, i) => i !== gone)
  return judged(gone, { ...input, A: left(input.A), B: left(input.B), L0: left(input.L0), EA: left(input.EA) }, tipsAbove, gone)
}

function judged(leg: number, input: SlingInput, tipsAbove: Radians, gone: number | null): Without {
  const { first, rests } = slingRests(input)
  const nothing = { leg, tilt: null, worst: null, tensions: null }
  if (rests.length === 0) {
    if (first.status === 'NOT_CONVERGED') return { ...nothing, outcome: 'unknown', why: first.reason }
    if (first.status === 'ERROR') return { ...nothing, outcome: TOO_LITTLE.has(first.error) ? 'falls' : 'unknown', why: first.error }
    return { ...nothing, outcome: 'falls', why: first.status === 'UNSTABLE' ? 'UNSTABLE' : 'LOST_SUPPORT' }
  }
  const each = input.A.map((_, i) => newtons(Math.max(...rests.map(({ T }) => T[i] ?? 0))))
  const tilt = radians(Math.max(...rests.map(({ tiltRadians }) => tiltRadians)))
  const held = rests.every((rest) => lasts(input, rest, Math.PI))
  return {
    leg, tilt, worst: newtons(Math.max(...each)),
    tensions: gone === null ? each : [...each.slice(0, gone), newtons(0), ...each.slice(gone)],
    outcome: !held ? 'falls' : tilt > tipsAbove ? 'tips' : 'stays',
    why: held ? null : 'LOST_SUPPORT',
  }
}

/** What is left is no hanger any more. */
const TOO_LITTLE: ReadonlySet<SlingErrorCode> = new Set(['TOO_FEW_LEGS', 'ATTACHMENTS_COINCIDE', 'ATTACHMENTS_COLLINEAR', 'UNREACHABLE'])
