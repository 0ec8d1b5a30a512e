import { expect, test } from 'playwright/test'
import { hangerPage } from './hangerPage'

const NONSENSE = 'three-ish'

test('what cannot be read stays in every field, with a sentence in its place, and the last verdict stands', async ({ page }) => {
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(/Glazed pot/)
  const verdict = await hanger.sentences.textContent() ?? ''
  await hanger.questions.evaluate((form) => { form.querySelectorAll('details').forEach((folded) => { folded.open = true }) })
  await expect.poll(() => hanger.questions.locator('input[type=text]').count()).toBeGreaterThan(20)
  const typed = await hanger.questions.evaluate((form, text) => [...form.querySelectorAll<HTMLInputElement>('input[type=text]')].map((field) => {
      const before = field.value
      field.value = text
      field.dispatchEvent(new Event('input', { bubbles: true }))
      return before
    }), NONSENSE)
  expect(typed.length).toBeGreaterThan(20)
  await expect(hanger.verdict).toContainText('Being typed')
  await expect(hanger.sentences).toHaveText(verdict)

  const told = await hanger.questions.evaluate((form) => [...form.querySelectorAll<HTMLInputElement>('input[type=text]')].map((field) => ({
    value: field.value,
    label: field.labels?.[0]?.textContent.trim() ?? '',
    isRefused: field.getAttribute('aria-invalid') === 'true',
    notes: document.getElementById(field.getAttribute('aria-describedby') ?? '')?.textContent ?? '',
  })))
  for (const { value, label, isRefused, notes } of told) {
    expect(value, label).toBe(NONSENSE)
    // A name or a note takes any words.
    if (isRefused) expect(notes, label).toMatch(new RegExp(`given “${NONSENSE}”`))
  }
  expect(told.filter(({ isRefused }) => isRefused).length).toBeGreaterThan(15)

  await hanger.questions.evaluate((form, before) => {
    form.querySelectorAll<HTMLInputElement>('input[type=text]').forEach((field, i) => {
      field.value = before[i] ?? ''
      field.dispatchEvent(new Event('input', { bubbles: true }))
    })
  }, typed)
  await expect(hanger.verdict).not.toContainText('Being typed')
  await expect(hanger.sentences).toHaveText(verdict)
})
