// What the window costs, in the browser edition on this machine's Chromium: start to usable, size of the first screen's code,
// input to repaint. Part of `npm run bench`, which prints the machine with it; never a test.
import { spawn } from 'node:child_process'
import { cpus } from 'node:os'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { chromium } from 'playwright'
import { root } from '../../electron/launch/places.mjs'
import { CHROMIUM_SWITCHES, findChromium } from '../tools/chromium.mjs'

const STARTS = 9
const KEYS = '64 mm'.repeat(8)
const port = String(20_000 + process.pid % 10_000)
const address = `http://127.0.0.1:${port}/`

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN
const whole = (value) => value.toFixed(0)

async function sizes(responses) {
  const bodies = await Promise.all(responses.map((response) => response.body()))
  const kB = (each) => `${(bodies.reduce((total, body) => total + each(body), 0) / 1000).toFixed(0)} kB`
  return `${kB(({ length }) => length)} (packed ${kB((body) => gzipSync(body).length)}) in ${bodies.length} files`
}

async function reachable() {
  for (let tries = 0; tries < 200; tries++) {
    if (await fetch(address).then(({ ok }) => ok, () => false)) return
    await new Promise((done) => { setTimeout(done, 100) })
  }
  throw new Error('The app was not served.')
}

/** Notes when the first verdict stands beside fields that take an answer, and how long each input waits for its picture. */
function watch() {
  const noted = globalThis.noted = { usable: null, inputs: [] }
  const look = () => {
    if (globalThis.document.querySelector('[role=status]')?.textContent?.trim() && globalThis.document.querySelector('form input')) noted.usable = performance.now()
    else globalThis.requestAnimationFrame(look)
  }
  globalThis.requestAnimationFrame(look)
  new PerformanceObserver((list) => {
    for (const { name, duration } of list.getEntries()) if (name === 'input' || name === 'keydown') noted.inputs.push(duration)
  }).observe({ type: 'event', durationThreshold: 16, buffered: true })
}

async function start(browser) {
  const context = await browser.newContext({ locale: 'en-GB', viewport: { width: 1440, height: 900 } })
  const page = await context.newPage()
  const code = []
  page.on('response', (response) => { if (/\.(js|css)$/.test(new URL(response.url()).pathname)) code.push(response) })
  await page.addInitScript(watch)
  await page.goto(address)
  await page.waitForFunction(() => globalThis.noted.usable !== null)
  const { usable } = await page.evaluate(() => globalThis.noted)
  const painted = await page.evaluate(() => performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? NaN)
  const early = [...code]
  return { context, page, usable: Math.max(usable, painted), painted, early }
}

async function type(page) {
  await page.getByRole('button', { name: 'Demos' }).click()
  await page.getByRole('button', { name: /Fern over/ }).click()
  const field = page.getByRole('form', { name: 'Questions' }).getByRole('textbox', { name: 'Width of the pot at the rim', exact: true })
  await field.selectText()
  await page.evaluate(() => { globalThis.noted.inputs.length = 0 })
  let presses = 0
  for (const key of KEYS) {
    await page.keyboard.press(key)
    presses += 1
    await page.waitForTimeout(60)
    if (presses % 5 === 0) await field.selectText()
  }
  await page.waitForTimeout(300)
  return page.evaluate(() => globalThis.noted.inputs)
}

const server = spawn(process.execPath, [join(root, 'electron/launch.mjs'), 'start', '--browser'], { cwd: root, env: { ...process.env, PORT: port }, stdio: 'ignore' })
const browser = await chromium.launch({ executablePath: findChromium(), args: CHROMIUM_SWITCHES })
try {
  await reachable()
  const starts = []
  for (let i = 0; i < STARTS; i++) {
    const { context, page, ...times } = await start(browser)
    if (i === STARTS - 1) {
      const isWorker = (response) => response.url().includes('.worker-')
      console.log(`first screen: ${await sizes(times.early.filter((response) => !isWorker(response)))} of code and style; the worker beside it: ${await sizes(times.early.filter(isWorker))}`)
      const waits = await type(page)
      console.log(`input to repaint: median ${whole(median(waits))} ms, longest ${whole(Math.max(...waits))} ms, of ${waits.length} events over 16 ms (the browser rounds to 8 ms)`)
    } else starts.push(times)
    await context.close()
  }
  console.log(`start to usable: median ${whole(median(starts.map(({ usable }) => usable)))} ms of ${starts.length} (first paint ${whole(median(starts.map(({ painted }) => painted)))} ms), with nothing kept from an earlier start`)
  console.log(`measured on ${cpus().length} × ${cpus()[0]?.model.trim() ?? 'unknown'}, Node ${process.version}, Chromium ${browser.version()}, painted by software`)
} finally {
  await browser.close()
  server.kill()
}
