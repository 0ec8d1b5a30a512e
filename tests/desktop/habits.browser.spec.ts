import { expect, test } from 'playwright/test'
import { hangerPage } from './hangerPage'
import { violations } from './violations'

test('units hold at once and at the next start; nothing typed is lost, and the focus comes back', async ({ page }) => {
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(/Fern over/)
  await expect(hanger.verdict).toContainText(/Heaviest pot when watered: [\d.]+ kg \([\d.]+ lb\)/)
  const rim = hanger.questions.getByRole('textbox', { name: 'Width of the pot at the rim', exact: true })
  await rim.fill('18,5 cm')
  await rim.press('Control+,')

  const dialog = page.getByRole('dialog', { name: 'Units and appearance' })
  await dialog.getByRole('radio', { name: 'pounds and inches', exact: true }).check()
  await dialog.getByRole('radio', { name: /^with a comma/ }).check()
  await expect(dialog.getByRole('status')).toContainText('12,1 lb')
  await dialog.getByRole('radio', { name: 'chalk on slate' }).check()
  await expect(page.locator('html')).toHaveCSS('background-color', 'rgb(34, 41, 43)')
  expect(await violations(page, 'dialog[open]', 'all'), 'units and appearance').toEqual([])
  await page.keyboard.press('Escape')

  await expect(rim).toBeFocused()
  await expect(rim).toHaveValue('18,5 cm')
  await expect(hanger.verdict).toContainText(/Heaviest pot when watered: \d+,\d lb/)
  await page.reload()
  await expect(page.locator('html')).toHaveCSS('background-color', 'rgb(34, 41, 43)')
  await expect(hanger.ladder).toContainText('dropped 3/8 in')
})

test('by key alone a thing assumed is confirmed, the next comes under the hand, and it is taken back', async ({ page }) => {
  const hanger = hangerPage(page)
  await hanger.open()
  const assumed = hanger.verdict.getByRole('button', { name: /things? assumed/ })
  const count = async (): Promise<number> => Number.parseInt(await assumed.innerText(), 10)
  const before = await count()
  await assumed.press('Enter')
  const dialog = page.getByRole('dialog', { name: 'What is assumed' })
  await dialog.getByRole('button', { name: 'Yes, that is so: Wraps of the gathering knot: 8', exact: true }).press('Enter')
  await expect(dialog.getByRole('status')).toContainText('Wraps of the gathering knot: 8, as your own answer')
  await expect(dialog.getByRole('row').getByRole('button').first()).toBeFocused()
  await dialog.getByRole('button', { name: 'Take it back: Wraps of the gathering knot' }).press('Enter')
  await expect(dialog.getByRole('button', { name: /^Yes, that is so: Wraps of the gathering knot/ })).toBeVisible()
  await dialog.getByRole('button', { name: 'Change it: Thickness of the hook’s wire' }).press('Enter')
  await expect(hanger.questions.getByRole('textbox', { name: 'Thickness of the hook’s wire', exact: true })).toBeFocused()
  expect(await count()).toBe(before)
})
