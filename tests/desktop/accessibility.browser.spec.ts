import { expect, test } from 'playwright/test'
import { hangerPage } from './hangerPage'
import { violations } from './violations'

// In the dark only the inks differ.
const LOOKS = [{ colorScheme: 'light', rules: 'all' }, { colorScheme: 'dark', rules: ['color-contrast'] }] as const

for (const { colorScheme, rules } of LOOKS) {
  test(`nothing stands in anyone’s way, in the ${colorScheme}`, async ({ page }) => {
    test.slow()
    await page.emulateMedia({ colorScheme })
    await page.setViewportSize({ width: 1024, height: 700 })
    const hanger = hangerPage(page)
    await hanger.open()
    expect(await violations(page, 'html', rules), 'nothing answered yet').toEqual([])
    await hanger.openDemo(/Glazed pot/)
    await hanger.lookAt('Legs')
    for (const title of ['Pot', 'Mix and plant', 'Water that hangs with it', 'Cord', 'How it is made up', 'Where it hangs']) await hanger.others(title).click()
    await page.getByText('Worked sum', { exact: true }).click()
    expect(await violations(page, 'html', rules), 'a demo, everything opened').toEqual([])
    await hanger.enter('Diameter of the cord', '5 m')
    await expect(hanger.verdict).toContainText('Being typed')
    // The rest of the page is as it was.
    expect(await violations(page, 'form', rules), 'a value half typed, its field').toEqual([])
    expect(await violations(page, '.verdict', rules), 'a value half typed, the verdict').toEqual([])
    await hanger.verdict.getByRole('button', { name: /assumed/ }).click()
    expect(await violations(page, 'dialog[open]', rules), 'the list of what is assumed').toEqual([])
  })
}

test('nothing is cut off, narrow or wide', async ({ page }) => {
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(/Glazed pot/)
  await hanger.lookAt('Legs')
  for (const width of [360, 1024]) {
    await page.setViewportSize({ width, height: 700 })
    expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth), `${width} px`).toBeLessThanOrEqual(0)
  }
})
