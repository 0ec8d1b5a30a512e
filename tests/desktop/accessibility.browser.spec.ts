import { AxeBuilder } from '@axe-core/playwright'
import { expect, test, type Page } from 'playwright/test'
import { hangerPage } from './hangerPage'

async function violations(page: Page): Promise<string[]> {
  const { violations: found } = await new AxeBuilder({ page }).analyze()
  return found.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`))
}

for (const colorScheme of ['light', 'dark'] as const) {
  test(`nothing stands in anyone’s way, in the ${colorScheme}`, async ({ browser, baseURL }) => {
    const context = await browser.newContext({ colorScheme, viewport: { width: 1024, height: 700 }, ...(baseURL === undefined ? {} : { baseURL }) })
    const page = await context.newPage()
    const hanger = hangerPage(page)
    await hanger.open()
    expect(await violations(page), 'nothing answered yet').toEqual([])
    await hanger.openDemo(/Glazed pot/)
    await hanger.lookAt('Legs')
    await page.getByText('All other measures').click()
    await page.getByText('Worked sum', { exact: true }).click()
    expect(await violations(page), 'a demo, everything opened').toEqual([])
    await hanger.enter('Diameter of the cord', '5 m')
    await expect(hanger.verdict).toContainText('Being typed')
    expect(await violations(page), 'a value half typed').toEqual([])
    await hanger.verdict.getByRole('button', { name: /assumed/ }).click()
    expect(await violations(page), 'the list of what is assumed').toEqual([])
    await context.close()
  })
}

for (const width of [360, 1024]) {
  test(`nothing is cut off at ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 700 })
    const hanger = hangerPage(page)
    await hanger.open()
    await hanger.openDemo(/Glazed pot/)
    await hanger.lookAt('Legs')
    expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBeLessThanOrEqual(0)
  })
}
