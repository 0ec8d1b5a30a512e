import { servedApp } from '../tools/servedApp.mjs'
import { makerOn } from './deeds.mjs'
const app = await servedApp()
const context = await app.browser.newContext({ locale: 'en-GB', viewport: { width: 1440, height: 900 } })
const page = await context.newPage()
page.setDefaultTimeout(5000)
let n = 1
const { openDemo } = makerOn(page, (a, b) => a + (n++ * 7919) % (b - a + 1))
const devtools = await context.newCDPSession(page)
await devtools.send('Performance.enable')
await page.goto(app.address)
const form = page.getByRole('form', { name: 'Questions' })
const field = form.getByRole('textbox', { name: 'Width of the pot at the rim', exact: true })
const press = (name) => page.getByRole('button', { name, exact: true }).first().click()
async function measure() {
  await openDemo(/^Fern over/)
  await page.getByText('Looking for remedies.').waitFor({ state: 'detached' })
  await page.waitForTimeout(700)
  for (let i = 0; i < 3; i++) { await devtools.send('HeapProfiler.collectGarbage'); await page.waitForTimeout(50) }
  const { metrics } = await devtools.send('Performance.getMetrics')
  const of = (name) => metrics.find((m) => m.name === name).value
  return [of('JSHeapUsedSize') / 1e3, of('Nodes'), of('JSEventListeners')]
}
const dialog = (open) => async () => { await open(); const d = page.locator('dialog[open]'); await d.waitFor(); await page.waitForTimeout(150); await page.keyboard.press('Escape'); await d.waitFor({ state: 'detached' }) }
const tryOut = (name) => dialog(async () => { await press('Try out'); await page.getByRole('button', { name, exact: true }).click() })
const ladder = page.getByRole('navigation', { name: /Parts that carry/ })
const deeds = {
  nothing: async () => {},
  demo: () => openDemo(/^Glazed pot/),
  text: async () => { await field.fill(`${150 + n++ % 40 + n / 1000} mm`); await page.waitForTimeout(400) },
  undo: async () => { await field.fill(`${150 + n++ % 40} mm`); await page.keyboard.press('Tab'); await page.keyboard.press('Control+z'); await page.keyboard.press('Control+Shift+z') },
  part: async () => { const all = await ladder.getByRole('button').all(); await all[n++ % all.length].click() },
  situation: async () => { const all = await page.getByRole('group', { name: 'Situation' }).getByRole('radio').all(); await all[n++ % all.length].check() },
  arrangement: async () => { const g = form.getByRole('group', { name: 'How it is arranged' }).getByRole('radio'); await g.nth(n++ % 4).check(); await page.waitForTimeout(200) },
  save: async () => { await page.keyboard.press('Control+s'); await page.waitForTimeout(100) },
  measure: dialog(() => form.locator('button:visible').filter({ hasText: /^Measure it/ }).first().click()),
  catalogue: dialog(() => press('Catalogue')), shelf: dialog(() => press('Shelf')), place: dialog(() => press('What the place needs')),
  sheets: dialog(() => press('Sheets')), help: dialog(() => press('Help')),
  choosing: tryOut('Choose sizes'), maps: tryOut('Maps'), compare: tryOut('Compare two hangers'), chance: tryOut('Chance'),
}
const N = Number(process.argv[2] ?? 30)
for (const [name, deed] of Object.entries(deeds)) {
  try {
    const times = async (k) => { for (let i = 0; i < k; i++) await deed() }
    await times(8); const a = await measure(); await times(N); const b = await measure(); await times(N); const c = await measure()
    console.log(name.padEnd(12), 'per deed: heap kB', b.map((x, i) => ((x - a[i]) / N).toFixed(2)).join(' / '), ' then', c.map((x, i) => ((x - b[i]) / N).toFixed(2)).join(' / '))
  } catch (e) { console.log(name, 'failed', String(e).split('\n').slice(0, 4).join(' | ')); await page.keyboard.press('Escape'); await page.keyboard.press('Escape') }
}
await app.close()
