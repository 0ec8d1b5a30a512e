import { mkdirSync, writeFileSync } from 'node:fs'
import { beforeEach, expect, test } from 'vitest'
import security from '../../../../electron/contentSecurityPolicy.json'
import { servePages } from '../../../../electron/main/servePages'
import { temporaryFolder } from './temporaryFolder'

const folder = temporaryFolder()
const ask = (address: string, method = 'GET') => servePages(folder.file('pages'))(new Request(address, { method }))

beforeEach(() => {
  mkdirSync(folder.file('pages/assets'), { recursive: true })
  mkdirSync(folder.file('pages-other'))
  writeFileSync(folder.file('pages/index.html'), '<title>½</title>')
  writeFileSync(folder.file('pages/assets/two words.js'), 'start()')
  writeFileSync(folder.file('pages/notes.txt'), 'notes')
  writeFileSync(folder.file('secret.html'), 'secret')
  writeFileSync(folder.file('pages-other/secret.html'), 'secret')
})

test('a page comes with its type and the whole policy', async () => {
  const response = await ask('strandwise-app://app/index.html')
  expect(response.status).toBe(200)
  expect(await response.text()).toBe('<title>½</title>')
  expect(response.headers.get('content-type')).toBe('text/html; charset=utf-8')
  expect(response.headers.get('content-security-policy')).toBe(security.policy)
  expect(response.headers.get('x-content-type-options')).toBe('nosniff')
})

test('names are decoded, and what follows them is not theirs', async () => {
  expect(await (await ask('strandwise-app://app/assets/two%20words.js?1#2')).text()).toBe('start()')
})

test.each([
  ['strandwise-app://app/none.html', 404],
  ['strandwise-app://app/', 404],
  ['strandwise-app://app/assets', 404],
  ['strandwise-app://app/notes.txt', 404],
  ['strandwise-app://app/%2e%2e/secret.html', 404],
  ['strandwise-app://app/..%2fsecret.html', 404],
  ['strandwise-app://app/..%2fpages-other%2fsecret.html', 404],
  ['strandwise-app://app/assets/..%2f..%2f..%2fsecret.html', 404],
  ['strandwise-app://app/%', 404],
  ['strandwise-app://app/index.html%00.html', 404],
  ['strandwise-app://app.example.org/index.html', 404],
  ['https://app/index.html', 404],
])('%s is %i, with the policy all the same', async (address, status) => {
  const response = await ask(address)
  expect(response.status).toBe(status)
  expect(await response.text()).toBe('')
  expect(response.headers.get('content-security-policy')).toBe(security.policy)
})

test('nothing can be sent', async () => {
  expect((await ask('strandwise-app://app/index.html', 'POST')).status).toBe(405)
})

test('the policy lets the page have nothing but its own, and no inline code', () => {
  const rules = new Map(security.policy.split('; ').map((rule) => [rule.slice(0, rule.indexOf(' ')), rule.slice(rule.indexOf(' ') + 1)]))
  expect(rules.get('default-src')).toBe('\'none\'')
  expect(rules.get('script-src')).toBe('\'self\'')
  expect(rules.get('connect-src')).toBe('\'none\'')
  expect(security.policy).not.toMatch(/unsafe|https?:|\*/)
})
