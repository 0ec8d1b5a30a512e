import { expect, type Locator, type Page } from 'playwright/test'

/** The page of the app as one who uses it finds their way: by what things are called. */
export function hangerPage(page: Page) {
  const verdict = page.getByRole('region', { name: 'Verdict' })
  const questions = page.getByRole('form', { name: 'Questions' })
  const ladder = page.getByRole('navigation', { name: /Parts that carry/ })

  return {
    verdict,
    /** The two verdicts in a sentence each. */
    sentences: verdict.getByRole('status'),
    questions,
    ladder,
    drawing: page.getByRole('region', { name: 'Drawing' }),
    card: page.getByRole('region', { name: 'Parts', exact: true }),
    remedies: page.getByRole('region', { name: 'What would mend it' }),

    async open(): Promise<void> {
      await page.goto('/')
      await expect(verdict).toBeVisible()
    },
    async openDemo(name: RegExp): Promise<void> {
      await page.getByRole('button', { name: 'Demos' }).click()
      await page.getByRole('button', { name }).click()
    },
    async enter(label: string, text: string): Promise<void> {
      await questions.getByRole('textbox', { name: label, exact: true }).fill(text)
    },
    async choose(label: string, option: string): Promise<void> {
      await questions.getByRole('group', { name: label, exact: true }).getByRole('radio', { name: option, exact: true }).check()
    },
    async pick(label: string, option: string): Promise<void> {
      await questions.getByRole('combobox', { name: label, exact: true }).selectOption({ label: option })
    },
    /** The heading under which the other measures of a subject fold open. */
    others: (title: string): Locator => questions.locator('summary').filter({ hasText: title }),
    async lookAt(part: string): Promise<Locator> {
      await ladder.getByRole('button', { name: new RegExp(`^${part}`) }).click()
      return page.getByRole('region', { name: part, exact: true })
    },
  }
}
