import type { Tried, Trial } from '../advice/edge'
import { harmed, worstOfLink } from '../advice/harmed'
import { checkHanger, governingOf, type CheckResult } from '../check/checkHanger'
import type { Finding } from '../check/finding'
import type { LinkCode, LinkResult } from '../check/linkResult'
import { isWorse, verdictFor, type Verdict } from '../check/verdict'
import type { HangerDocument } from '../hanger/document'
import type { AnswerProblem } from '../hanger/problem'
import { resolveDocument } from '../hanger/resolve'

/** How the links that a choice decides stand with one value. */
export interface Stand {
  /** The one that decides; null where there is none. */
  readonly link: LinkCode | null
  readonly verdict: Verdict
  readonly utilisation: number | null
  /** The whole, place and all. */
  readonly whole: Verdict
}

/** Why a value will not do. */
export type Stop =
  | {
    readonly kind: 'link'; readonly link: LinkCode; readonly verdict: Verdict; readonly utilisation: number | null; readonly findings: readonly Finding[]
    /** Its verdict now, where it is only to be no worse than that; null where it must hold. */
    readonly now: Verdict | null
    /** Whether its use alone gives the verdict; else what was found does. */
    readonly byUse: boolean
  }
  /** It would hold, but what a book asks of its measures is not met. */
  | { readonly kind: 'unfit'; readonly finding: Finding }
  /** Two answers that cannot both be true with it. */
  | { readonly kind: 'unreadable'; readonly problem: AnswerProblem }
  /** The pot would weigh more than the hanger may carry, kg. */
  | { readonly kind: 'tooHeavy'; readonly watered: number; readonly heaviest: number }

/** One value tried: its document, and how it stands or why it will not do. */
export interface Judged extends Tried {
  readonly document: HangerDocument
  readonly stand: Stand | null
  readonly stop: Stop | null
}

const stopOf = ({ link, verdict, utilisation, grade, findings }: LinkResult, now: Verdict | null): Stop => {
  const byUse = utilisation !== null && grade !== null && !isWorse(verdict, verdictFor(utilisation, grade))
  return { kind: 'link', link, verdict, utilisation, findings, now, byUse }
}

/** What of a check will not do: the worst of the links that must hold, else the worst that ends up worse than now. */
function stopIn(check: CheckResult, now: CheckResult | null, decides: (link: LinkResult) => boolean): Stop | null {
  const decided = check.links.filter(decides)
  const worst = governingOf(decided.filter((l) => isWorse(l.verdict, 'just holds')))
  if (worst !== null) return stopOf(worst, null)
  const hurt = now === null ? null : harmed(now, check, decided.map((l) => l.link))
  return hurt === null || now === null ? null : stopOf(hurt, worstOfLink(now, hurt.link)?.verdict ?? null)
}

/**
 * Judges a document by the whole check: the links that the choice decides must hold or just hold, and, where `now` is given,
 * no other may end up with a worse verdict than it has there.
 */
export function judge(document: HangerDocument, now: CheckResult | null, decides: (link: LinkResult) => boolean): Judged {
  const resolved = resolveDocument(document)
  if (!resolved.ok) {
    const [problem] = resolved.problems
    return { holds: false, document, stand: null, stop: problem === undefined ? null : { kind: 'unreadable', problem } }
  }
  const check = checkHanger(resolved.hanger)
  const stop = stopIn(check, now, decides)
  const governing = governingOf(check.links.filter(decides)) ?? check.governing
  const stand: Stand = { link: governing?.link ?? null, verdict: governing?.verdict ?? check.verdict, utilisation: governing?.utilisation ?? null, whole: check.verdict }
  return { holds: stop === null, document, stand, stop }
}

const use = ({ outcome: { stop } }: Trial<Judged>): number => (stop?.kind === 'link' && stop.utilisation !== null ? stop.utilisation : Infinity)
const verdictOf = ({ outcome: { stop } }: Trial<Judged>): Verdict => (stop?.kind === 'link' ? stop.verdict : 'fails')

/** Of values none of which holds, the one that comes nearest to it; null of none. */
export const nearest = (trials: readonly Trial<Judged>[]): Trial<Judged> | null =>
  trials.reduce<Trial<Judged> | null>((best, trial) => {
    if (best === null) return trial
    if (verdictOf(trial) !== verdictOf(best)) return isWorse(verdictOf(best), verdictOf(trial)) ? trial : best
    return use(trial) < use(best) ? trial : best
  }, null)
