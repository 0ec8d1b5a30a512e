// Hours of use in minutes: seeded edits in the browser edition, with the memory measured now and then where the app is
// in one and the same state. `npm run longuse -- 2000 7` (edits, seed); ends with 1 where something grows or gets slower.
import { readFileSync } from 'node:fs'
import { cpus } from 'node:os'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import { uniformInt } from 'pure-rand/distribution/uniformInt'
import { servedApp } from '../tools/servedApp.mjs'
import { makerOn } from './deeds.mjs'
import { growth } from './growth.mjs'

const [edits = 2000, seed = 1] = process.argv.slice(2).map(Number)
/** Edits between two measurements. */
const STRETCH = 50
/** Edits in which caches fill and code is compiled; only what comes after is judged. */
const WARM = 1000
/** Least measurements a line is laid through. */
const LEAST = 8
/** What may come on top, of the value at first, by a line through all that comes after those. Memory of the process holds what Chromium has not given back; answers vary with what else the machine does, threefold too. */
const MOST_GROWTH = { heap: 0.1, nodes: 0.05, listeners: 0.05, resident: 0.25, answer: 2 }
/** One that advises, one each for places, sheets and folders, and three that do jobs: none is ever started twice. */
const MOST_WORKERS = 7

const generator = xoroshiro128plus(seed)
const app = await servedApp()
const context = await app.browser.newContext({ locale: 'en-GB', viewport: { width: 1440, height: 900 }, acceptDownloads: false })
const page = await context.newPage()
page.setDefaultTimeout(5000)
const { deeds, next, openDemo, first } = makerOn(page, (low, high) => uniformInt(generator, low, high))

const said = []
let [edit, deed] = [0, '']
const note = (text) => { said.push(`edit ${edit}, ${deed}: ${text}`) }
page.on('console', (message) => { if (['error', 'warning'].includes(message.type())) note(message.text()) })
page.on('pageerror', (error) => { note(String(error)) })
const devtools = await context.newCDPSession(page)
const processes = await app.browser.newBrowserCDPSession()
await devtools.send('Performance.enable')

/** Resident memory of the page's process and its workers, bytes; NaN where the system does not tell. */
async function resident() {
  const { processInfo } = await processes.send('SystemInfo.getProcessInfo')
  const pages = processInfo.filter(({ type }) => type === 'renderer')
  try {
    return pages.reduce((sum, { id }) => sum + 4096 * Number(readFileSync(`/proc/${id}/statm`, 'utf8').split(' ')[1]), 0)
  } catch {
    return NaN
  }
}

const looking = page.getByText('Looking for remedies.')

/** The same hanger, nothing open, everything asked for answered: only then do two measurements tell of growth. */
async function settle() {
  for (let i = 0; i < 3 && await page.locator('dialog[open]').count() > 0; i++) await page.keyboard.press('Escape')
  await openDemo(first)
  await looking.waitFor({ state: 'detached' })
  await page.waitForTimeout(700)
}

/** From a width never given before to the remedies for it, which a worker looks for, ms. */
async function answer(nth) {
  await settle()
  const began = performance.now()
  await page.getByRole('form', { name: 'Questions' }).getByRole('textbox', { name: 'Width of the pot at the rim', exact: true }).fill(`${171 + nth / 100} mm`)
  await looking.waitFor({ timeout: 1000 }).catch(() => {})
  await looking.waitFor({ state: 'detached' })
  return performance.now() - began
}

async function measure(nth) {
  const answered = await answer(nth)
  await settle()
  for (let i = 0; i < 2; i++) await devtools.send('HeapProfiler.collectGarbage')
  const { metrics } = await devtools.send('Performance.getMetrics')
  const of = (name) => metrics.find((metric) => metric.name === name)?.value ?? NaN
  const stored = await page.evaluate(() => Object.entries(globalThis.localStorage).reduce((sum, [key, value]) => sum + key.length + String(value).length, 0))
  return { heap: of('JSHeapUsedSize'), nodes: of('Nodes'), listeners: of('JSEventListeners'), resident: await resident(), answer: answered, workers: page.workers().length, stored }
}

const missed = {}
const samples = []
try {
  await page.goto(app.address)
  for (edit = 1; edit <= edits; edit++) {
    deed = next()
    try {
      await deeds[deed]()
    } catch (error) {
      missed[deed] = [...missed[deed] ?? [], String(error).split('\n')[0]]
      await page.keyboard.press('Escape')
    }
    if (edit % STRETCH === 0) {
      const sample = await measure(samples.length)
      samples.push(sample)
      console.log(`after ${edit} edits: heap ${(sample.heap / 1e6).toFixed(1)} MB, ${sample.nodes} nodes, ${sample.listeners} listeners, process ${(sample.resident / 1e6).toFixed(0)} MB, remedies after ${sample.answer.toFixed(0)} ms, ${sample.workers} workers, ${sample.stored} characters stored`)
    }
  }
} finally {
  await app.close()
}

for (const [what, errors] of Object.entries(missed)) console.log(`${what} could not be done ${errors.length} times, first: ${errors[0]}`)
const warm = samples.slice(WARM / STRETCH)
if (warm.length < LEAST) console.log(`too few measurements to lay a line through: ask for ${WARM + LEAST * STRETCH} edits or more`)
const grown = Object.entries(MOST_GROWTH).filter(([what, most]) => {
  const grew = growth(warm.map((sample) => sample[what]))
  console.log(`${what}: ${(100 * grew).toFixed(1)} % by the line after ${WARM} edits (at most ${100 * most} %)`)
  return grew > most
})
const workers = Math.max(...samples.map((sample) => sample.workers))
console.log(`${workers} workers at most (at most ${MOST_WORKERS})`)
console.log(said.length === 0 ? 'the page said nothing was wrong' : `the page said ${said.length} times that something is wrong, first: ${said[0]}`)
console.log(`measured on ${cpus().length} × ${cpus()[0]?.model.trim() ?? 'unknown'}, Node ${process.version}, Chromium ${app.browser.version()}`)
process.exitCode = grown.length > 0 || workers > MOST_WORKERS || said.length > 0 || warm.length < LEAST ? 1 : 0
