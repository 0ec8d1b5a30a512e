import { expect, test } from 'playwright/test'
import { hangerPage } from './hangerPage'

test('a remedy is tried on, mends the part, and is taken back', async ({ page }) => {
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(/Glazed pot/)
  await hanger.lookAt('Hook')
  const rung = hanger.ladder.getByRole('button', { name: /^Hook/ }).first()
  const before = await rung.innerText()
  await hanger.remedies.getByRole('button', { name: /^Try it: Use a closed eye/ }).click()
  const back = hanger.remedies.getByRole('button', { name: /^Take it back: Use a closed eye/ })
  await expect(back).toBeFocused()
  await expect(rung).not.toHaveText(before)
  await expect(hanger.questions.getByRole('radio', { name: 'closed eye, welded or forged' })).toBeChecked()
  await back.click()
  await expect(hanger.questions.getByRole('radio', { name: 'open hook' })).toBeChecked()
  await expect.poll(() => rung.innerText()).toBe(before)
  await expect(page.getByRole('button', { name: 'Undo' })).toBeEnabled()
})

test('a remedy tried where nothing was chosen keeps its part in sight, though another decides then', async ({ page }) => {
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(/Glazed pot/)
  await expect(hanger.verdict).toContainText('What decides: Hook')
  await hanger.remedies.getByRole('button', { name: /^Try it: Use a closed eye/ }).click()
  await expect(hanger.verdict).toContainText('What decides: Legs')
  await expect(hanger.remedies.getByRole('button', { name: /^Take it back: Use a closed eye/ })).toBeFocused()
})

test('undo takes a tried remedy back, and redo tries it again', async ({ page }) => {
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(/Glazed pot/)
  await hanger.lookAt('Hook')
  await hanger.remedies.getByRole('button', { name: /^Try it: Use a closed eye/ }).click()
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(hanger.remedies.getByRole('button', { name: /^Try it: Use a closed eye/ })).toBeVisible()
  await page.getByRole('button', { name: 'Redo' }).click()
  await expect(hanger.remedies.getByRole('button', { name: /^Take it back: Use a closed eye/ })).toBeVisible()
})

/** What a remedy does, whatever the amount: “Use a thicker cord”, “Knot more legs”. */
const kindOf = (name: string): string => name.split(' ').slice(0, 5).join(' ')

// All are tried on by the same press, so one hanger whose every second part fails stands for others.
test('every kind of remedy that a demo offers is tried on and undone', async ({ page }) => {
  const hanger = hangerPage(page)
  await hanger.open()
  const undo = page.getByRole('button', { name: 'Undo' })
  const met = new Set<string>()
  await hanger.openDemo(/^Glazed pot/)
  await expect(undo).toBeDisabled()
  const before = await hanger.sentences.textContent()
  for (const rung of await hanger.ladder.getByRole('button').all()) {
    await rung.click()
    await expect(hanger.remedies.getByText('Looking for remedies.')).toHaveCount(0)
    for (const name of await hanger.remedies.getByRole('button', { name: /^Try it/ }).evaluateAll((all) => all.map((button) => button.getAttribute('aria-label') ?? ''))) {
      if (met.has(kindOf(name))) continue
      met.add(kindOf(name))
      await hanger.remedies.getByRole('button', { name, exact: true }).click()
      await expect(hanger.remedies.getByRole('button', { name: name.replace(/^Try it/, 'Take it back'), exact: true })).toBeVisible()
      await undo.click()
      await expect(hanger.remedies.getByRole('button', { name, exact: true })).toHaveAttribute('aria-disabled', 'false')
      await expect(hanger.sentences, name).toHaveText(before ?? '')
    }
  }
  expect(met.size).toBeGreaterThan(8)
})
