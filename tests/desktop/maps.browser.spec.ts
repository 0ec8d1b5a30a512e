import { expect, test } from 'playwright/test'
import { cutOff, lengthenTexts } from './cutOff'
import { hangerPage } from './hangerPage'
import { violations } from './violations'

test('a map comes row by row, is read at a point by keys, tried on and taken back; all parts along one answer', async ({ page }) => {
  // Many hundred checks: on a busy machine they take their time.
  test.slow()
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(/Fern/)
  await page.getByRole('button', { name: 'Try out' }).click()
  await page.getByRole('button', { name: 'Maps', exact: true }).click()
  const dialog = page.getByRole('dialog', { name: /^Maps/ })
  await expect(dialog.getByText('Drawn from 441 whole checks.')).toBeVisible({ timeout: 30_000 })
  await expect(dialog.locator('.limit').first()).toBeAttached()
  const along = dialog.getByRole('slider', { name: 'Width of the pot at the rim' })
  await along.focus()
  const before = await dialog.getByText(/^At .* and .*: /).innerText()
  await along.press('ArrowLeft')
  await expect(dialog.getByText(/^At .* and .*: /)).not.toHaveText(before)
  await expect(along).toHaveAttribute('aria-valuetext', /\d/)
  await dialog.getByRole('button', { name: 'Try this point on' }).click()
  await expect(dialog.getByText('It is tried on')).toBeVisible()
  await dialog.getByRole('button', { name: 'Take it back' }).click()
  await expect(dialog.getByText('Drawn from 441 whole checks.')).toBeVisible({ timeout: 30_000 })
  await dialog.locator('summary').first().click()
  await expect(dialog.getByRole('columnheader').nth(1)).toBeVisible()
  await dialog.locator('summary').first().click()
  expect(await violations(page, 'dialog[open]', 'all')).toEqual([])
  await page.emulateMedia({ media: 'print' })
  await expect(dialog.locator('figure')).toBeVisible()
  await expect(along).toBeHidden()
  await expect(hanger.verdict).toBeHidden()
  await page.emulateMedia({ media: null })
  await dialog.locator('select').first().selectOption('lines')
  await expect(dialog.getByText(/^How hard each part works along/).first()).toBeVisible({ timeout: 30_000 })
  await expect(dialog.locator('figure svg text', { hasText: /^Legs$/ })).toBeVisible()
  for (const [width, height] of [[1024, 700], [640, 400]] as const) {
    await page.setViewportSize({ width, height })
    await lengthenTexts(page)
    expect(await cutOff(page, 'dialog[open]'), `${width} px`).toEqual([])
  }
  await page.keyboard.press('Escape')
  await expect(dialog).toBeHidden()
})
