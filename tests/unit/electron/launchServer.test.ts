import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { connect } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { serve } from '../../../electron/launch/server.mjs'

let base: string
let server: Awaited<ReturnType<typeof serve>>

beforeAll(async () => {
  base = mkdtempSync(join(tmpdir(), 'server-'))
  mkdirSync(join(base, 'site/assets'), { recursive: true })
  writeFileSync(join(base, 'site/index.html'), '<!doctype html><title>Page</title>')
  writeFileSync(join(base, 'site/assets/two words.js'), 'start()')
  writeFileSync(join(base, 'secret.txt'), 'secret')
  server = await serve(join(base, 'site'), 0)
})
afterAll(async () => {
  await server.close()
  rmSync(base, { recursive: true })
})

/** Sends the bytes as they are: a proper client would tidy a malformed request. */
const send = (text: string): Promise<string> => new Promise((done, fail) => {
  const socket = connect(server.port, '127.0.0.1', () => socket.write(text, 'latin1'))
  let answer = ''
  socket.setEncoding('latin1').on('data', (chunk) => { answer += String(chunk) })
  socket.on('close', () => done(answer)).on('error', fail)
})
const ask = (path: string, more: { method?: string, host?: string } = {}): Promise<string> =>
  send(`${more.method ?? 'GET'} ${path} HTTP/1.1\r\nHost: ${more.host ?? `127.0.0.1:${server.port}`}\r\nConnection: close\r\n\r\n`)
const statusOf = (answer: string): number => Number(/^HTTP\/1\.1 (\d+)/.exec(answer)?.[1])
const bodyOf = (answer: string): string => answer.slice(answer.indexOf('\r\n\r\n') + 4)

describe('the server of the browser edition', () => {
  it('serves the page at / with the strict headers', async () => {
    const response = await fetch(`http://127.0.0.1:${server.port}/`)
    expect(response.status).toBe(200)
    expect(await response.text()).toContain('<title>Page</title>')
    expect(Object.fromEntries(response.headers)).toMatchObject({
      'content-type': 'text/html; charset=utf-8',
      'content-security-policy': "default-src 'none'; script-src 'self'; style-src 'self'; worker-src 'self'; font-src 'self'; img-src 'self' data: blob:; connect-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'; object-src 'none'",
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
      'cross-origin-opener-policy': 'same-origin',
    })
  })

  it('serves files in folders, by their decoded names and without regard to the query', async () => {
    const answer = await ask('/assets/two%20words.js?v=3')
    expect(statusOf(answer)).toBe(200)
    expect(answer).toMatch(/content-type: text\/javascript/i)
    expect(bodyOf(answer)).toContain('start()')
  })

  it('answers HEAD without a body', async () => {
    const answer = await ask('/', { method: 'HEAD' })
    expect([statusOf(answer), bodyOf(answer)]).toEqual([200, ''])
  })

  it.each(['/missing.js', '/assets', '/assets/', '/index.html/'])('does not find %s', async (path) => {
    expect(statusOf(await ask(path))).toBe(404)
  })

  it.each([
    '/../secret.txt', '/%2e%2e/secret.txt', '/..%2fsecret.txt', '/assets/../../secret.txt', '/..\\secret.txt', '/..%5csecret.txt',
    '//secret.txt', '/./../secret.txt', '/%252e%252e/secret.txt',
  ])('does not let %s out of the folder', async (path) => {
    const answer = await ask(path)
    expect(statusOf(answer)).toBe(404)
    expect(answer).not.toContain('secret')
  })

  it.each(['/%', '/%zz', '/%c3%28', '/a%00b', '/index.html%00.js', '*', 'http://127.0.0.1/'])('refuses the malformed path %s', async (path) => {
    expect(statusOf(await ask(path))).toBe(400)
  })

  it('refuses bytes that are no request, and lives on', async () => {
    expect(statusOf(await send('\0\0\0\r\n\r\n'))).toBe(400)
    expect(statusOf(await send(`GET /\0 HTTP/1.1\r\nHost: 127.0.0.1:${server.port}\r\n\r\n`))).toBe(400)
    expect(statusOf(await send('GET / HTTP/1.1\r\n\r\n'))).toBe(400)
    expect(statusOf(await ask('/'))).toBe(200)
  })

  it.each(['POST', 'PUT', 'DELETE', 'OPTIONS'])('does not allow %s', async (method) => {
    const answer = await ask('/', { method })
    expect(statusOf(answer)).toBe(405)
    expect(answer).toMatch(/allow: GET, HEAD/i)
  })

  it('refuses other names for this computer', async () => {
    for (const host of ['example.org', `example.org:${server.port}`, '127.0.0.1', `127.0.0.1:${server.port + 1}`, `127.0.0.1.example.org:${server.port}`]) {
      expect(statusOf(await ask('/', { host })), host).toBe(403)
    }
    expect(statusOf(await ask('/', { host: `localhost:${server.port}` }))).toBe(200)
  })

  it('takes the next port when the first is taken', async () => {
    const second = await serve(join(base, 'site'), server.port)
    expect(second.port).not.toBe(server.port)
    expect((await fetch(`http://127.0.0.1:${second.port}/`)).status).toBe(200)
    await second.close()
    await expect(fetch(`http://127.0.0.1:${second.port}/`)).rejects.toThrow()
  })
})
