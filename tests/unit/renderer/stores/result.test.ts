import { createPinia, setActivePinia } from 'pinia'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { nextTick } from 'vue'
import { checkHanger, patchDocument, resolveDocument, type HangerDocument } from '#core'
import { useAdvice } from '../../../../renderer/stores/advice'
import { useDocument } from '../../../../renderer/stores/document'
import { useResult } from '../../../../renderer/stores/result'
import type { AdviceQuestion } from '../../../../renderer/workers/messages'
import { demoDocument } from '../hangers'

class SilentWorker extends EventTarget {
  static last: SilentWorker | null = null
  asked: AdviceQuestion[] = []
  onmessage: ((event: MessageEvent) => void) | null = null
  onerror = null
  constructor() {
    super()
    SilentWorker.last = this
  }
  postMessage(question: AdviceQuestion): void { this.asked.push(question) }
}

const fern = demoDocument('fern-over-the-sideboard')
const order = demoDocument('order-for-a-rented-flat')
const checkOf = (document: HangerDocument) => {
  const resolved = resolveDocument(document)
  if (!resolved.ok) throw new Error('cannot be read')
  return checkHanger(resolved.hanger)
}

let frames: FrameRequestCallback[] = []
const frame = (): void => { for (const run of frames.splice(0)) run(0) }

beforeEach(() => {
  setActivePinia(createPinia())
  frames = []
  vi.stubGlobal('Worker', SilentWorker)
  vi.stubGlobal('requestAnimationFrame', (run: FrameRequestCallback) => frames.push(run))
})
afterEach(() => { vi.unstubAllGlobals() })

function open(document: HangerDocument) {
  const source = useDocument()
  const result = useResult()
  source.load(document)
  frame()
  return { source, result }
}

describe('result', () => {
  it('is the core’s check of the document', () => {
    const { result } = open(fern)
    expect(result.check).toEqual(checkOf(fern))
    expect(result.stale).toBe(false)
  })

  it('is worked out at most once a frame, with the latest text', () => {
    const { source, result } = open(fern)
    const before = result.check
    source.edit('weighed.mass', '5 kg')
    source.edit('weighed.mass', '50 kg')
    expect(frames).toHaveLength(1)
    expect(result.check).toBe(before)
    frame()
    expect(result.check).toEqual(checkOf(source.document))
  })

  it('keeps the last good check, marked stale, while an answer is half typed', () => {
    const { source, result } = open(fern)
    const before = result.check
    source.edit('pot.rim', '17 c')
    frame()
    expect(result.check).toBe(before)
    expect(result.stale).toBe(true)
    expect(result.problemsByPath.get('pot.rim')).toMatchObject({ code: 'BAD_QUANTITY', given: '17 c' })
    source.edit('pot.rim', '17 cm')
    frame()
    expect(result.stale).toBe(false)
    expect(result.problems).toEqual([])
  })

  it('never shows the check of another hanger for one that cannot be read', () => {
    const { source, result } = open(fern)
    source.load(patchDocument(order, { 'pot.rim': 'wide' }))
    frame()
    expect(result.check).toBeNull()
    expect(result.unreadable).toBe(true)
  })

  it('with no pot yet shows the worker’s check once it has come', async () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] })
    const withoutPot = patchDocument(fern, { 'pot.have': 'no' })
    const { result } = open(withoutPot)
    expect(result.stale).toBe(true)
    await nextTick()
    vi.advanceTimersByTime(150)
    vi.useRealTimers()
    const question = SilentWorker.last?.asked.at(-1)
    if (question?.kind !== 'ask') throw new Error('the worker was not asked')
    const loaded = checkOf(patchDocument(withoutPot, { 'weighed.mass': '8 kg', 'weighed.state': 'watered' }))
    SilentWorker.last?.onmessage?.(new MessageEvent('message', { data: { kind: 'answer', revision: question.revision, advice: { heaviest: 8, remedies: [], loaded } } }))
    expect(useAdvice().answer?.heaviest).toBe(8)
    expect(result.check).toBe(loaded)
    expect(result.stale).toBe(false)
  })
})
