import { spawnSync } from 'node:child_process'
import { resolve } from 'node:path'
import { expect, test, type Page } from 'playwright/test'
import { hangerPage } from './hangerPage'
import { violations } from './violations'

const root = resolve(import.meta.dirname, '../..')
const STATES = ['dry', 'watered', 'flooded'] as const
type State = (typeof STATES)[number]

interface Mass {
  readonly low: number
  readonly likely: number
}

/** What the command line says hangs of the same hanger, pot and hanger together, kg; these hang indoors, where the hanger weighs the same in every state. */
function weighed(file: string): Readonly<Record<State, Mass>> {
  const { stdout } = spawnSync(process.execPath, ['electron/launch.mjs', 'cli', 'check', `src/hanger/demos/${file}`, '--json'], { cwd: root, encoding: 'utf8' })
  const { weights, geometry: { hangerMass } } = JSON.parse(stdout) as { readonly weights: Readonly<Record<State, Mass>>, readonly geometry: { readonly hangerMass: Mass } }
  const all = (state: State): Mass => ({ low: weights[state].low + hangerMass.low, likely: weights[state].likely + hangerMass.likely })
  return { dry: all('dry'), watered: all('watered'), flooded: all('flooded') }
}

function weightsOn(page: Page) {
  const region = page.getByRole('region', { name: 'What it weighs' })
  const table = region.getByRole('table', { name: 'What it weighs, part by part' })
  /** Kilograms of a row of the table, state by state. */
  const kilograms = async (row: string): Promise<readonly number[]> =>
    (await table.getByRole('row', { name: new RegExp(`^${row}`) }).getByRole('cell').allInnerTexts()).map((text) => (text === '—' ? 0 : Number.parseFloat(text)))
  return { region, table, kilograms }
}

// The page gives three figures.
const close = (found: number, expected: number): void => { expect(Math.abs(found - expected) / expected).toBeLessThan(0.005) }

for (const [file, name] of [['fern-over-the-sideboard.strandwise', /Fern over/], ['glazed-pot-by-the-reading-chair.strandwise', /Glazed pot/]] as const) {
  test(`bars and numbers add up to what the command line says: ${name.source}`, async ({ page }) => {
    const hanger = hangerPage(page)
    await hanger.open()
    await hanger.openDemo(name)
    const { region, kilograms } = weightsOn(page)
    const weights = weighed(file)
    const totals = await kilograms('all that hangs')
    STATES.forEach((state, i) => close(totals[i] ?? NaN, weights[state].likely))
    const ends = await kilograms('lightest to heaviest')
    STATES.forEach((state, i) => close(ends[i] ?? NaN, weights[state].low))
    const lengths = await region.locator('.bar').evaluateAll((bars) => bars.map((bar) => Math.max(...[...bar.querySelectorAll('.edge')].map((edge) => edge.getBoundingClientRect().right)) - bar.getBoundingClientRect().left))
    STATES.forEach((state, i) => close((lengths[i] ?? NaN) / (lengths[0] ?? NaN), weights[state].likely / weights.dry.likely))
  })
}

test('a weighing is seen at once, with the state it was made in', async ({ page }) => {
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(/Glazed pot/)
  const { region, kilograms } = weightsOn(page)
  const before = await kilograms('all that hangs')
  await hanger.enter('Weighed, pot and plant together', '21 kg')
  await hanger.choose('When it was weighed', 'just watered')
  await expect(region).toContainText('just watered, as you weighed it')
  const after = await kilograms('all that hangs')
  expect(after[1]).toBeGreaterThan(21)
  expect(after[1]).not.toBe(before[1])
  await page.getByRole('button', { name: 'Undo' }).click()
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(region).not.toContainText('as you weighed it')
  expect(await kilograms('all that hangs')).toEqual(before)
})

test('care names the day to replace it once it is known when it was made', async ({ page }) => {
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(/Fern over/)
  const care = page.getByRole('region', { name: 'Care', exact: true })
  await expect(care).toContainText('enter the date it was made to see the day')
  await hanger.others('How it is made up').click()
  const date = hanger.questions.getByRole('textbox', { name: 'Date it was made' })
  await expect(date).toHaveAttribute('placeholder', 'year-month-day')
  await date.fill('2026-02-14')
  await expect(care).toContainText('Replace it by 14 February 2029')
  await expect(care).toContainText('slack')
})

test('printed: weights, care and a reserve of one’s own with its reason, but no guide', async ({ page }) => {
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(/Fern over/)
  await hanger.others('Where it hangs').click()
  await hanger.enter('A reserve of your own', '2.4')
  await hanger.enter('Reason for that reserve', 'hangs over a lined basin')
  await page.emulateMedia({ media: 'print' })
  const { region } = weightsOn(page)
  await expect(region.getByRole('table')).toBeVisible()
  await expect(region.getByText('How to weigh it')).toBeHidden()
  await expect(page.getByRole('region', { name: 'Care', exact: true })).toBeVisible()
  await expect(hanger.verdict).toContainText('The reserve is 2.4 instead of the usual 2. Reason given: “hangs over a lined basin”.')
})

test('nothing stands in anyone’s way, light or dark', async ({ page }) => {
  await page.setViewportSize({ width: 1024, height: 700 })
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(/Glazed pot/)
  // In the dark only the inks differ.
  for (const { colorScheme, rules } of [{ colorScheme: 'light', rules: 'all' }, { colorScheme: 'dark', rules: ['color-contrast'] }] as const) {
    await page.emulateMedia({ colorScheme })
    expect(await violations(page, 'section.picture', rules), colorScheme).toEqual([])
  }
})

test('nothing is cut off, narrow or wide', async ({ page }) => {
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(/Glazed pot/)
  const { region } = weightsOn(page)
  for (const width of [360, 1024, 2560]) {
    await page.setViewportSize({ width, height: 900 })
    const tooWide = await region.evaluate((element) => [...element.querySelectorAll('td, th, p, rect, text')].filter((part) => part.getBoundingClientRect().right > element.getBoundingClientRect().right + 1).map(({ outerHTML }) => outerHTML.slice(0, 90)))
    expect(tooWide, `${width} px`).toEqual([])
  }
})
