// Hours of use in minutes: seeded edits in the browser edition, with the memory measured now and then where the app is
// in one and the same state. `npm run longuse -- 2000 7` (edits, seed); ends with 1 where memory, nodes or listeners grow.
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import { uniformInt } from 'pure-rand/distribution/uniformInt'
import { servedApp } from '../tools/servedApp.mjs'

const [edits = 2000, seed = 1] = process.argv.slice(2).map(Number)
/** Edits between two measurements. */
const STRETCH = 50
/** What may come on top from the second quarter of the measurements to the last, of the former; caches fill in the first. */
const MOST_GROWTH = { heap: 0.1, nodes: 0.05, listeners: 0.05 }
/** One that advises, one each for places, sheets and folders, and three that do jobs: none is ever started twice. */
const MOST_WORKERS = 7

const generator = xoroshiro128plus(seed)
const whole = (low, high) => uniformInt(generator, low, high)
const oneOf = (things) => things[whole(0, things.length - 1)]
const mean = (values) => values.reduce((sum, value) => sum + value, 0) / values.length

const app = await servedApp()
const context = await app.browser.newContext({ locale: 'en-GB', viewport: { width: 1440, height: 900 } })
const page = await context.newPage()
page.setDefaultTimeout(5000)
const said = []
let [edit, deed] = [0, '']
const note = (text) => { said.push(`edit ${edit}, ${deed}: ${text}`) }
page.on('console', (message) => { if (['error', 'warning'].includes(message.type())) note(message.text()) })
page.on('pageerror', (error) => { note(String(error)) })
const devtools = await context.newCDPSession(page)
await devtools.send('Performance.enable')

const form = page.getByRole('form', { name: 'Questions' })
const press = (name) => page.getByRole('button', { name }).first().click()

/** Opens it, giving up what is not saved, and waits until it is there. */
async function openDemo(which) {
  await page.getByRole('button', { name: 'Demos' }).click()
  await page.getByRole('button', { name: which }).click()
  const giveUp = page.getByRole('button', { name: 'Don’t save' })
  const name = page.getByRole('textbox', { name: 'Name of the hanger' })
  for (let tries = 0; tries < 50; tries++) {
    if (await giveUp.count() > 0) await giveUp.click()
    if (which.test(await name.inputValue())) return
    await page.waitForTimeout(50)
  }
  throw new Error('The demo did not open.')
}

async function openAndClose(open) {
  await open()
  const dialog = page.locator('dialog[open]')
  await dialog.waitFor()
  await page.waitForTimeout(whole(0, 400))
  await page.keyboard.press('Escape')
  await dialog.waitFor({ state: 'detached' }).catch(() => page.keyboard.press('Escape'))
}

const DEMOS = [/^Fern over/, /^Glazed pot/, /^Order for/, /^Class sample/, /^Ivy on/, /^(Three pots of herbs|Herbs in a row)/, /^Spider plant/, /^Two tiers/]
const DIALOGS = ['Catalogue', 'Shelf', 'What the place needs', 'Sheets', 'Help']
const TRIED_OUT = ['Choose sizes', 'Maps', 'Compare two hangers', 'Chance']

const deeds = {
  async text() {
    const fields = await form.locator('input[type=text]:visible').all()
    const field = oneOf(fields)
    const was = await field.inputValue() || await field.getAttribute('placeholder') || '3 mm'
    const given = oneOf([was.replace(/\d+(\.\d+)?/, (number) => String(Math.max(1, Math.round(Number(number) * whole(60, 140) / 100)))), was, '', 'half', '12 in', '40 cm', '6 kg'])
    await field.fill(given)
  },
  async choice() {
    const lists = await form.getByRole('combobox').all()
    if (lists.length === 0) return
    const list = oneOf(lists)
    await list.selectOption({ index: whole(0, await list.locator('option').count() - 1) })
  },
  async radio() {
    const radios = await form.locator('input[type=radio]:visible').all()
    if (radios.length > 0) await oneOf(radios).check()
  },
  async undo() { for (let i = whole(1, 6); i > 0; i--) await page.keyboard.press(oneOf(['Control+z', 'Control+z', 'Control+Shift+z'])) },
  async part() { await oneOf(await page.getByRole('navigation', { name: /Parts that carry/ }).getByRole('button').all()).click() },
  async situation() { await oneOf(await page.getByRole('group', { name: 'Situation' }).getByRole('radio').all()).check() },
  async remedy() {
    const tries = page.getByRole('region', { name: 'What would mend it' }).getByRole('button', { name: /^(Try it|Take it back)/ })
    if (await tries.count() > 0) await tries.first().click()
  },
  demo: () => openDemo(oneOf(DEMOS)),
  dialog: () => openAndClose(() => press(oneOf(DIALOGS))),
  tryOut: () => openAndClose(async () => {
    await press('Try out')
    await page.getByRole('button', { name: oneOf(TRIED_OUT), exact: true }).click()
  }),
}
const OFTEN = ['text', 'text', 'text', 'text', 'text', 'text', 'text', 'choice', 'choice', 'radio', 'radio', 'undo', 'undo', 'part', 'part', 'situation', 'remedy', 'remedy', 'demo', 'dialog', 'tryOut']

/** The same hanger, nothing open, everything asked for answered: only then do two measurements tell of growth. */
async function settle() {
  for (let i = 0; i < 3 && await page.locator('dialog[open]').count() > 0; i++) await page.keyboard.press('Escape')
  await openDemo(DEMOS[0])
  await page.getByText('Looking for remedies.').waitFor({ state: 'detached' })
  await page.waitForTimeout(700)
}

async function measure() {
  await settle()
  for (let i = 0; i < 2; i++) await devtools.send('HeapProfiler.collectGarbage')
  const { metrics } = await devtools.send('Performance.getMetrics')
  const of = (name) => metrics.find((metric) => metric.name === name)?.value ?? NaN
  const stored = await page.evaluate(() => Object.entries(globalThis.localStorage).reduce((sum, [key, value]) => sum + key.length + String(value).length, 0))
  return { heap: of('JSHeapUsedSize'), nodes: of('Nodes'), listeners: of('JSEventListeners'), workers: page.workers().length, stored }
}

const missed = {}
const samples = []
try {
  await page.goto(app.address)
  for (edit = 1; edit <= edits; edit++) {
    deed = oneOf(OFTEN)
    try {
      await deeds[deed]()
    } catch (error) {
      missed[deed] = [...missed[deed] ?? [], String(error).split('\n')[0]]
      await page.keyboard.press('Escape')
    }
    if (edit % STRETCH === 0) {
      const sample = await measure()
      samples.push(sample)
      console.log(`after ${edit} edits: heap ${(sample.heap / 1e6).toFixed(1)} MB, ${sample.nodes} nodes, ${sample.listeners} listeners, ${sample.workers} workers, ${sample.stored} characters stored`)
    }
  }
} finally {
  await app.close()
}

for (const [deed, errors] of Object.entries(missed)) console.log(`${deed} could not be done ${errors.length} times, first: ${errors[0]}`)
const quarter = Math.max(1, Math.floor(samples.length / 4))
const grown = Object.entries(MOST_GROWTH).flatMap(([what, most]) => {
  const [early, late] = [samples.slice(quarter, 2 * quarter), samples.slice(-quarter)].map((part) => mean(part.map((sample) => sample[what])))
  const growth = late / early - 1
  console.log(`${what}: ${(100 * growth).toFixed(1)} % from the second quarter to the last (at most ${100 * most} %)`)
  return growth > most ? [what] : []
})
console.log(said.length === 0 ? 'the page said nothing was wrong' : `the page said ${said.length} times that something is wrong, first: ${said[0]}`)
const workers = Math.max(...samples.map((sample) => sample.workers))
if (workers > MOST_WORKERS) grown.push('workers')
console.log(`${workers} workers at most (at most ${MOST_WORKERS})`)
process.exitCode = grown.length > 0 || said.length > 0 ? 1 : 0
