import { beneathChoices, loadedFor, placeNeedsOf, searchPlaceNeeds, type HangerDocument, type PlaceNeed } from '#core'
import type { PlaceAnswer, PlaceQuestion, PlaceReply } from './messages'

/** Works out what a document needs of its place, handing over each wall and ceiling as it is found. */
export function* placeJob(document: HangerDocument): Generator<PlaceNeed, PlaceAnswer | 'noWeight' | null, void> {
  const outcome = loadedFor(document)
  if (!outcome.ok) return outcome.reason === 'noWeight' ? 'noWeight' : null
  const { loaded } = outcome
  const found: PlaceNeed[] = []
  for (const need of searchPlaceNeeds(loaded)) {
    found.push(need)
    yield need
  }
  return { needs: placeNeedsOf(loaded, found), beneath: beneathChoices(loaded) }
}

/** The worker's side of the talk: a job is dropped between two places once a later question has come. `breathe` lets waiting messages in. */
export function servePlace(reply: (message: PlaceReply) => void, breathe: () => Promise<void>): (question: PlaceQuestion) => void {
  let current: PlaceQuestion | null = null

  async function work(question: PlaceQuestion): Promise<void> {
    const { revision } = question
    const job = placeJob(question.document)
    const found: PlaceNeed[] = []
    for (;;) {
      await breathe()
      if (current !== question) return
      const step = job.next()
      if (step.done) {
        reply({ kind: 'placeAnswer', revision, answer: step.value })
        return
      }
      found.push(step.value)
      reply({ kind: 'placeProgress', revision, found: [...found] })
    }
  }

  return (question) => {
    current = question
    work(question).catch((error: unknown) => {
      reply({ kind: 'placeFailed', revision: question.revision, detail: error instanceof Error ? error.message : String(error) })
    })
  }
}
