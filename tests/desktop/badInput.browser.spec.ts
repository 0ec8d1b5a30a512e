import { expect, test } from 'playwright/test'
import { hangerPage } from './hangerPage'

test('what cannot be read stays in every field, with a sentence in its place, and the last verdict stands', async ({ page }) => {
  test.slow()
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(/Glazed pot/)
  const verdict = await hanger.sentences.textContent() ?? ''
  for (const summary of await hanger.questions.locator('summary').all()) await summary.click()
  const fields = await hanger.questions.getByRole('textbox').all()
  expect(fields.length).toBeGreaterThan(20)
  let refused = 0
  for (const field of fields) {
    const before = await field.inputValue()
    await field.fill('three-ish')
    // Answers are read once a frame.
    await page.evaluate(() => new Promise((resolve) => { requestAnimationFrame(() => { requestAnimationFrame(resolve) }) }))
    if (await field.getAttribute('aria-invalid') !== 'true') {
      // A name or a note takes any words.
      await field.fill(before)
      continue
    }
    refused++
    await expect(field).toHaveValue('three-ish')
    await expect(field).toHaveAccessibleDescription(/given “three-ish”/)
    await expect(hanger.sentences).toHaveText(verdict)
    await expect(hanger.verdict).toContainText('Being typed')
    await field.fill(before)
    await expect(field).toHaveAttribute('aria-invalid', 'false')
  }
  expect(refused).toBeGreaterThan(15)
  await expect(hanger.verdict).not.toContainText('Being typed')
  await expect(hanger.sentences).toHaveText(verdict)
})
