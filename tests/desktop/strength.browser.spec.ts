import { expect, test, type Locator, type Page } from 'playwright/test'
import { hangerPage } from './hangerPage'
import { violations } from './violations'

/** The legs' card of a demo, with its log of pull tests. */
async function legsOf(page: Page, demo: RegExp) {
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(demo)
  const card = await hanger.lookAt('Legs')
  const log = card.getByRole('region', { name: 'Your own pull tests' })
  const row = (number: number | 'new'): Locator => log.getByRole('group', { name: number === 'new' ? 'Another pull test' : `Pull test ${number}`, exact: true })
  const ladder = card.getByRole('region', { name: 'What one strand bears' })
  return { hanger, card, log, row, ladder, counts: ladder.getByRole('listitem').filter({ hasText: 'This one counts.' }) }
}

/** Writes a test at the end of the log, as one who logs would. */
async function write(log: Locator, load: string): Promise<void> {
  await log.getByRole('group', { name: 'Another pull test' }).getByRole('textbox', { name: 'Load' }).pressSequentially(load)
}

test('three pull tests change what counts and the verdict, and undo takes them back one by one', async ({ page }) => {
  const { hanger, log, ladder, counts } = await legsOf(page, /Fern over/)
  await expect(hanger.sentences).toHaveText('The hanger holds. The place holds.')
  await expect(counts).toContainText(/grams per metre/i)
  await expect(ladder.getByRole('listitem').first()).toContainText('not known')
  for (const load of ['5.1 kg', '12 lb', '52 N']) await write(log, load)
  await expect(log.getByRole('region', { name: 'Straight, dry: 3 tests' })).toContainText(/Of these [\d.]+ kg \([\d.]+ lb\) counts/)
  await expect(counts).toContainText(/your own pull tests \(3, straight, dry\)/i)
  await expect(hanger.sentences).toHaveText('The hanger fails. The place holds.')
  const undo = page.getByRole('button', { name: 'Undo' })
  await undo.click()
  await expect(log.getByRole('region', { name: 'Straight, dry: 2 tests' })).toBeVisible()
  await undo.click()
  await undo.click()
  await expect(log.getByRole('group', { name: /^Pull test/ })).toHaveCount(0)
  await expect(counts).toContainText(/grams per metre/i)
  await expect(hanger.sentences).toHaveText('The hanger holds. The place holds.')
})

test('a test pulled as tied takes the knots’ share out of the sections, once there are three', async ({ page }) => {
  const { card, log, row } = await legsOf(page, /Fern over/)
  const sections = card.getByRole('table', { name: 'What carries where in a leg' })
  await expect(sections.getByRole('row', { name: /weakest/ })).toContainText('70 %')
  for (const [at, load] of ['21 kg', '19 kg', '22.5 kg'].entries()) {
    await write(log, load)
    await row(at + 1).getByRole('combobox', { name: 'Pulled how' }).selectOption('as tied')
  }
  await expect(log.getByRole('region', { name: 'As tied, dry: 3 tests' })).toBeVisible()
  await expect(sections.getByRole('row', { name: /weakest/ })).not.toContainText('70 %')
})

test('what cannot be read stays, is told beside it and in the form, and the last verdict stands', async ({ page }) => {
  const { hanger, log, row } = await legsOf(page, /Fern over/)
  await write(log, '20 kg')
  const time = row(1).getByRole('textbox', { name: 'Time to break' })
  await time.fill('8')
  await expect(time).toHaveAttribute('aria-invalid', 'true')
  await expect(time).toHaveAccessibleDescription(/^Pull test 1, time to break: given “8”, but the unit is missing/)
  await expect(time).toHaveValue('8')
  await expect(hanger.sentences).toHaveText('The hanger holds. The place holds.')
  await expect(hanger.verdict).toContainText('Being typed')
  await expect(hanger.questions).toContainText('One cannot be read.')
  await time.fill('8 s')
  await expect(hanger.verdict).not.toContainText('Being typed')
})

test('with keys alone: from the form to the log, a test written, chosen and taken out', async ({ page }) => {
  const { hanger, log, row } = await legsOf(page, /Glazed pot/)
  const entry = hanger.questions.getByRole('button', { name: 'Pull tests (0)' })
  await entry.focus()
  await page.keyboard.press('Enter')
  await expect(log).toBeFocused()
  await expect(log).toBeInViewport()
  await page.keyboard.press('Tab')
  await page.keyboard.type('18 kg')
  await page.keyboard.press('Tab')
  await page.keyboard.type('as')
  await expect(row(1).getByRole('combobox', { name: 'Pulled how' })).toHaveValue('tied')
  await expect(hanger.questions.getByRole('button', { name: 'Pull tests (1)' })).toBeVisible()
  await log.getByRole('button', { name: 'Remove pull test 1' }).focus()
  await page.keyboard.press('Enter')
  await expect(row(1)).toHaveCount(0)
  await expect(row('new').getByRole('textbox', { name: 'Load' })).toBeFocused()
})

test('nothing stands in anyone’s way, light or dark', async ({ page }) => {
  test.slow()
  await page.setViewportSize({ width: 1024, height: 700 })
  const { log, row, card } = await legsOf(page, /Glazed pot/)
  for (const load of ['18 kg', '18.4 kg', '18.2 kg', '17.9 kg', '8 kg']) await write(log, load)
  // What cannot be read leaves the last good answer standing, which must have heard of all five.
  await expect(log.getByRole('region', { name: 'Straight, dry: 5 tests' })).toBeVisible()
  await row(2).getByRole('textbox', { name: 'Date' }).fill('yesterday')
  await card.getByText('More answers').click()
  await expect(log).toContainText('Pull test 5 lies far from the others')
  // In the dark only the inks differ.
  for (const { colorScheme, rules } of [{ colorScheme: 'light', rules: 'all' }, { colorScheme: 'dark', rules: ['color-contrast'] }] as const) {
    await page.emulateMedia({ colorScheme })
    expect(await violations(page, '.card', rules), colorScheme).toEqual([])
  }
})

test('nothing is cut off, narrow or wide', async ({ page }) => {
  const { log, card } = await legsOf(page, /Fern over/)
  for (const load of ['18 kg', '150 N']) await write(log, load)
  for (const width of [360, 390, 1024, 1440, 2560]) {
    await page.setViewportSize({ width, height: 900 })
    expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBeLessThanOrEqual(0)
    const tooWide = await card.evaluate((element) => [...element.querySelectorAll('input, select, td, th, p, li')].filter((part) => part.closest('details') === null && part.getBoundingClientRect().right > element.getBoundingClientRect().right + 1).map(({ outerHTML }) => outerHTML.slice(0, 90)))
    expect(tooWide, `${width} px`).toEqual([])
  }
})
