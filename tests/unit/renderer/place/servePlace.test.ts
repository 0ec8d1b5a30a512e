import { describe, expect, it } from 'vitest'
import { answerPlaceNeeds, editField, EMPTY_DOCUMENT } from '#core'
import type { PlaceReply } from '../../../../renderer/place/messages'
import { servePlace } from '../../../../renderer/place/servePlace'
import { demoDocument } from '../hangers'

const fern = demoDocument('fern-over-the-sideboard')
const order = demoDocument('order-for-a-rented-flat')

/** Serves with the breath held until it is let go, so that a test can speak in between. */
function serve() {
  const replies: PlaceReply[] = []
  const waiting: (() => void)[] = []
  const ask = servePlace((reply) => replies.push(reply), () => new Promise((done) => waiting.push(done)))
  const breath = async (): Promise<void> => {
    waiting.shift()?.()
    await new Promise((done) => { setTimeout(done) })
  }
  const finish = async (): Promise<void> => { while (waiting.length > 0) await breath() }
  return { ask, replies, breath, finish }
}

describe('the place worker', () => {
  it('answers what the core answers at once, place by place', async () => {
    const { ask, replies, finish } = serve()
    ask({ kind: 'place', revision: 5, document: fern })
    await finish()
    const whole = answerPlaceNeeds(fern)
    if (!whole.ok) throw new Error('the demo cannot be read')
    const { needs } = whole.needs
    expect(replies.slice(0, -1)).toEqual(needs.map((_, i) => ({ kind: 'placeProgress', revision: 5, found: needs.slice(0, i + 1) })))
    const last = replies.at(-1)
    expect(last).toMatchObject({ kind: 'placeAnswer', revision: 5, answer: { needs: whole.needs } })
    expect(last?.kind === 'placeAnswer' && last.answer !== null && last.answer !== 'noWeight' ? last.answer.beneath : []).toHaveLength(5)
  })

  it('drops a job between two places once a later question has come', async () => {
    const { ask, replies, breath, finish } = serve()
    ask({ kind: 'place', revision: 1, document: fern })
    await breath()
    expect(replies).toHaveLength(1)
    ask({ kind: 'place', revision: 2, document: order })
    await finish()
    expect(replies.slice(1).map(({ revision }) => revision)).not.toContain(1)
    expect(replies.at(-1)).toMatchObject({ kind: 'placeAnswer', revision: 2 })
  })

  it('says where nothing can be read, or nothing is known of the weight', async () => {
    const { ask, replies, finish } = serve()
    ask({ kind: 'place', revision: 1, document: editField(fern, 'pot.rim', '17 pots') })
    await finish()
    ask({ kind: 'place', revision: 2, document: editField(EMPTY_DOCUMENT, 'pot.have', 'no') })
    await finish()
    expect(replies).toEqual([{ kind: 'placeAnswer', revision: 1, answer: null }, { kind: 'placeAnswer', revision: 2, answer: 'noWeight' }])
  })
})
