import type { Edge, EdgeSearch, Trial } from '../advice/edge'
import type { HangerDocument } from '../hanger/document'
import type { FieldPath } from '../hanger/fields'
import { changeBetween } from './change'
import type { Choice, ChoiceOf, ChoiceUnit, Limit, NoChoiceReason } from './choice'
import { nearest, type Judged, type Stop } from './judge'
import type { ChoiceCode } from './question'

/** What is known of a question before anything is tried. */
export interface Asked {
  readonly choice: ChoiceCode
  readonly of: ChoiceOf | null
  readonly unit: ChoiceUnit
  readonly field: FieldPath | null
  readonly now: number | null
  readonly isForNext: boolean
  /** The hanger as it is: what a choice changes is told against it. */
  readonly document: HangerDocument
  readonly close: number
  readonly isUntested: boolean
}

const limitOf = (trial: Trial<Judged> | null): Limit | null =>
  (trial === null || trial.outcome.stop === null ? null : { value: trial.value, stop: trial.outcome.stop })

const common = ({ choice, of, unit, field, now, isForNext }: Asked): Pick<Choice, 'choice' | 'of' | 'unit' | 'field' | 'now' | 'isForNext'> => ({ choice, of, unit, field, now, isForNext })

export const noChoice = (asked: Asked, reason: NoChoiceReason, checks: number): Choice => ({ found: false, ...common(asked), reason, checks })

/** Why none of the values tried will do: by the one that came nearest. */
export const whyNone = (value: number | null, stop: Stop): NoChoiceReason =>
  (stop.kind === 'link' && stop.verdict === 'not enough known'
    ? { code: 'notEnoughKnown', limit: { value, stop }, link: stop.link, findings: stop.findings }
    : { code: 'noneHolds', limit: { value, stop } })

/** An edge seen from its other end: what was safest is farthest. */
export const reversed = <T extends Judged>({ last, beyond, first, before, again }: Edge<T>): Edge<T> =>
  ({ last: first, beyond: before, first: last, before: beyond, again })

/** The answer that a search gives. */
export function choiceOf(asked: Asked, { edge, trials }: EdgeSearch<Judged>): Choice {
  if (edge === null) {
    const best = nearest(trials)
    const stop = best?.outcome.stop ?? null
    return noChoice(asked, best === null || stop === null ? { code: 'notConcerned' } : whyNone(best.value, stop), trials.length)
  }
  const { last, beyond, first, before, again } = edge
  const { stand } = last.outcome
  if (stand === null) throw new Error('What holds was judged.')
  const until = limitOf(before)
  return {
    found: true, ...common(asked),
    value: last.value, fixing: null,
    change: changeBetween(asked.document, last.value === asked.now ? asked.document : last.outcome.document),
    stand,
    limit: limitOf(beyond),
    until: until === null ? null : { value: first.value, limit: until },
    again,
    close: asked.close, isUntested: asked.isUntested, checks: trials.length,
  }
}
