import { writeBy } from '#core'
import { hangerCard, heaviestOf } from './hangerCard'
import type { HangerQuestion, HangerReply } from './messages'

/** The worker's side of the talk. Whoever asks sends one question after the other, so to stop is to ask no more. */
export function serveHangers(reply: (message: HangerReply) => void): (question: HangerQuestion) => void {
  return ({ kind, revision, text, habits }) => {
    try {
      writeBy(habits)
      reply(kind === 'hangerCard' ? { kind, revision, card: hangerCard(text) } : { kind, revision, heaviest: heaviestOf(text) })
    } catch (error) {
      reply({ kind: 'hangerFailed', revision, detail: error instanceof Error ? error.message : String(error) })
    }
  }
}
