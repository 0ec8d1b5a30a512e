import { answerDocument, checkHanger, heaviestPot, resolveDocument, searchRemedies, type HangerDocument, type Remedy } from '#core'
import type { Advice } from './messages'

/**
 * Works out the advice on a document, handing over each remedy as it is found, so that whoever drives
 * it can stop in between. Null if the document cannot be read.
 */
export function* adviceJob(document: HangerDocument): Generator<Remedy, Advice | null, void> {
  const resolved = resolveDocument(document)
  if (!resolved.ok) return null
  const { answers } = resolved.hanger
  if (answers['pot.have'] === 'no') {
    const outcome = answerDocument(document)
    return outcome.ok ? { heaviest: outcome.answer.heaviest, remedies: outcome.answer.remedies, loaded: outcome.answer.check } : null
  }
  const remedies: Remedy[] = []
  for (const remedy of searchRemedies(document, checkHanger(resolved.hanger))) {
    remedies.push(remedy)
    yield remedy
  }
  const heaviest = answers['make.have'] === 'no' ? null : heaviestPot(document)?.watered ?? null
  return { heaviest, remedies, loaded: null }
}
