import { afterEach, expect, test, vi } from 'vitest'
import { heard } from '../../../../renderer/faults/heard'

afterEach(() => { vi.unstubAllGlobals() })

test.each([
  ['breaks', new ErrorEvent('error', { message: 'x is not a function' }), ['x is not a function']],
  ['says what broke', new MessageEvent('message', { data: { kind: 'placeFailed', revision: 3, detail: 'no leg' } }), ['no leg']],
  ['answers', new MessageEvent('message', { data: { kind: 'answer', detail: 'of a part' } }), []],
  ['says nothing', new MessageEvent('message', { data: null }), []],
])('a worker that %s is told of as the page itself would be', (_, event, told) => {
  const reported: string[] = []
  vi.stubGlobal('reportError', ({ message }: Error) => { reported.push(message) })
  const worker = heard(new EventTarget())
  worker.dispatchEvent(event)
  expect(reported).toEqual(told)
})
