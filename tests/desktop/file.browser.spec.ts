import { readFileSync } from 'node:fs'
import { expect, test, type Page } from 'playwright/test'
import { hangerPage } from './hangerPage'

/** A browser that offers no file pickers: saving downloads, opening uploads. */
const withoutPickers = (page: Page) => page.addInitScript(() => {
  Reflect.deleteProperty(window, 'showSaveFilePicker')
  Reflect.deleteProperty(window, 'showOpenFilePicker')
})

/** A browser whose pickers always choose the one file "shelf.strandwise" of its private folder. */
const withOneFile = (page: Page) => page.addInitScript(() => {
  const file = async () => (await navigator.storage.getDirectory()).getFileHandle('shelf.strandwise', { create: true })
  Object.assign(window, { showSaveFilePicker: file, showOpenFilePicker: async () => [await file()] })
})

const rimOf = (page: Page) => hangerPage(page).questions.getByRole('textbox', { name: 'Width of the pot at the rim', exact: true })

test('saved, changed and opened again, the hanger is as it was typed', async ({ page }) => {
  await withoutPickers(page)
  const hanger = hangerPage(page)
  await hanger.open()
  await page.getByRole('textbox', { name: 'Name of the hanger' }).fill('Kitchen fern')
  await hanger.enter('Width of the pot at the rim', '6 3/4 in')
  const downloading = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save', exact: true }).click()
  const download = await downloading
  expect(download.suggestedFilename()).toBe('Kitchen fern.strandwise')
  const path = await download.path()
  expect(JSON.parse(readFileSync(path, 'utf8'))).toEqual({ format: 'strandwise-hanger', version: 1, name: 'Kitchen fern', pot: { rim: '6 3/4 in' } })
  await expect(page.getByText('Saved as Kitchen fern.strandwise.')).toBeVisible()

  await hanger.enter('Width of the pot at the rim', '9 in')
  const choosing = page.waitForEvent('filechooser')
  await page.getByRole('button', { name: 'Open…' }).click()
  const question = page.getByRole('dialog', { name: 'Save the changes first?' })
  await question.getByRole('button', { name: 'Don’t save' }).click()
  await (await choosing).setFiles({ name: 'again.strandwise', mimeType: 'application/json', buffer: readFileSync(path) })
  await expect(rimOf(page)).toHaveValue('6 3/4 in')
  await expect(page.getByRole('textbox', { name: 'Name of the hanger' })).toHaveValue('Kitchen fern')
})

test('a file is written again in place, and opened from the recent ones', async ({ page }) => {
  await withOneFile(page)
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.enter('Width of the pot at the rim', '17 cm')
  await page.getByRole('button', { name: 'Save', exact: true }).click()
  await expect(page.getByText('Saved as shelf.strandwise.')).toBeVisible()
  await hanger.enter('Width of the pot at the rim', '18 cm')
  await expect(page.getByText('changes not saved')).toBeVisible()
  await page.getByRole('button', { name: 'Save', exact: true }).click()
  await expect(page.getByText('changes not saved')).toBeHidden()

  await page.reload()
  await expect(rimOf(page)).toHaveValue('')
  await page.getByRole('button', { name: 'Recent' }).click()
  await page.getByRole('button', { name: 'shelf.strandwise' }).click()
  await expect(rimOf(page)).toHaveValue('18 cm')
})

test('a file that somebody else changed is not written over without asking', async ({ page }) => {
  await withOneFile(page)
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.enter('Width of the pot at the rim', '17 cm')
  await page.getByRole('button', { name: 'Save', exact: true }).click()
  await expect(page.getByText('Saved as shelf.strandwise.')).toBeVisible()
  const read = () => page.evaluate(async () => {
    const handle = await (await navigator.storage.getDirectory()).getFileHandle('shelf.strandwise')
    return (await handle.getFile()).text()
  })
  await page.evaluate(async () => {
    const handle = await (await navigator.storage.getDirectory()).getFileHandle('shelf.strandwise')
    const stream = await handle.createWritable()
    await stream.write('somebody else’s')
    await stream.close()
  })
  await hanger.enter('Width of the pot at the rim', '18 cm')
  await page.getByRole('button', { name: 'Save', exact: true }).click()
  await page.getByRole('dialog', { name: 'The file was changed elsewhere' }).getByRole('button', { name: 'Cancel' }).click()
  await expect(page.getByRole('alert')).toContainText('somebody else changed the file')
  expect(await read()).toBe('somebody else’s')
  await page.getByRole('button', { name: 'Save', exact: true }).click()
  await page.getByRole('button', { name: 'Save over it' }).click()
  await expect(page.getByText('Saved as shelf.strandwise.')).toBeVisible()
  expect(await read()).toContain('"18 cm"')
})

test('changes not saved are asked about, and Escape keeps them', async ({ page }) => {
  await withoutPickers(page)
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.enter('Width of the pot at the rim', '17 cm')
  await page.getByRole('button', { name: 'New' }).click()
  await expect(page.getByRole('dialog', { name: 'Save the changes first?' })).toBeVisible()
  await page.keyboard.press('Escape')
  await expect(page.getByRole('dialog')).toBeHidden()
  await expect(rimOf(page)).toHaveValue('17 cm')
})

test('a file that is no hanger file is refused in a sentence, and the hanger at hand stays', async ({ page }) => {
  await withoutPickers(page)
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(/Fern over/)
  const choosing = page.waitForEvent('filechooser')
  await page.getByRole('button', { name: 'Open…' }).click()
  await (await choosing).setFiles({ name: 'list.json', mimeType: 'application/json', buffer: Buffer.from('[1, 2]') })
  await expect(page.getByRole('alert')).toContainText('This is not a hanger file')
  await expect(page.getByRole('textbox', { name: 'Name of the hanger' })).toHaveValue('Fern over the sideboard')
})
