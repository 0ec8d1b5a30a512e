import { describe, expect, test } from 'vitest'
import { shallowRef } from 'vue'
import { chooseSizes, editField, type Choice, type ChoiceFound, type ChoicesAsked, type ChoosingStep, type HangerDocument } from '#core'
import { createChoosing } from '../../../../renderer/choosing/choosingStore'
import type { Ended, StartJob } from '../../../../renderer/jobs/startJob'
import { demoDocument } from '../hangers'

const fern = demoDocument('fern-over-the-sideboard')
const chosen = (document: HangerDocument): readonly Choice[] =>
  [...chooseSizes({ document, choices: ['wraps', 'stick'], own: [], material: null, mix: null })].flatMap((step) => (step.kind === 'chosen' ? [step.choice] : []))
const FOUND = chosen(fern)
const wraps = FOUND.find((choice): choice is ChoiceFound => choice.found) as ChoiceFound

/** A worker that does what the test says: steps, an answer, or nothing more once it was called off. */
function open(first: HangerDocument) {
  const document = shallowRef(first)
  const asked: ChoicesAsked[] = []
  const jobs: { readonly steps: (steps: readonly ChoosingStep[]) => void, readonly end: (ended: Ended<never>) => void }[] = []
  const start = ((_name: string, what: ChoicesAsked, onSteps: (steps: readonly ChoosingStep[]) => void) => {
    asked.push(what)
    let end: (ended: Ended<never>) => void = () => undefined
    const ended = new Promise<Ended<never>>((done) => { end = done })
    jobs.push({ steps: onSteps, end })
    return { ended, callOff: () => { end({ how: 'calledOff' }) } }
  }) as unknown as StartJob
  const choosing = createChoosing(start, () => document.value, (next) => { document.value = next }, () => [])
  const settle = (): Promise<void> => new Promise((done) => { setTimeout(done) })
  const answer = async (choices: readonly Choice[]): Promise<void> => {
    jobs.at(-1)?.steps([{ kind: 'tried', choice: 'wraps' }, ...choices.map((choice) => ({ kind: 'chosen', choice }) as const)])
    jobs.at(-1)?.end({ how: 'answered', answer: choices as never })
    await settle()
  }
  return { choosing, document, asked, jobs, answer, settle }
}

describe('choosing sizes', () => {
  test('answers come as they are found, and are kept while the hanger is as it was', async () => {
    const { choosing, asked, jobs, answer } = open(fern)
    choosing.look()
    jobs[0]?.steps([{ kind: 'tried', choice: 'wraps' }, { kind: 'tried', choice: 'wraps' }])
    expect([choosing.state.value, choosing.at.value, choosing.checks.value, choosing.found.value.length]).toEqual(['asking', 'wraps', 2, 0])
    await answer(FOUND)
    expect([choosing.state.value, choosing.found.value]).toEqual(['done', FOUND])
    choosing.look()
    expect(asked).toHaveLength(1)
  })

  test('one that is called off stays so, and is asked anew when it is looked at again', async () => {
    const { choosing, asked, settle } = open(fern)
    choosing.look()
    choosing.callOff()
    await settle()
    expect(choosing.state.value).toBe('calledOff')
    choosing.look()
    expect([choosing.state.value, asked.length]).toEqual(['asking', 2])
  })

  test('an answer is tried on as one step and taken back to the very hanger it was', async () => {
    const { choosing, document, answer } = open(fern)
    choosing.look()
    await answer(FOUND)
    choosing.tryOn(wraps)
    expect([document.value.typed['gathering.wraps'], document.value.typed['testHang.mass'], choosing.isTried(wraps), choosing.isChanged.value]).toEqual([String(wraps.value), undefined, true, false])
    choosing.takeBack()
    expect(document.value).toBe(fern)
    expect(choosing.isTried(wraps)).toBe(false)
  })

  test('a hanger that was changed meanwhile is told, and nothing is laid over it', async () => {
    const { choosing, document, answer, asked } = open(fern)
    choosing.look()
    await answer(FOUND)
    document.value = editField(fern, 'pot.rim', '19 cm')
    expect(choosing.isChanged.value).toBe(true)
    choosing.tryOn(wraps)
    expect(document.value.typed['gathering.wraps']).toBe(fern.typed['gathering.wraps'])
    choosing.begin()
    expect([choosing.isChanged.value, asked.at(-1)?.document]).toEqual([false, document.value])
  })

  test('another pot material asks for the widest pot alone, of the hanger as it was', async () => {
    const { choosing, answer, asked } = open(fern)
    choosing.look()
    await answer(FOUND)
    choosing.tryOn(wraps)
    choosing.askRim({ material: 'glass', mix: null })
    expect(asked.at(-1)).toMatchObject({ document: fern, choices: ['largestRim'], material: 'glass' })
    expect(choosing.found.value).toEqual(FOUND)
  })

  test('a document that cannot be read is not sent, and a fault is told', async () => {
    const unread = open(editField(fern, 'pot.rim', '19 pots'))
    unread.choosing.look()
    expect([unread.choosing.state.value, unread.asked]).toEqual(['unread', []])
    const { choosing, jobs, settle } = open(fern)
    choosing.look()
    jobs[0]?.end({ how: 'failed', detail: 'broken' })
    await settle()
    expect(choosing.state.value).toBe('failed')
  })
})
