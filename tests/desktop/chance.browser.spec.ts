import { expect, test } from 'playwright/test'
import { cutOff, lengthenTexts } from './cutOff'
import { hangerPage } from './hangerPage'
import { violations } from './violations'

test('hangers are drawn by chance: bad numbers told, the same seed the same figures, called off what was drawn stays', async ({ page }) => {
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(/Fern/)
  const dialog = page.getByRole('dialog', { name: 'Chance of overload' })
  const openIt = async (): Promise<void> => {
    await page.getByRole('button', { name: 'Try out' }).click()
    await page.getByRole('button', { name: 'Chance', exact: true }).click()
  }
  await openIt()
  const [samples, seed] = [dialog.getByRole('textbox', { name: 'Hangers to draw' }), dialog.getByRole('textbox', { name: 'Seed' })]
  await expect(samples).toHaveValue('10000')
  await samples.fill('0')
  await samples.press('Enter')
  await expect(dialog.getByRole('alert')).toContainText('“0” was given')
  await samples.fill('700')
  const draw = async (from: string): Promise<string> => {
    await seed.fill(from)
    await dialog.getByRole('button', { name: 'Draw hangers' }).click()
    await expect(dialog.getByText(`700 hangers drawn from seed ${from}.`)).toBeVisible()
    return dialog.locator('.figures').innerText()
  }
  const first = await draw('5')
  expect(first).toMatch(/Before you read the figures[\s\S]*The check says[\s\S]*No figure covers[\s\S]*Of 700 hangers made like this/i)
  expect(await draw('6')).not.toBe(first)
  expect(await draw('5')).toBe(first)
  await dialog.getByRole('radio', { name: 'dry', exact: true }).check()
  await expect(dialog.getByText('How hard the weakest part works dry').first()).toBeVisible()
  await dialog.locator('summary').first().click()
  await expect(dialog.getByRole('rowheader', { name: 'just watered' })).toBeVisible()
  expect(await violations(page, 'dialog[open]', 'all')).toEqual([])
  await samples.fill('200000')
  await dialog.getByRole('button', { name: 'Draw hangers' }).press('Enter')
  await expect(dialog.locator('.figures')).toBeVisible()
  const callOff = dialog.getByRole('button', { name: 'Call off' })
  await expect(callOff).toBeFocused()
  await callOff.press('Enter')
  await expect(dialog.getByText(/^Called off: the figures are of [\d\s]+ hangers out of 200\s000 asked for\.$/)).toBeVisible()
  await page.keyboard.press('Escape')
  await hanger.enter('Width of the pot at the rim', '25 cm')
  await openIt()
  await expect(dialog.getByText('The hanger has changed since these were drawn')).toBeVisible()
  for (const [width, height] of [[1024, 700], [640, 400]] as const) {
    await page.setViewportSize({ width, height })
    await lengthenTexts(page)
    expect(await cutOff(page, 'dialog[open]'), `${width} px`).toEqual([])
  }
})
