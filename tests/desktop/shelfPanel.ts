import { expect, type Page } from 'playwright/test'

/** The shelf as one who uses it finds their way on it. */
export function shelfPanel(page: Page) {
  const panel = page.getByRole('dialog', { name: 'Your shelf' })
  return {
    panel,
    message: panel.locator('header').getByRole('status'),
    problem: panel.locator('header').getByRole('alert'),
    report: panel.getByRole('region', { name: 'What the import came to' }),

    async open(): Promise<void> {
      await page.getByRole('button', { name: 'Shelf', exact: true }).click()
      await expect(panel).toBeVisible()
    },
    close: (): Promise<void> => panel.getByRole('button', { name: 'Close' }).click(),
    async keep(kind: string, name: string): Promise<void> {
      await panel.getByRole('button', { name: `Keep this hanger’s ${kind}…` }).click()
      const form = panel.getByRole('form', { name: `Keep this hanger’s ${kind}` })
      await form.getByLabel('Name').fill(name)
      await form.getByRole('button', { name: 'Keep it' }).click()
    },
    use: (name: string): Promise<void> => panel.getByRole('button', { name: `Use in this hanger ${name}`, exact: true }).click(),
  }
}
