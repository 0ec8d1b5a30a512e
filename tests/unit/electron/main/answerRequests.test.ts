import { expect, test, vi } from 'vitest'
import { REQUESTS } from '../../../../electron/contract'
import { answerRequests, type Answerers } from '../../../../electron/main/answerRequests'
import { isFlag, isText } from '../../../../electron/main/checks'

type Handler = (event: unknown, ...args: unknown[]) => unknown

function answered(own: boolean, answerers: Partial<Answerers>): (channel: string, ...args: unknown[]) => unknown {
  const handlers = new Map<string, Handler>()
  const none = Object.fromEntries(Object.keys(REQUESTS).map((name) => [name, { takes: [], answer: () => undefined }]))
  answerRequests({ handle: (channel, handler) => { handlers.set(channel, handler as Handler) } }, () => own, { ...none, ...answerers } as unknown as Answerers)
  expect([...handlers.keys()].sort()).toEqual(Object.values(REQUESTS).sort())
  return (channel, ...args) => handlers.get(channel)?.({}, ...args)
}

test('every question of the contract has an answer', () => {
  const ask = answered(true, { openRecent: { takes: [isText], answer: (token) => ({ ok: true, hanger: { token, name: 'fern', text: '' } }) } })
  expect(ask(REQUESTS.openRecent, 'seven')).toEqual({ ok: true, hanger: { token: 'seven', name: 'fern', text: '' } })
})

test('a stranger is refused before anything is done', () => {
  const answer = vi.fn()
  const ask = answered(false, { setUnsaved: { takes: [isFlag], answer } })
  expect(() => ask(REQUESTS.setUnsaved, true)).toThrow('the app\'s own page only')
  expect(answer).not.toHaveBeenCalled()
})

test.each([[], ['true'], [true, false], [{ valueOf: () => true }]].map((args) => [args]))('wrong arguments are refused before anything is done: %j', (args) => {
  const answer = vi.fn()
  const ask = answered(true, { setUnsaved: { takes: [isFlag], answer } })
  expect(() => ask(REQUESTS.setUnsaved, ...args)).toThrow(TypeError)
  expect(answer).not.toHaveBeenCalled()
})
