import { expect, test } from 'playwright/test'
import { hangerPage } from './hangerPage'

const DEMOS = [
  { name: /Fern over the sideboard/, verdict: /^The hanger holds\. The place holds\.$/ },
  { name: /Glazed pot by the reading chair/, verdict: /fails\./ },
  { name: /Order for a rented flat/, verdict: /Not enough is known of the place\.$/ },
  { name: /Class sample/, verdict: /^The hanger just holds\. The place holds\.$/ },
  { name: /Ivy on a bracket/, verdict: /^The hanger just holds\. The place holds\.$/ },
]

for (const { name, verdict } of DEMOS) {
  test(`the demo ${name.source} comes to its verdict`, async ({ page }) => {
    const hanger = hangerPage(page)
    await hanger.open()
    await hanger.openDemo(name)
    await expect(page.getByRole('textbox', { name: 'Name of the hanger' })).toHaveValue(name)
    await expect(hanger.sentences).toHaveText(verdict)
    await expect(hanger.drawing.getByRole('img')).toBeVisible()
    for (const situation of ['dry', 'standing in water', 'one strand gone', 'one leg gone', 'bumped']) {
      await hanger.drawing.getByRole('radio', { name: situation }).check()
      await expect(hanger.drawing.getByRole('img')).toBeVisible()
    }
  })
}
