import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { expect, test } from 'playwright/test'
import { desktopApp } from './desktopApp'

const desktop = desktopApp()

test('the page may run, fetch and frame nothing but its own', async () => {
  const violated = await desktop.page.evaluate(async () => {
    const seen = new Set<string>()
    document.addEventListener('securitypolicyviolation', ({ effectiveDirective }) => { seen.add(effectiveDirective) })
    const script = document.createElement('script')
    script.textContent = 'window.strangerRan = true'
    const style = document.createElement('style')
    style.textContent = 'body { color: red }'
    const frame = document.createElement('iframe')
    frame.src = 'data:text/html,frame'
    document.body.append(script, style, frame)
    await fetch('https://example.org/').catch(() => undefined)
    // The events come after the refusals.
    await new Promise((done) => { setTimeout(done, 200) })
    script.remove()
    style.remove()
    frame.remove()
    return { directives: [...seen].sort(), ran: 'strangerRan' in window }
  })
  expect(violated).toEqual({ directives: ['connect-src', 'frame-src', 'script-src-elem', 'style-src-elem'], ran: false })
})

test('the page goes nowhere and opens no windows', async () => {
  const { app, page } = desktop
  await app.evaluate(({ webContents }) => {
    const tried = new Set<string>()
    Object.assign(globalThis, { tried })
    // Which of the two comes first, and so prevents the other, is Electron's affair.
    const [contents] = webContents.getAllWebContents()
    contents?.on('will-navigate', ({ url }) => { tried.add(url) })
    contents?.on('will-frame-navigate', ({ url }) => { tried.add(url) })
  })
  const tried = (): Promise<string[]> => app.evaluate(() => [...(globalThis as unknown as { tried: Set<string> }).tried])
  await page.evaluate(() => { document.title = 'still here' })

  await page.evaluate(() => { location.href = 'https://example.org/elsewhere' })
  await expect.poll(tried).toEqual(['https://example.org/elsewhere'])
  await page.evaluate(() => { location.href = 'another.html' })
  await expect.poll(tried).toEqual(['https://example.org/elsewhere', 'strandwise-app://app/another.html'])

  expect(await page.evaluate(() => window.open('https://example.org/') === null)).toBe(true)
  expect(app.windows()).toHaveLength(1)
  expect(await page.title()).toBe('still here')
})

test('the page is granted no permission', async () => {
  const states = await desktop.page.evaluate(async () => ({
    asked: await Notification.requestPermission(),
    states: await Promise.all(['geolocation', 'notifications', 'camera', 'midi'].map(async (name) =>
      (await navigator.permissions.query({ name: name as PermissionName })).state)),
  }))
  expect(states).toEqual({ asked: 'denied', states: ['denied', 'denied', 'denied', 'denied'] })
})

test('no request leaves the app, wherever in it it is made', async () => {
  let requests = 0
  const server = createServer((_request, response) => {
    requests += 1
    response.end('reached')
  })
  await new Promise<void>((done) => { server.listen(0, '127.0.0.1', done) })
  const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`
  const refusal = await desktop.app.evaluate(async ({ BrowserWindow }, url) => {
    const other = new BrowserWindow({ show: false })
    const outcome = await other.loadURL(url).then(() => 'reached', (error: unknown) => String(error))
    other.destroy()
    return outcome
  }, address)
  await new Promise((done) => { server.close(done) })
  expect(refusal).toContain('ERR_BLOCKED_BY_CLIENT')
  expect(requests).toBe(0)
})
