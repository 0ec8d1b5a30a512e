import { heaviestPot } from '../advice/heaviestPot'
import { shownOf } from '../advice/answer'
import { checkHanger, type CheckResult } from '../check/checkHanger'
import type { LinkCode } from '../check/linkResult'
import type { Verdict } from '../check/verdict'
import type { HangerDocument } from '../hanger/document'
import { resolveDocument } from '../hanger/resolve'
import type { CaseCode } from '../load/loadCases'
import { STATES, type State } from '../load/states'
import type { BatchProblem } from './problem'

/** What a check said of one hanger among many. */
export interface BatchFacts {
  readonly verdict: Verdict
  readonly hanger: Verdict
  readonly place: Verdict
  /** The part that decides, in which pot's tier from 1, and in which situation; null among none. */
  readonly governing: { readonly link: LinkCode; readonly tier: number; readonly case: CaseCode; readonly utilisation: number | null } | null
  /** All that is potted, high value of each state, kg. */
  readonly potted: Readonly<Record<State, number>>
  /** Heaviest watered pot, kg; null where none holds or it was not looked for. */
  readonly heaviest: number | null
}

/** One row of the answer: where it came from, and what was found or what is wrong. */
export interface BatchResult {
  /** Line of the table its row begins on, or place of the file among the files, from 1. */
  readonly line: number
  /** The hanger's file; null of a row. */
  readonly file: string | null
  readonly name: string
  /** Null where it could not be read. */
  readonly facts: BatchFacts | null
  readonly problems: readonly BatchProblem[]
}

/** Facts of a check. */
export function batchFacts({ solved, verdict, verdicts, governing }: CheckResult, heaviest: number | null): BatchFacts {
  return {
    verdict,
    hanger: verdicts.hanger,
    place: verdicts.place,
    governing: governing === null ? null : { link: governing.link, tier: governing.tier, case: governing.case, utilisation: governing.utilisation },
    potted: Object.fromEntries(STATES.map((state) => [state, solved.potted[state].mass.high])) as Record<State, number>,
    heaviest,
  }
}

/**
 * Checks one hanger of many: that which the window and `check` show of it, so that one without a pot is checked with the
 * heaviest it may carry. `heaviest`: whether the heaviest pot is looked for where it is not needed, which takes many checks.
 */
export function batchResult(line: number, file: string | null, document: HangerDocument, heaviest: boolean): BatchResult {
  const resolved = resolveDocument(document)
  const head = { line, file, name: document.name }
  if (!resolved.ok) return { ...head, facts: null, problems: resolved.problems }
  const { answers } = resolved.hanger
  if (answers['pot.have'] === 'no') {
    const outcome = shownOf(document)
    return outcome.ok ? { ...head, facts: batchFacts(outcome.shown.check, outcome.shown.heaviest), problems: [] } : { ...head, facts: null, problems: outcome.problems }
  }
  const most = heaviest && answers['make.have'] !== 'no' ? heaviestPot(document)?.watered ?? null : null
  return { ...head, facts: batchFacts(checkHanger(resolved.hanger), most), problems: [] }
}
