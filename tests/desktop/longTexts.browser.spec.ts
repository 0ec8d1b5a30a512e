import { expect, test } from 'playwright/test'
import { cutOff, lengthenTexts } from './cutOff'
import { hangerPage } from './hangerPage'

/** Half of 1280 by 800 is what a window of that size shows at 200 %. */
const SIZES = [[1024, 700], [640, 400], [1440, 900]] as const
const DIALOGS = ['Catalogue', 'Shelf', 'My hangers', 'What the place needs', 'Sheets', 'Help'] as const

test('with every text two fifths longer nothing is cut off, at several sizes', async ({ page }) => {
  test.slow()
  const hanger = hangerPage(page)
  await hanger.open()
  const look = async (what: string, within: string, sizes: readonly (readonly [number, number])[] = SIZES) => {
    for (const [width, height] of sizes) {
      await page.setViewportSize({ width, height })
      await lengthenTexts(page)
      expect(await cutOff(page, within), `${what}, ${width} px`).toEqual([])
      expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth), `${what} at ${width} px scrolls sideways`).toBeLessThanOrEqual(0)
    }
  }
  await look('nothing answered yet', 'body')
  await hanger.openDemo(/Glazed pot/)
  await hanger.lookAt('Legs')
  await look('a demo', 'body')
  for (const name of DIALOGS) {
    await page.getByRole('button', { name }).first().click()
    await expect(page.getByRole('dialog')).toBeVisible()
    if (name === 'Sheets') await expect(page.locator('dialog article')).toBeVisible({ timeout: 30_000 })
    // A dialog leaves off growing below the widest.
    await look(name, 'dialog[open]', SIZES.slice(0, 2))
    await page.keyboard.press('Escape')
  }
})
