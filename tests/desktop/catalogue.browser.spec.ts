import { expect, test, type Page } from 'playwright/test'
import { hangerPage } from './hangerPage'
import { violations } from './violations'

function cataloguePage(page: Page) {
  const dialog = page.getByRole('dialog', { name: 'Catalogue' })
  return {
    dialog,
    opener: page.getByRole('button', { name: 'Catalogue', exact: true }),
    field: dialog.getByRole('textbox', { name: 'Find' }),
    count: dialog.getByRole('status'),
    list: dialog.getByRole('group', { name: 'Values found' }),
    subjects: dialog.getByRole('navigation', { name: 'Subjects' }),
  }
}

test('a value is found under another name of the trade, with figure, basis and source', async ({ page }) => {
  await hangerPage(page).open()
  const { opener, field, count, list } = cataloguePage(page)
  await opener.click()
  await expect(count).toHaveText(/^\d+ values: \d+ published, .*\d+ from memory$/)
  await field.fill('abaca')
  await expect(count).toHaveText(/^\d+ of \d+ values.*Searched too: manila/)
  const ropes = list.getByRole('region', { name: /^Rope tables/ })
  await expect(ropes).toContainText('Manila rope, 8 mm', { ignoreCase: true })
  await expect(ropes.getByText('39.3 g/m')).toBeVisible()
  await expect(ropes.getByText(/Cordage Institute CI 1308-96/).first()).toBeVisible()
  await expect(ropes.getByText('published').first()).toBeVisible()
  await expect(list.getByRole('region', { name: /^Woods/ })).toHaveCount(0)
})

test('with keys alone: open, search, try a word, go to a subject, close', async ({ page }) => {
  await hangerPage(page).open()
  const { dialog, opener, field, count, list, subjects } = cataloguePage(page)
  await page.keyboard.press('ControlOrMeta+k')
  await expect(field).toBeFocused()
  await page.keyboard.type('coton')
  await expect(list).toContainText('The catalogue has nothing under “coton”.')
  await list.getByRole('button', { name: 'cotton', exact: true }).press('Enter')
  await expect(field).toHaveValue('cotton')
  await expect(count).not.toHaveText(/^0 of/)
  await subjects.getByRole('button', { name: /^Friction/ }).press('Enter')
  await expect(list.getByRole('heading', { name: /^Friction/ })).toBeFocused()
  await expect(list.getByRole('heading', { name: /^Friction/ })).toBeInViewport({ ratio: 1 })
  await expect(field).toBeInViewport({ ratio: 1 })
  await field.focus()
  await page.keyboard.press('Escape')
  await expect(dialog).toBeHidden()
  await opener.press('Enter')
  // The word is still there, to be typed over.
  await page.keyboard.type('oak')
  await expect(field).toHaveValue('oak')
  await page.keyboard.press('Escape')
  await expect(dialog).toBeHidden()
  await expect(opener).toBeFocused()
})

for (const colorScheme of ['light', 'dark'] as const) {
  test(`nothing stands in anyone’s way, in the ${colorScheme}`, async ({ page }) => {
    test.slow()
    await page.emulateMedia({ colorScheme })
    await page.setViewportSize({ width: 1024, height: 700 })
    await hangerPage(page).open()
    const { opener, field, list } = cataloguePage(page)
    await opener.click()
    await list.getByText('What the marks mean').click()
    // A few subjects show every kind of line; in the dark only the inks differ.
    const rules = colorScheme === 'light' ? 'all' : ['color-contrast']
    await field.fill('cotton')
    expect(await violations(page, 'dialog[open]', rules), 'values listed').toEqual([])
    await field.fill('zeppelin')
    await expect(list).toContainText('nothing under')
    expect(await violations(page, 'dialog[open]', rules), 'nothing found').toEqual([])
  })
}

for (const width of [360, 1024]) {
  test(`nothing is cut off at ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 700 })
    await hangerPage(page).open()
    const { opener, dialog, list } = cataloguePage(page)
    await opener.click()
    await expect(dialog).toBeInViewport({ ratio: 1 })
    const tooWide = await list.evaluate((element) => [...element.querySelectorAll('h3, h4, dt, dd, p')].filter((part) => part.getBoundingClientRect().right > element.getBoundingClientRect().right).map(({ textContent }) => textContent))
    expect(tooWide).toEqual([])
    expect(await list.evaluate(({ scrollWidth, clientWidth }) => scrollWidth - clientWidth)).toBeLessThanOrEqual(0)
  })
}
