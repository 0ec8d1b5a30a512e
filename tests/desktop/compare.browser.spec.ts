import { expect, test } from 'playwright/test'
import { cutOff, lengthenTexts } from './cutOff'
import { hangerPage } from './hangerPage'
import { violations } from './violations'

test('a hanger is kept aside, changed, set beside itself, and taken up again', async ({ page }) => {
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(/Fern/)
  const dialog = page.getByRole('dialog', { name: 'Compare two hangers' })
  const openIt = async (): Promise<void> => {
    await page.getByRole('button', { name: 'Try out' }).click()
    await page.getByRole('button', { name: 'Compare two hangers' }).click()
  }
  const cellsOf = (name: string) => dialog.getByRole('row').filter({ has: page.getByRole('rowheader', { name, exact: true }) }).getByRole('cell')
  await openIt()
  await dialog.getByRole('button', { name: 'Keep this one to compare' }).click()
  await expect(dialog.getByText('They do not differ in any answer.')).toBeVisible()
  await page.keyboard.press('Escape')
  await hanger.enter('Strands in each leg', '8')
  await openIt()
  await expect(cellsOf('Strands in each leg').first()).toHaveText('8')
  await expect(cellsOf('Legs').last()).toHaveText('A is better')
  await expect(dialog.getByRole('img')).toHaveCount(2)
  const kept = (await cellsOf('Strands in each leg').last().textContent()) ?? ''
  await dialog.getByRole('button', { name: 'Swap A and B' }).click()
  await expect(cellsOf('Strands in each leg')).toHaveText([kept, '8'])
  await expect(cellsOf('Legs').last()).toHaveText('B is better')
  expect(await violations(page, 'dialog[open]', 'all')).toEqual([])

  await dialog.getByRole('button', { name: 'Go on with the other one' }).click()
  await expect(dialog.getByText(/^You now work on the other one\./)).toBeVisible()
  await expect(cellsOf('Strands in each leg')).toHaveText([kept, '8'])
  const choice = dialog.getByRole('combobox', { name: 'Compare with' })
  await choice.selectOption({ label: 'Spider plant on the study wall: it just holds' })
  await expect(cellsOf('Ring').last()).toHaveText(/^only in [AB]$/)
  await page.emulateMedia({ media: 'print' })
  await expect(hanger.questions).toBeHidden()
  await expect(dialog.getByRole('table').first()).toBeVisible()
  await page.emulateMedia({ media: 'screen' })
  await page.keyboard.press('Escape')
  await expect(hanger.questions.getByRole('textbox', { name: 'Strands in each leg', exact: true })).toHaveValue(kept)
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(hanger.questions.getByRole('textbox', { name: 'Strands in each leg', exact: true })).toHaveValue('8')
  await openIt()
  await expect(cellsOf('Ring').last()).toHaveText(/^only in [AB]$/)
  for (const [width, height] of [[1024, 700], [640, 400]] as const) {
    await page.setViewportSize({ width, height })
    await lengthenTexts(page)
    expect(await cutOff(page, 'dialog[open]'), `${width} px`).toEqual([])
  }
})
