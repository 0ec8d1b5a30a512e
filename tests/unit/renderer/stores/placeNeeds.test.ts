import { createPinia, setActivePinia } from 'pinia'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { nextTick, shallowRef } from 'vue'
import { answerPlaceNeeds, editField, type FixingFound } from '#core'
import type { PlaceAnswer, PlaceQuestion, PlaceReply } from '../../../../renderer/place/messages'
import { useDocument } from '../../../../renderer/stores/document'
import { createPlaceNeeds, usePlaceNeeds, type PlaceWorker } from '../../../../renderer/stores/placeNeeds'
import { demoDocument } from '../hangers'

const fern = demoDocument('fern-over-the-sideboard')
const outcome = answerPlaceNeeds(fern)
if (!outcome.ok) throw new Error('the demo cannot be read')
const answer: PlaceAnswer = { needs: outcome.needs, beneath: [] }
const eye = outcome.needs.needs[0]?.fixings[0]
if (eye === undefined || !eye.found) throw new Error('no eye')
const fixing: FixingFound = eye

function start() {
  const asked: PlaceQuestion[] = []
  let workers = 0
  const worker: PlaceWorker = { postMessage: (question) => { asked.push(question) }, onmessage: null, onerror: null }
  const document = shallowRef(fern)
  const place = createPlaceNeeds(() => document.value, () => { workers += 1; return worker })
  const reply = (message: PlaceReply): void => worker.onmessage?.(new MessageEvent('message', { data: message }))
  const edit = async (text: string): Promise<void> => {
    document.value = editField(document.value, 'pot.rim', text)
    await nextTick()
  }
  return { asked, place, reply, edit, worker, started: () => workers }
}

describe('what the place needs', () => {
  it('asks nothing and starts nothing until it is looked at', async () => {
    const { asked, edit, started } = start()
    await edit('19 cm')
    expect({ asked: asked.length, started: started() }).toEqual({ asked: 0, started: 0 })
  })

  it('asks when looked at, again at each edit while it is looked at, and no more once left', async () => {
    const { asked, place, edit, started } = start()
    place.look()
    await edit('19 cm')
    expect(asked.map(({ document }) => document.typed['pot.rim'])).toEqual([fern.typed['pot.rim'], '19 cm'])
    place.leave()
    await edit('20 cm')
    expect(asked).toHaveLength(2)
    place.look()
    expect(asked.at(-1)?.document.typed['pot.rim']).toBe('20 cm')
    expect(started()).toBe(1)
  })

  it('shows places as they are found, and keeps the last answer while a new one is worked out', async () => {
    const { place, reply, edit } = start()
    place.look()
    reply({ kind: 'placeProgress', revision: 1, found: answer.needs.needs.slice(0, 2) })
    expect([place.needs.value.length, place.state.value]).toEqual([2, 'asking'])
    reply({ kind: 'placeAnswer', revision: 1, answer })
    expect(place.needs.value).toHaveLength(answer.needs.needs.length)
    await edit('19 cm')
    reply({ kind: 'placeProgress', revision: 2, found: [] })
    expect([place.needs.value.length, place.state.value]).toEqual([answer.needs.needs.length, 'asking'])
    reply({ kind: 'placeAnswer', revision: 1, answer: null })
    expect(place.state.value).toBe('asking')
  })

  it('says so when it cannot be told, and forgets another hanger’s answer', () => {
    const { place, reply, worker } = start()
    place.look()
    reply({ kind: 'placeAnswer', revision: 1, answer })
    place.forget()
    expect(place.answer.value).toBeNull()
    reply({ kind: 'placeAnswer', revision: 2, answer: 'noWeight' })
    expect([place.state.value, place.needs.value.length]).toEqual(['noWeight', 0])
    reply({ kind: 'placeAnswer', revision: 2, answer: null })
    expect(place.state.value).toBe('unread')
    worker.onerror?.(new ErrorEvent('error'))
    expect(place.state.value).toBe('failed')
  })
})

describe('a fixing tried on', () => {
  beforeEach(() => {
    vi.stubGlobal('Worker', class extends EventTarget { postMessage(): void { /* nothing answers here */ } })
    setActivePinia(createPinia())
  })

  it('is one step, and taking it back another that leaves what was there', () => {
    const source = useDocument()
    source.load(fern)
    const place = usePlaceNeeds()
    expect(place.stands(fixing)).toBe(false)
    place.tryOn(fixing)
    expect([place.stands(fixing), place.canTakeBack(fixing)]).toEqual([true, true])
    for (const [path, text] of Object.entries(fixing.changes)) expect((source.document.typed as Record<string, string | undefined>)[path] ?? null, path).toBe(text)
    source.undo()
    expect(source.document.typed).toEqual(fern.typed)
    source.redo()
    place.takeBack()
    expect(source.document.typed).toEqual(fern.typed)
    expect(place.canTakeBack(fixing)).toBe(false)
  })
})
