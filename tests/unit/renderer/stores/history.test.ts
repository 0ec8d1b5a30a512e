import { describe, expect, it } from 'vitest'
import { editField, EMPTY_DOCUMENT, renameDocument } from '#core'
import { createHistory } from '../../../../renderer/stores/history'

const rim = (text: string) => editField(EMPTY_DOCUMENT, 'pot.rim', text)

function typing() {
  let now = 1000
  return { history: createHistory(() => now), wait: (ms: number) => { now += ms } }
}

describe('history', () => {
  it('takes edits of one field that follow closely as one step', () => {
    const { history, wait } = typing()
    history.record(EMPTY_DOCUMENT, 'pot.rim')
    wait(300)
    history.record(rim('1'), 'pot.rim')
    wait(1900)
    history.record(rim('17'), 'pot.rim')
    expect(history.undo(rim('17 cm'))).toBe(EMPTY_DOCUMENT)
    expect(history.canUndo.value).toBe(false)
  })

  it.each([
    ['a pause', (t: ReturnType<typeof typing>) => t.wait(2001)],
    ['leaving the field', (t: ReturnType<typeof typing>) => t.history.endStep()],
  ])('begins a new step after %s', (_, between) => {
    const t = typing()
    t.history.record(EMPTY_DOCUMENT, 'pot.rim')
    between(t)
    const middle = rim('17 cm')
    t.history.record(middle, 'pot.rim')
    expect(t.history.undo(rim('18 cm'))).toBe(middle)
    expect(t.history.undo(middle)).toBe(EMPTY_DOCUMENT)
  })

  it('begins a new step with another field, and with a change that is a step of its own', () => {
    const { history } = typing()
    const named = renameDocument(rim('17 cm'), 'Fern')
    history.record(EMPTY_DOCUMENT, 'pot.rim')
    history.record(rim('17 cm'), 'name')
    history.record(named, null)
    history.record(rim('9 cm'), null)
    expect(history.undo(rim('8 cm'))).toEqual(rim('9 cm'))
    expect(history.undo(rim('9 cm'))).toBe(named)
  })

  it('steps forth again what was taken back, until something new is done', () => {
    const { history } = typing()
    history.record(EMPTY_DOCUMENT, null)
    const made = rim('17 cm')
    history.undo(made)
    expect(history.canRedo.value).toBe(true)
    expect(history.redo(EMPTY_DOCUMENT)).toBe(made)
    history.undo(made)
    history.record(EMPTY_DOCUMENT, 'pot.rim')
    expect(history.redo(rim('2'))).toBeNull()
  })

  it('does not join an edit to a step that was taken back', () => {
    const { history } = typing()
    history.record(EMPTY_DOCUMENT, 'pot.rim')
    history.record(rim('17 cm'), 'pot.height')
    const at17 = history.undo(rim('17 cm'))
    expect(at17).toEqual(rim('17 cm'))
    history.record(rim('17 cm'), 'pot.height')
    expect(history.undo(EMPTY_DOCUMENT)).toEqual(rim('17 cm'))
  })

  it('has nothing to undo at the beginning, nor once it was told to forget', () => {
    const { history } = typing()
    expect(history.undo(EMPTY_DOCUMENT)).toBeNull()
    history.record(EMPTY_DOCUMENT, null)
    history.forget()
    expect(history.undo(rim('1'))).toBeNull()
  })

  it('takes five hundred steps back to the first hanger and forth to the last, each as it was', () => {
    const { history } = typing()
    const made = [EMPTY_DOCUMENT]
    const now = () => made.at(-1) ?? EMPTY_DOCUMENT
    for (let i = 0; i < 500; i++) {
      history.record(now(), null)
      made.push(i % 3 === 0 ? renameDocument(now(), `Hanger ${i}`) : editField(now(), i % 3 === 1 ? 'pot.rim' : 'cord.diameter', `${i} mm`))
    }
    let present = now()
    for (let i = 499; i >= 0; i--) {
      present = history.undo(present) ?? present
      expect(present).toBe(made[i])
    }
    expect(history.canUndo.value).toBe(false)
    for (let i = 1; i <= 500; i++) {
      present = history.redo(present) ?? present
      expect(present).toBe(made[i])
    }
    expect(history.canRedo.value).toBe(false)
  })

  it('keeps the last thousand steps, so that it does not grow for ever', () => {
    const { history } = typing()
    for (let i = 0; i < 1100; i++) history.record(rim(`${i} mm`), null)
    let steps = 0
    for (let present: ReturnType<typeof rim> | null = rim('end'); (present = history.undo(present)) !== null; steps++) if (steps === 999) expect(present.typed['pot.rim']).toBe('100 mm')
    expect(steps).toBe(1000)
  })
})
