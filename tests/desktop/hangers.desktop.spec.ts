import { copyFile, readFile, writeFile } from 'node:fs/promises'
import { join, resolve } from 'node:path'
import { AxeBuilder } from '@axe-core/playwright'
import { expect, test } from 'playwright/test'
import { desktopApp } from './desktopApp'
import { answerOpening, answerSaving } from './dialogs'

const desktop = desktopApp()
const demo = resolve(import.meta.dirname, '../../src/hanger/demos/order-for-a-rented-flat.strandwise')

test('the hangers of a folder are listed with their verdicts, found by tag code, and opened; the folder is known in the next run', async () => {
  const inFolder = (name: string): string => join(desktop.folder, name)
  await copyFile(demo, inFolder('flat.strandwise'))
  await writeFile(inFolder('tagged.strandwise'), JSON.stringify({ format: 'strandwise-hanger', version: 1, name: 'Landing', make: { code: 'A7' }, cord: { lot: 'grey roll' } }))
  await writeFile(inFolder('broken.strandwise'), '{"format"')
  await copyFile(demo, inFolder('notes.txt'))
  await answerOpening(desktop.app, desktop.folder)

  const open = desktop.page.getByRole('button', { name: 'My hangers' })
  const panel = desktop.page.getByRole('dialog', { name: /^My hangers/ })
  const row = (text: string) => panel.getByRole('listitem').filter({ hasText: text })
  await open.click()
  await expect(panel).toContainText('Choose the folder you keep your hanger files in')
  await panel.getByRole('button', { name: 'Choose folder…' }).click()
  await expect(panel.getByRole('listitem')).toHaveCount(3)
  await expect(row('flat.strandwise')).toContainText(/hanger.*\. .*place.*\./)
  await expect(row('flat.strandwise').locator('[data-link="leg"]').first()).toBeAttached()
  await expect(row('flat.strandwise')).toContainText('Heaviest pot when watered', { timeout: 20_000 })
  await expect(row('broken.strandwise')).toContainText('cannot be read as JSON')
  expect((await new AxeBuilder({ page: desktop.page }).include('dialog[open]').analyze()).violations.map(({ id }) => id)).toEqual([])

  await panel.getByRole('radio', { name: 'table' }).check()
  const heads = (): Promise<string[]> => panel.locator('tbody th button').allInnerTexts()
  await expect(panel.getByRole('columnheader', { name: 'Hanger', exact: true })).toHaveAttribute('aria-sort', 'ascending')
  const byName = await heads()
  await panel.getByRole('button', { name: 'Hanger', exact: true }).press('Enter')
  expect(await heads()).toEqual([...byName].reverse())
  await panel.getByRole('button', { name: 'Just watered', exact: true }).click()
  await expect(panel.getByRole('columnheader', { name: 'Just watered' })).toHaveAttribute('aria-sort', 'ascending')
  await expect(panel.getByRole('row').last()).toContainText('cannot be read as JSON')
  expect((await new AxeBuilder({ page: desktop.page }).include('dialog[open]').analyze()).violations.map(({ id }) => id)).toEqual([])
  await answerSaving(desktop.app, inFolder('table.csv'))
  await panel.getByRole('button', { name: 'Save table (CSV)…' }).click()
  await expect(panel.getByText('Written to table.csv.')).toBeVisible()
  expect((await readFile(inFolder('table.csv'), 'utf8')).split('\n')[0]).toMatch(/^line,file,name,verdict,.*,problems$/)
  await panel.getByRole('radio', { name: 'list' }).check()

  await panel.getByLabel('Find by name, tag code or lot').fill('a7')
  await expect(panel.getByRole('listitem')).toHaveCount(1)
  await panel.getByRole('button', { name: 'Open Landing' }).click()
  await expect(panel).toBeHidden()
  await expect(desktop.page.getByRole('textbox', { name: 'Name of the hanger' })).toHaveValue('Landing')
  await expect(desktop.page.getByText('tagged.strandwise', { exact: true })).toBeVisible()

  await desktop.restart()
  await desktop.page.getByRole('button', { name: 'My hangers' }).click()
  await expect(desktop.page.getByRole('dialog', { name: /^My hangers in files-/ }).getByRole('listitem')).toHaveCount(3)
})
