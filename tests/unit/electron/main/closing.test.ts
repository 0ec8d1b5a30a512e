import { EventEmitter } from 'node:events'
import { beforeEach, expect, test, vi } from 'vitest'
import { guardClosing, type Closing, type ClosingAnswer } from '../../../../electron/main/closing'

/** A window that closes unless it is kept from it, and an app that closes its window before it ends. */
function stage() {
  const window = new EventEmitter()
  const log: string[] = []
  let answer: (answer: ClosingAnswer) => void = () => undefined
  const closeWindow = (): boolean => {
    const preventDefault = vi.fn()
    window.emit('close', { preventDefault })
    const kept = preventDefault.mock.calls.length > 0
    if (!kept) log.push('closed')
    return !kept
  }
  const closing: Closing = guardClosing(window, {
    ask: () => new Promise((resolve) => {
      log.push('asked')
      answer = resolve
    }),
    requestSave: () => { log.push('save') },
    closeWindow: () => { closeWindow() },
    quit: () => { quit() },
  })
  const quit = (): void => {
    closing.setQuitting()
    if (closeWindow()) log.push('quit')
  }
  const answerWith = async (given: ClosingAnswer): Promise<void> => {
    answer(given)
    await new Promise((heard) => { setImmediate(heard) })
  }
  return { closing, log, closeWindow, quit, answer: answerWith }
}

let app: ReturnType<typeof stage>
beforeEach(() => { app = stage() })

test('nothing is asked where nothing would be lost', () => {
  app.closing.setUnsaved(true)
  app.closing.setUnsaved(false)
  app.closeWindow()
  expect(app.log).toEqual(['closed'])
})

test('cancel keeps the window, and the next time it is asked again', async () => {
  app.closing.setUnsaved(true)
  app.closeWindow()
  await app.answer('cancel')
  expect(app.log).toEqual(['asked'])
  app.closeWindow()
  expect(app.log).toEqual(['asked', 'asked'])
})

test('impatience does not ask twice', async () => {
  app.closing.setUnsaved(true)
  app.closeWindow()
  app.closeWindow()
  await app.answer('discard')
  expect(app.log).toEqual(['asked', 'closed'])
})

test('without saving, the window closes', async () => {
  app.closing.setUnsaved(true)
  app.closeWindow()
  await app.answer('discard')
  expect(app.log).toEqual(['asked', 'closed'])
})

test('saving closes the window once the page has saved, and not before', async () => {
  app.closing.setUnsaved(true)
  app.closeWindow()
  await app.answer('save')
  expect(app.log).toEqual(['asked', 'save'])
  app.closing.closeAfterSave()
  expect(app.log).toEqual(['asked', 'save', 'closed'])
})

test('a quit that waited for saving goes on', async () => {
  app.closing.setUnsaved(true)
  app.quit()
  await app.answer('save')
  app.closing.closeAfterSave()
  expect(app.log).toEqual(['asked', 'save', 'closed', 'quit'])
})

test('a quit that was called off does not come back with the next closing', async () => {
  app.closing.setUnsaved(true)
  app.quit()
  await app.answer('cancel')
  app.closeWindow()
  await app.answer('discard')
  expect(app.log).toEqual(['asked', 'asked', 'closed'])
})
