// What the window costs, in the browser edition on this machine's Chromium: start to usable, size of the first screen's code,
// input to repaint. Part of `npm run bench`, which prints the machine with it; never a test.
import { cpus } from 'node:os'
import { gzipSync } from 'node:zlib'
import { servedApp } from '../tools/servedApp.mjs'

const STARTS = 9
const CHANGES = 20
const DEMOS = [/Fern over/, /Glazed pot/, /Herbs in a row/, /Two tiers/]

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN
const whole = (value) => value.toFixed(0)

async function sizes(responses) {
  const bodies = await Promise.all(responses.map((response) => response.body()))
  const kB = (each) => `${(bodies.reduce((total, body) => total + each(body), 0) / 1000).toFixed(0)} kB`
  return `${kB(({ length }) => length)} (packed ${kB((body) => gzipSync(body).length)}) in ${bodies.length} files`
}

/** Notes when the first verdict stands beside fields that take an answer. */
function watch() {
  const noted = globalThis.noted = { usable: null }
  const look = () => {
    if (globalThis.document.querySelector('[role=status]')?.textContent?.trim() && globalThis.document.querySelector('form input')) noted.usable = performance.now()
    else globalThis.requestAnimationFrame(look)
  }
  globalThis.requestAnimationFrame(look)
}

async function start({ browser, address }) {
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

/** In the page: changes a width a number of times, and tells when the picture was there each time, ms. */
async function changeWidth(field, [given, times]) {
  const after = () => new Promise((resolve) => {
    globalThis.requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel()
      port1.onmessage = () => { resolve(performance.now()) }
      port2.postMessage(null)
    })
  })
  const drawn = () => globalThis.document.querySelector('section[aria-label="Drawing"] svg')?.innerHTML ?? ''
  const found = { painted: [], seen: new Set() }
  const [number, unit] = [parseFloat(given), given.replace(/^[\d.]+/, '')]
  for (let i = 0; i < times; i++) {
    await after()
    field.value = `${(number * (1 + (i % 5) / 100)).toFixed(2)}${unit}`
    const began = performance.now()
    field.dispatchEvent(new Event('input', { bubbles: true }))
    found.painted.push(await after() - began)
    found.seen.add(drawn())
  }
  return { ...found, seen: found.seen.size }
}

async function inputs(page) {
  const form = page.getByRole('form', { name: 'Questions' })
  const field = form.getByRole('textbox', { name: 'Width of the pot at the rim', exact: true })
  for (const demo of DEMOS) {
    await page.getByRole('button', { name: 'Demos' }).click()
    await page.getByRole('button', { name: demo }).click()
    const { painted, seen } = await field.evaluate(changeWidth, [await field.inputValue(), CHANGES])
    if (seen < 5) throw new Error('Each width should have been drawn otherwise.')
    console.log(`input to repaint, ${demo.source}: ${median(painted).toFixed(1)} ms (longest ${Math.max(...painted).toFixed(1)})`)
    await page.getByRole('button', { name: 'Undo' }).click()
  }
}

const app = await servedApp()
try {
  const starts = []
  for (let i = 0; i < STARTS; i++) {
    const { context, page, ...times } = await start(app)
    if (i === STARTS - 1) {
      const isWorker = (response) => response.url().includes('.worker-')
      console.log(`first screen: ${await sizes(times.early.filter((response) => !isWorker(response)))} of code and style; the worker beside it: ${await sizes(times.early.filter(isWorker))}`)
      await inputs(page)
    } else starts.push(times)
    await context.close()
  }
  console.log(`start to usable: median ${whole(median(starts.map(({ usable }) => usable)))} ms of ${starts.length} (first paint ${whole(median(starts.map(({ painted }) => painted)))} ms), with nothing kept from an earlier start`)
  console.log(`measured on ${cpus().length} × ${cpus()[0]?.model.trim() ?? 'unknown'}, Node ${process.version}, Chromium ${app.browser.version()}, painted by software`)
} finally {
  await app.close()
}
