import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { nextTick, shallowRef } from 'vue'
import { editField, EMPTY_DOCUMENT, type Remedy } from '#core'
import { createAdvice, type AdviceWorker } from '../../../../renderer/stores/advice'
import type { AdviceQuestion, AdviceReply } from '../../../../renderer/workers/messages'

const remedy = (code: Remedy['code']): Remedy => ({ code, patch: { 'make.legs': '6' }, link: 'leg', linkVerdict: 'holds', verdict: 'holds', utilisation: 0.5 })

function start() {
  const asked: AdviceQuestion[] = []
  const worker: AdviceWorker = { postMessage: (question) => { asked.push(question) }, onmessage: null, onerror: null }
  const document = shallowRef(EMPTY_DOCUMENT)
  const advice = createAdvice(() => document.value, () => worker)
  const reply = (message: AdviceReply): void => worker.onmessage?.(new MessageEvent('message', { data: message }))
  const asks = () => asked.filter((question) => question.kind === 'ask')
  const type = async (text: string): Promise<void> => {
    document.value = editField(document.value, 'pot.rim', text)
    await nextTick()
  }
  const restore = async (before: typeof EMPTY_DOCUMENT): Promise<void> => {
    document.value = before
    await nextTick()
  }
  return { advice, asked, asks, reply, type, restore, worker }
}

beforeEach(() => { vi.useFakeTimers() })
afterEach(() => { vi.useRealTimers() })

describe('advice', () => {
  it('asks once the typing has been quiet for a moment, with the latest document', async () => {
    const { asks, type } = start()
    await type('1 cm')
    vi.advanceTimersByTime(149)
    await type('17 cm')
    vi.advanceTimersByTime(149)
    expect(asks()).toEqual([])
    vi.advanceTimersByTime(1)
    expect(asks().map(({ document }) => document.typed['pot.rim'])).toEqual(['17 cm'])
  })

  it('shows remedies as they are found, then the whole answer', async () => {
    const { advice, asks, reply } = start()
    vi.advanceTimersByTime(150)
    const revision = asks()[0]?.revision ?? NaN
    reply({ kind: 'progress', revision, remedies: [remedy('moreLegs')] })
    expect(advice.remedies.value.map(({ code }) => code)).toEqual(['moreLegs'])
    expect(advice.isFresh.value).toBe(false)
    reply({ kind: 'answer', revision, advice: { heaviest: 5.5, remedies: [remedy('moreLegs'), remedy('thickerCord')], loaded: null } })
    expect(advice.answer.value?.heaviest).toBe(5.5)
    expect(advice.remedies.value).toHaveLength(2)
    expect(advice.isFresh.value).toBe(true)
  })

  it('calls the job off at the next edit and drops what it still says', async () => {
    const { advice, asked, asks, reply, type } = start()
    vi.advanceTimersByTime(150)
    const first = asks()[0]?.revision ?? NaN
    await type('9 cm')
    expect(asked.at(-1)).toEqual({ kind: 'cancel' })
    reply({ kind: 'answer', revision: first, advice: { heaviest: 99, remedies: [], loaded: null } })
    expect(advice.answer.value).toBeNull()
    expect(advice.isFresh.value).toBe(false)
  })

  it('knows at once what it answered of a document that comes back', async () => {
    const { advice, asks, reply, type, restore } = start()
    vi.advanceTimersByTime(150)
    reply({ kind: 'answer', revision: asks()[0]?.revision ?? NaN, advice: { heaviest: 5.5, remedies: [remedy('moreLegs')], loaded: null } })
    await type('9 cm')
    vi.advanceTimersByTime(150)
    reply({ kind: 'answer', revision: asks()[1]?.revision ?? NaN, advice: { heaviest: 7, remedies: [], loaded: null } })
    expect(advice.answer.value?.heaviest).toBe(7)
    await restore(EMPTY_DOCUMENT)
    expect(advice.answer.value?.heaviest).toBe(5.5)
    expect(advice.remedies.value).toHaveLength(1)
    expect(advice.isFresh.value).toBe(true)
    vi.advanceTimersByTime(500)
    expect(asks()).toHaveLength(2)
  })

  it('keeps the last answer, marked as not fresh, while a new one is looked for', async () => {
    const { advice, asks, reply, type } = start()
    vi.advanceTimersByTime(150)
    reply({ kind: 'answer', revision: asks()[0]?.revision ?? NaN, advice: { heaviest: 5.5, remedies: [], loaded: null } })
    await type('9 cm')
    expect(advice.answer.value?.heaviest).toBe(5.5)
    expect(advice.isFresh.value).toBe(false)
    advice.forget()
    expect(advice.answer.value).toBeNull()
  })

  it('says so when the worker breaks or its job fails', async () => {
    const broken = start()
    broken.worker.onerror?.(new ErrorEvent('error'))
    expect(broken.advice.hasFailed.value).toBe(true)
    const failing = start()
    vi.advanceTimersByTime(150)
    failing.reply({ kind: 'failed', revision: failing.asks()[0]?.revision ?? NaN, detail: 'out of memory' })
    expect(failing.advice.hasFailed.value).toBe(true)
    await failing.type('9 cm')
    expect(failing.advice.hasFailed.value).toBe(false)
  })
})
