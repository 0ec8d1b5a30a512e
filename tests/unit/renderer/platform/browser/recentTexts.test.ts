import { beforeEach, expect, test } from 'vitest'
import { recentTexts, rememberText } from '../../../../../renderer/platform/browser/recentTexts'

beforeEach(() => { localStorage.clear() })
const hanger = (name: string, text = name) => ({ token: `token of ${name}`, name, text })

test('the latest first, one of each name, eight at most', () => {
  for (const name of ['1', '2', '3', '4', '5', '6', '7', '8', '9', '3']) rememberText(() => localStorage, hanger(name))
  rememberText(() => localStorage, hanger('5', 'changed'))
  expect(recentTexts(() => localStorage).map(({ name }) => name)).toEqual(['5', '3', '9', '8', '7', '6', '4', '2'])
  expect(recentTexts(() => localStorage)[0]).toEqual(hanger('5', 'changed'))
})

test('where room is short the oldest give way', () => {
  const kept = new Map<string, string>()
  const small = {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => {
      if (value.length > 260) throw new DOMException('full', 'QuotaExceededError')
      kept.set(key, value)
    },
  } as Storage
  for (const name of ['a', 'b', 'c']) rememberText(() => small, hanger(name, name.repeat(60)))
  expect(recentTexts(() => small).map(({ name }) => name)).toEqual(['c', 'b'])
  rememberText(() => small, hanger('vast', 'x'.repeat(1000)))
  expect(recentTexts(() => small).map(({ name }) => name)).toEqual(['c', 'b'])
})

test.each(['', 'not JSON', '{}', '[1, null, {"token": 1, "name": "n", "text": "t"}]'])('a memory that reads %j is an empty one', (text) => {
  localStorage.setItem('strandwise.recent', text)
  expect(recentTexts(() => localStorage)).toEqual([])
})

test('a browser that keeps nothing is no failure', () => {
  const closed = (): Storage => { throw new DOMException('no', 'SecurityError') }
  rememberText(closed, hanger('fern'))
  expect(recentTexts(closed)).toEqual([])
})
