import type { Choice, Limit } from '../choosing/choice'
import type { HangerDocument } from '../hanger/document'
import { choiceLimitText, choiceGroupNotes, choiceNotes, choiceSettlingTexts, choiceValueText, noChoiceText, standText, stopText } from '../words/choosing'
import { choiceName, choiceOfText } from '../words/choosingNames'

export const CHOOSE_FORMAT = 'strandwise-choose'
export const CHOOSE_VERSION = 1

const limitJson = (limit: Limit | null): object | null => {
  if (limit === null) return null
  const { value, stop } = limit
  const isLink = stop.kind === 'link'
  return { value, why: stop.kind, link: isLink ? stop.link : null, verdict: isLink ? stop.verdict : null, verdictNow: isLink ? stop.now : null, utilisation: isLink ? stop.utilisation : null, text: stopText(stop) }
}

function choiceJson(choice: Choice): object {
  const common = {
    question: choice.choice, name: choiceName(choice), of: choice.of === null ? null : { ...choice.of, text: choiceOfText(choice.of) },
    unit: choice.unit, now: choice.now, forNext: choice.isForNext, checks: choice.checks, found: choice.found,
  }
  if (!choice.found) {
    const { reason } = choice
    return {
      ...common, value: null, text: null, changes: null, pullTests: null, link: null, verdict: null, utilisation: null, whole: null,
      limit: 'limit' in reason ? limitJson(reason.limit) : null, until: null, again: [], monotone: null, close: null, reason: { code: reason.code, text: noChoiceText(choice), settle: choiceSettlingTexts(choice) }, notes: choiceGroupNotes(choice),
    }
  }
  const { value, change, stand, limit, until, again, close } = choice
  return {
    ...common, value, text: choiceValueText(choice), changes: change.typed, pullTests: change.pullTests?.length ?? null,
    link: stand.link, verdict: stand.verdict, utilisation: stand.utilisation, whole: stand.whole,
    limit: limitJson(limit), until: until === null ? null : { value: until.value, limit: limitJson(until.limit) },
    again, monotone: again.length === 0 && until === null, close, reason: null, notes: [standText(stand), choiceLimitText(choice), ...choiceNotes(choice), ...choiceGroupNotes(choice)].filter((note) => note !== ''),
  }
}

/**
 * What was chosen for the hanger of one file by the contract "strandwise-choose" version 1: every key always there, null
 * where it does not apply, SI, unrounded. `changes` are texts by path, null where an answer is taken back; `pullTests` the number of
 * pull tests in the log with it, null where the log stays.
 */
export const chooseJson = (file: string, document: HangerDocument, choices: readonly Choice[]): object =>
  ({ format: CHOOSE_FORMAT, version: CHOOSE_VERSION, file, name: document.name, answers: choices.map(choiceJson) })
