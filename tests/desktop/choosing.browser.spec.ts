import { expect, test } from 'playwright/test'
import { hangerPage } from './hangerPage'
import { violations } from './violations'

test('sizes are found one by one, tried on, undone, asked anew and called off', async ({ page }) => {
  // Many hundred checks: on a busy machine they take their time.
  test.slow()
  const hanger = hangerPage(page)
  const dialog = page.getByRole('dialog', { name: /^Choose sizes/ })
  const row = (name: string) => dialog.getByRole('row').filter({ has: page.getByRole('rowheader', { name }) })
  const look = async (): Promise<void> => {
    await page.getByRole('button', { name: /^Try out/ }).click()
    await page.getByRole('button', { name: 'Choose sizes', exact: true }).click()
  }
  await hanger.open()
  await hanger.openDemo(/Fern/)
  const before = await hanger.sentences.innerText()
  await look()
  await expect(dialog.getByText('All is found.')).toBeVisible()
  await expect(dialog.getByRole('heading', { level: 3 })).toHaveText(['What this hanger can be changed to', 'For the next hanger', /^Smallest cord/, 'Not asked'])
  await expect(row('Fewest wraps')).toContainText(/83.*just holds.*Beyond it, with 2: Grip of the gathering knot.*13 checks/s)
  expect(await violations(page, 'dialog[open]', 'all')).toEqual([])

  await row('Fewest wraps').getByRole('button', { name: /^Try it on/ }).press('Enter')
  const back = row('Fewest wraps').getByRole('button', { name: /^Take it back/ })
  await expect(back).toBeFocused()
  await row('Fewest legs').getByRole('button', { name: /^Try it on/ }).click()
  await expect(row('Fewest wraps').getByRole('button', { name: /^Try it on/ })).toBeVisible()
  await row('Fewest legs').getByRole('button', { name: /^Take it back/ }).click()
  await row('Fewest wraps').getByRole('button', { name: /^Try it on/ }).click()

  const clay = await row('Widest pot').innerText()
  await dialog.getByRole('combobox', { name: 'Pot of' }).selectOption({ label: 'concrete' })
  await expect(dialog.getByText('All is found.')).toBeVisible()
  await expect(row('Widest pot')).not.toHaveText(clay)
  await page.keyboard.press('Escape')

  const card = await hanger.lookAt('Grip of the gathering knot')
  await expect(card).toContainText('just holds')
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(hanger.sentences).toHaveText(before)
  await look()
  await expect(row('Fewest wraps').getByRole('button', { name: /^Try it on/ })).toBeVisible()
  await page.keyboard.press('Escape')

  await hanger.enter('Width of the pot at the rim', '19 cm')
  await look()
  await dialog.getByRole('button', { name: 'Call off' }).click()
  await expect(dialog.getByText('Called off: what was found by then is shown.')).toBeVisible()
  await dialog.getByRole('button', { name: 'Find anew' }).click()
  await expect(dialog.getByRole('button', { name: 'Call off' })).toBeVisible()
  await page.keyboard.press('Escape')

  await hanger.enter('Width of the pot at the rim', '19 pots')
  await look()
  await expect(dialog.getByText('Nothing can be found until the marked answers can be read.')).toBeVisible()
})
