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
