import { expect, test } from 'playwright/test'
import { hangerPage } from './hangerPage'

test('nothing leaves this computer, and nothing on the page is refused or goes wrong', async ({ page, baseURL }) => {
  const asked: string[] = []
  const said: string[] = []
  page.on('request', (request) => { asked.push(request.url()) })
  page.on('console', (message) => { if (['error', 'warning'].includes(message.type())) said.push(message.text()) })
  page.on('pageerror', (error) => { said.push(String(error)) })
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(/Glazed pot/)
  await hanger.lookAt('Hook')
  await expect(hanger.remedies.getByRole('button', { name: /^Try it/ }).first()).toBeVisible()
  const strange = asked.filter((url) => !url.startsWith(baseURL ?? 'nowhere') && !/^(data|blob):/.test(url))
  expect(asked.length).toBeGreaterThan(3)
  expect(strange).toEqual([])
  expect(said).toEqual([])
})

test('charts and sums are fetched when they are first needed, not with the first screen', async ({ page }) => {
  const scripts: string[] = []
  page.on('request', (request) => { if (request.resourceType() === 'script') scripts.push(request.url().split('/').at(-1) ?? '') })
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(/Fern over/)
  await expect(hanger.remedies).toBeVisible()
  const [chart, sums] = [/^d3-/, /^evaluate-/]
  expect(scripts.filter((name) => chart.test(name) || sums.test(name))).toEqual([])
  await hanger.enter('Width of the pot at the rim', '2*8 cm')
  await page.keyboard.press('Enter')
  await expect.poll(() => scripts.filter((name) => sums.test(name)).length).toBeGreaterThan(0)
  await page.keyboard.press('Control+Shift+M')
  await expect.poll(() => scripts.filter((name) => chart.test(name)).length).toBeGreaterThan(0)
})
