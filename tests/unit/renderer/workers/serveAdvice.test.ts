import { describe, expect, it } from 'vitest'
import { answerDocument, editField, patchDocument } from '#core'
import type { AdviceReply } from '../../../../renderer/workers/messages'
import { serveAdvice } from '../../../../renderer/workers/serveAdvice'
import { demoDocument } from '../hangers'

const glazed = demoDocument('glazed-pot-by-the-reading-chair')
const fern = demoDocument('fern-over-the-sideboard')

/** Serves with the breath held until it is let go, so that a test can speak in between. */
function serve() {
  const replies: AdviceReply[] = []
  const waiting: (() => void)[] = []
  const ask = serveAdvice((reply) => replies.push(reply), () => new Promise((done) => waiting.push(done)))
  const breath = async (): Promise<void> => {
    waiting.shift()?.()
    await new Promise((done) => { setTimeout(done) })
  }
  const finish = async (): Promise<void> => { while (waiting.length > 0) await breath() }
  return { ask, replies, breath, finish }
}

describe('the advice worker', () => {
  it('answers what the core answers at once, remedy by remedy', async () => {
    const { ask, replies, finish } = serve()
    ask({ kind: 'ask', revision: 7, document: glazed })
    await finish()
    const whole = answerDocument(glazed)
    if (!whole.ok) throw new Error('the demo cannot be read')
    const { remedies, heaviest } = whole.answer
    expect(remedies.length).toBeGreaterThan(1)
    expect(replies.slice(0, -1)).toEqual(remedies.map((_, i) => ({ kind: 'progress', revision: 7, remedies: remedies.slice(0, i + 1) })))
    expect(replies.at(-1)).toEqual({ kind: 'answer', revision: 7, advice: { heaviest, remedies, loaded: null } })
  })

  it('drops a job between two remedies once a later question has come', async () => {
    const { ask, replies, breath, finish } = serve()
    ask({ kind: 'ask', revision: 1, document: glazed })
    await breath()
    expect(replies.map(({ kind }) => kind)).toEqual(['progress'])
    ask({ kind: 'ask', revision: 2, document: fern })
    await finish()
    expect(replies.slice(1).map(({ revision }) => revision)).not.toContain(1)
    expect(replies.at(-1)).toMatchObject({ kind: 'answer', revision: 2 })
  })

  it('drops a job when told to', async () => {
    const { ask, replies, breath, finish } = serve()
    ask({ kind: 'ask', revision: 1, document: glazed })
    await breath()
    ask({ kind: 'cancel' })
    await finish()
    expect(replies).toHaveLength(1)
  })

  it('with no pot yet hands over the check with the heaviest pot', async () => {
    const { ask, replies, finish } = serve()
    const withoutPot = patchDocument(fern, { 'pot.have': 'no' })
    ask({ kind: 'ask', revision: 3, document: withoutPot })
    await finish()
    const whole = answerDocument(withoutPot)
    if (!whole.ok) throw new Error('the demo cannot be read')
    const reply = replies.at(-1)
    expect(reply?.kind === 'answer' ? reply.advice : null).toEqual({ heaviest: whole.answer.heaviest, remedies: whole.answer.remedies, loaded: whole.answer.check })
  })

  it('has no advice on what cannot be read', async () => {
    const { ask, replies, finish } = serve()
    ask({ kind: 'ask', revision: 4, document: editField(fern, 'pot.rim', '17 pots') })
    await finish()
    expect(replies).toEqual([{ kind: 'answer', revision: 4, advice: null }])
  })
})
