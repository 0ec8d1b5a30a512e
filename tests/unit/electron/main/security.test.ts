import { EventEmitter } from 'node:events'
import type { App, Session } from 'electron'
import { describe, expect, test, vi } from 'vitest'
import { isRequestAllowed, lockDown } from '../../../../electron/main/security'

test.each([
  ['strandwise-app://app/index.html', true],
  ['blob:strandwise-app://app/1', true],
  ['DATA:image/png;base64,', true],
  ['https://example.org/', false],
  ['http://127.0.0.1:4173/', false],
  ['ws://example.org/', false],
  ['file:///etc/hostname', false],
  ['strandwise-app.example.org://x', false],
  ['no address', false],
])('%s: %s', (address, allowed) => {
  expect(isRequestAllowed(address, false)).toBe(allowed)
})

test('a developer\'s tools work while developing only', () => {
  expect(isRequestAllowed('devtools://devtools/x.js', true)).toBe(true)
  expect(isRequestAllowed('devtools://devtools/x.js', false)).toBe(false)
})

describe('what is locked down', () => {
  const app = Object.assign(new EventEmitter(), { isPackaged: true })
  const session = Object.assign(new EventEmitter(), {
    setPermissionRequestHandler: vi.fn(),
    setPermissionCheckHandler: vi.fn(),
    setDevicePermissionHandler: vi.fn(),
    setSpellCheckerEnabled: vi.fn(),
    webRequest: { onBeforeRequest: vi.fn() },
  })
  const contents = Object.assign(new EventEmitter(), { setWindowOpenHandler: vi.fn(), setWebRTCIPHandlingPolicy: vi.fn() })
  lockDown(app as unknown as App, session as unknown as Session)
  app.emit('web-contents-created', {}, contents)

  test.each(['will-navigate', 'will-redirect', 'will-frame-navigate', 'will-attach-webview'])('%s', (name) => {
    const preventDefault = vi.fn()
    contents.emit(name, { preventDefault, url: 'strandwise-app://app/another.html' })
    expect(preventDefault).toHaveBeenCalledOnce()
  })

  test('downloads', () => {
    const preventDefault = vi.fn()
    session.emit('will-download', { preventDefault })
    expect(preventDefault).toHaveBeenCalledOnce()
  })

  test('new windows', () => {
    const [handler] = contents.setWindowOpenHandler.mock.calls[0] as [(details: unknown) => unknown]
    expect(handler({ url: 'strandwise-app://app/index.html' })).toEqual({ action: 'deny' })
  })

  test('permissions, asked for or looked up, and devices', () => {
    const answer = vi.fn()
    const [ask] = session.setPermissionRequestHandler.mock.calls[0] as [(contents: unknown, permission: string, answer: (granted: boolean) => void) => void]
    ask(contents, 'media', answer)
    expect(answer.mock.calls).toEqual([[false]])
    const [check] = session.setPermissionCheckHandler.mock.calls[0] as [() => boolean]
    const [device] = session.setDevicePermissionHandler.mock.calls[0] as [() => boolean]
    expect([check(), device()]).toEqual([false, false])
  })

  test('requests', () => {
    const [listener] = session.webRequest.onBeforeRequest.mock.calls[0] as [(details: { url: string }, answer: (answer: unknown) => void) => void]
    const answers: unknown[] = []
    listener({ url: 'https://example.org/' }, (answer) => answers.push(answer))
    listener({ url: 'strandwise-app://app/index.html' }, (answer) => answers.push(answer))
    expect(answers).toEqual([{ cancel: true }, { cancel: false }])
  })
})
