import { expect, test, type Page } from 'playwright/test'
import { hangerPage } from './hangerPage'
import { violations } from './violations'

function placePage(page: Page) {
  const dialog = page.getByRole('dialog', { name: /^What the place needs/ })
  return {
    dialog,
    opener: page.getByRole('button', { name: 'What the place needs', exact: true }),
    row: (name: string) => dialog.locator('tbody').filter({ hasText: name }),
    asking: dialog.getByRole('heading', { name: 'Ask the customer' }),
  }
}

test('each wall and ceiling is told, and a fixing tried on is one step', async ({ page }) => {
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(/Fern/)
  const { dialog, opener, row, asking } = placePage(page)
  await opener.click()
  await expect(asking).toBeVisible()
  await expect(dialog.locator('tbody')).toHaveCount(12)
  await expect(row('Plasterboard ceiling')).toContainText('Refused.')
  await expect(row('Concrete ceiling')).toContainText(/Straight out: \d+ kg \(\d+ lb, \d+ N\)/)
  await row('Concrete ceiling').getByRole('button', { name: /^Try it/ }).press('Enter')
  const back = row('Concrete ceiling').getByRole('button', { name: /^Take it back/ })
  await expect(back).toBeFocused()
  await page.keyboard.press('Escape')
  await expect(opener).toBeFocused()
  await expect(hanger.sentences).toContainText('The place holds.')
  await page.getByRole('button', { name: 'Undo' }).click()
  await opener.click()
  await expect(row('Concrete ceiling').getByRole('button', { name: /^Try it/ })).toBeVisible()
})

test('what is beneath is chosen there, and the packet is asked for more', async ({ page }) => {
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(/Glazed/)
  const { dialog, opener, row, asking } = placePage(page)
  await opener.click()
  await expect(asking).toBeVisible()
  const kilograms = async (): Promise<number> => Number(/Straight out: (\d+) kg/.exec(await row('Concrete ceiling').innerText())?.[1])
  const overPeople = await kilograms()
  await dialog.getByRole('radio', { name: 'nothing that matters' }).check()
  await expect.poll(kilograms).toBeLessThan(overPeople)
})

test('the text to the customer is copied, or selected where it may not be', async ({ page, context }) => {
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(/Fern/)
  const { dialog, opener } = placePage(page)
  await opener.click()
  const box = dialog.getByRole('textbox', { name: 'Text to the customer' })
  await expect(box).toHaveValue(/Fern over the sideboard[\s\S]*1\. What is above or behind[\s\S]*5\. What is, or happens, beneath/)
  await context.grantPermissions(['clipboard-write'])
  await dialog.getByRole('button', { name: 'Copy the text' }).click()
  await expect(dialog.getByText('Copied.')).toBeVisible()
  await page.evaluate(() => { Object.defineProperty(navigator, 'clipboard', { value: undefined }) })
  await dialog.getByRole('button', { name: 'Copy the text' }).click()
  await expect(dialog.getByText(/^It is selected/)).toBeVisible()
  await expect(box).toBeFocused()
})

test('without pot and build it says what is missing', async ({ page }) => {
  const hanger = hangerPage(page)
  await hanger.open()
  await page.getByRole('radio', { name: /I have a hanger/ }).check()
  const { dialog, opener } = placePage(page)
  await opener.click()
  await expect(dialog.getByRole('status').first()).toContainText('There is no pot yet')
})

for (const [width, colorScheme] of [[390, 'light'], [1280, 'dark'], [2560, 'light']] as const) {
  test(`nothing stands in anyone’s way at ${width} px, in the ${colorScheme}`, async ({ page }) => {
    test.slow()
    await page.emulateMedia({ colorScheme })
    await page.setViewportSize({ width, height: 860 })
    const hanger = hangerPage(page)
    await hanger.open()
    await hanger.openDemo(/Glazed/)
    const { dialog, opener, asking } = placePage(page)
    await opener.click()
    await expect(asking).toBeVisible()
    expect(await violations(page, 'dialog.place-panel', 'all')).toEqual([])
    expect(await dialog.getByRole('group', { name: 'Walls and ceilings' }).evaluate((sheet) => sheet.scrollWidth - sheet.clientWidth)).toBeLessThanOrEqual(0)
  })
}

test('on paper it stands alone, without its buttons', async ({ page }) => {
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(/Fern/)
  const { dialog, opener, row, asking } = placePage(page)
  await opener.click()
  await expect(asking).toBeVisible()
  await page.emulateMedia({ media: 'print' })
  await expect(row('Branch of a tree')).toBeVisible()
  await expect(dialog.getByText(/1\. What is above or behind/)).toBeVisible()
  await expect(dialog.getByRole('button')).toHaveCount(0)
  await expect(page.getByRole('region', { name: 'Verdict' })).toBeHidden()
})
