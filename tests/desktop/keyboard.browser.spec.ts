import { expect, test } from 'playwright/test'
import { hangerPage } from './hangerPage'

test('with keys alone: open a demo, answer, look at a part, try a remedy on', async ({ page }) => {
  const hanger = hangerPage(page)
  await hanger.open()
  const press = (...keys: string[]) => keys.reduce(async (before, key) => { await before; await page.keyboard.press(key) }, Promise.resolve())
  const focused = page.locator(':focus')

  /** Tabs on until something of that name has the focus. */
  async function tabTo(name: RegExp): Promise<void> {
    for (let steps = 0; steps < 120; steps++) {
      await press('Tab')
      const found = await focused.evaluate((element) => {
        const labels = element instanceof HTMLInputElement ? [...element.labels ?? []].map((label) => label.textContent).join(' ') : ''
        return `${element.getAttribute('aria-label') ?? ''} ${labels} ${element instanceof HTMLButtonElement ? element.textContent : ''}`.replace(/\s+/g, ' ').trim()
      })
      if (name.test(found)) return
    }
    throw new Error(`Nothing called ${name.source} can be reached by the tab key.`)
  }

  await tabTo(/^Demos/)
  await press('Enter')
  await tabTo(/^Glazed pot/)
  await press('Enter')
  await expect(hanger.sentences).toHaveText(/fails/)
  await expect(focused).toHaveText(/Demos/)

  await tabTo(/^Diameter of the cord/)
  await press('ControlOrMeta+a')
  await page.keyboard.type('5 mm')
  await expect(hanger.questions.getByRole('textbox', { name: 'Diameter of the cord', exact: true })).toHaveValue('5 mm')

  await tabTo(/^(Fixing|Hook|Shank|Ring|Legs|Seat|Turn|Wraps|Grip)/)
  await press('Home', 'ArrowDown', 'Enter')
  await expect(focused).toHaveText(/^Hook/)
  await expect(page.getByRole('heading', { name: 'Hook', exact: true })).toBeVisible()
  await expect(hanger.remedies.getByRole('button', { name: /^Try it/ }).first()).toHaveAttribute('aria-disabled', 'false')
  await tabTo(/^Try it: Use a closed eye/)
  await press('Enter')
  await expect(focused).toHaveAccessibleName(/^Take it back/)
  await press('Enter')
  await expect(focused).toHaveAccessibleName(/^Try it: Use a closed eye/)
})

test('Escape closes what was opened, and the focus goes back', async ({ page }) => {
  const hanger = hangerPage(page)
  await hanger.open()
  const help = page.getByRole('button', { name: 'Help' })
  await help.press('Enter')
  await expect(page.getByRole('dialog', { name: 'How to read this page' })).toBeVisible()
  await page.keyboard.press('Escape')
  await expect(help).toBeFocused()
  const demos = page.getByRole('button', { name: 'Demos' })
  await demos.press('Enter')
  await page.keyboard.press('Tab')
  await page.keyboard.press('Escape')
  await expect(demos).toBeFocused()
  await expect(demos).toHaveAttribute('aria-expanded', 'false')
})
