import { mkdir, readFile, writeFile } from 'node:fs/promises'
import { join, resolve } from 'node:path'
import { AxeBuilder } from '@axe-core/playwright'
import { expect, test, type Page } from 'playwright/test'
import { extractText, getDocumentProxy, getMeta } from 'unpdf'
import { desktopApp } from './desktopApp'
import { answerOpening, answerSaving } from './dialogs'

const flat = resolve(import.meta.dirname, '../../src/hanger/demos/order-for-a-rented-flat.strandwise')
/** In letters that the sheet brings its own face for, and in some that only the machine's fonts may have. */
const [OWN, FOREIGN] = ['Fougère für Анна', '吊り鉢']
const NAME = `${OWN}, ${FOREIGN}`

/** Whether a font of this machine has such letters: else they look like a character that no font has. */
const hasFontFor = (page: Page, letters: string): Promise<boolean> => page.evaluate((text) => {
  const drawn = (character: string): string => {
    const canvas = document.createElement('canvas')
    canvas.getContext('2d')?.fillText(character, 20, 40)
    return canvas.toDataURL()
  }
  return [...text].every((character) => drawn(character) !== drawn('\u{10ffff}'))
}, letters)

/** The demo's hanger under a name in several scripts, with all that a sheet asks of its maker. */
async function named(changes: object): Promise<string> {
  const { make, ...rest } = JSON.parse(await readFile(flat, 'utf8')) as { make: object }
  return JSON.stringify({ ...rest, name: NAME, make: { ...make, maker: 'Ågot Núñez', code: 'F-07', date: '2026-03-09' }, ...changes })
}

// Each goes on where the last one ended: the sheet is made but once.
test.describe.configure({ mode: 'serial' })
const desktop = desktopApp()

/** Page sizes in points, texts and title, and whether a picture made of dots is in it, which Chromium writes plainly. */
async function pdfAt(path: string) {
  const bytes = await readFile(path)
  const pdf = await getDocumentProxy(new Uint8Array(bytes))
  const { text } = await extractText(pdf, { mergePages: false })
  const sizes: string[] = []
  for (let number = 1; number <= pdf.numPages; number++) {
    const [, , width, height] = (await pdf.getPage(number)).view
    sizes.push(`${Math.round(width ?? 0)} × ${Math.round(height ?? 0)}`)
  }
  const hasDots = /\/Subtype\s*\/Image/.test(bytes.toString('latin1'))
  return { sizes, text, hasDots, isTagged: (await pdf.getMarkInfo())?.Marked, title: (await getMeta(pdf)).info['Title'] as string }
}

test('a sheet is looked through, asks for what it lacks, and becomes a PDF of its own size that can be read', async () => {
  const { app, page, folder } = desktop
  const path = join(folder, 'fern.strandwise')
  await writeFile(path, await named({}))
  await answerOpening(app, path)
  await page.getByRole('button', { name: 'Open…' }).click()
  await page.getByRole('button', { name: 'Sheets', exact: true }).click()
  const dialog = page.getByRole('dialog', { name: /^Sheets of/ })
  const save = dialog.getByRole('button', { name: 'Save as PDF…' })
  await expect(dialog.getByRole('heading', { level: 1, name: NAME })).toBeVisible({ timeout: 30_000 })
  await expect(dialog).toContainText('does not say how the maker is reached')
  await dialog.getByRole('textbox', { name: 'How you are reached' }).fill('agot@example.org')
  await expect(dialog).not.toContainText('does not say how the maker is reached', { timeout: 30_000 })
  await expect(save).toBeEnabled({ timeout: 30_000 })
  expect((await new AxeBuilder({ page }).include('dialog[open]').analyze()).violations.map(({ id }) => id)).toEqual([])

  await answerSaving(app, join(folder, 'customer.pdf'))
  await dialog.getByLabel('Paper').selectOption('a5')
  await expect(dialog.locator('article.a5')).toBeVisible({ timeout: 30_000 })
  await save.click()
  await expect(dialog.getByText('Written to customer.pdf.')).toBeVisible()
  const customer = await pdfAt(join(folder, 'customer.pdf'))
  expect(customer).toMatchObject({ sizes: ['420 × 595', '420 × 595'], hasDots: false, isTagged: true, title: `${NAME}: how to hang it` })
  const readable = await hasFontFor(page, FOREIGN) ? NAME : OWN
  for (const said of [readable, 'Heaviest pot when watered', 'Ågot Núñez', 'agot@example.org', 'F-07']) expect(customer.text[0]?.normalize('NFC')).toContain(said)
  // As a day is written where the test runs.
  expect(customer.text[0]).toMatch(/9 March 2026|March 9, 2026/)
  expect(customer.text.join(' ')).not.toMatch(/Save as|My hangers/)
  await expect(page).not.toHaveTitle(/how to hang/)

  await dialog.getByRole('radio', { name: 'tag' }).check()
  await dialog.getByLabel('Paper').selectOption('letter')
  await expect(dialog.locator('article.tag.letter')).toBeVisible({ timeout: 30_000 })
  await answerSaving(app, join(folder, 'tag.pdf'))
  await save.click()
  await expect(dialog.getByText('Written to tag.pdf.')).toBeVisible()
  expect(await pdfAt(join(folder, 'tag.pdf'))).toMatchObject({ sizes: ['612 × 792'], hasDots: false })

  await answerSaving(app, join(folder, 'tag.html'))
  await dialog.getByRole('button', { name: 'Save as HTML…' }).click()
  await expect(dialog.getByText('Written to tag.html.')).toBeVisible()
  expect(await readFile(join(folder, 'tag.html'), 'utf8')).toMatch(/^<!doctype html>[^]*Ågot Núñez/)
})

test('where there is no printer, or no writing, a sentence says so and the sheet stays', async () => {
  const { app, page, folder } = desktop
  const dialog = page.getByRole('dialog', { name: /^Sheets of/ })
  await app.evaluate(({ BrowserWindow }) => {
    for (const { webContents } of BrowserWindow.getAllWindows()) webContents.print = (_options, done) => { done?.(false, 'no valid printers available') }
  })
  await dialog.getByRole('button', { name: 'Print…' }).click()
  await expect(dialog.getByRole('alert')).toContainText('no printer was found')
  await answerSaving(app, join(folder, 'gone', 'tag.pdf'))
  await dialog.getByRole('button', { name: 'Save as PDF…' }).click()
  await expect(dialog.getByRole('alert')).toContainText('Nothing was written: the folder is no longer there')
  await expect(dialog.locator('article.tag')).toBeVisible()
})

test('a hanger is marked as sold and looked at later, and its record says so', async () => {
  const { page } = desktop
  const dialog = page.getByRole('dialog', { name: /^Sheets of/ })
  await dialog.getByRole('radio', { name: 'record' }).check()
  await dialog.getByRole('button', { name: 'Mark as sold today' }).click()
  await expect(dialog.getByRole('status').filter({ hasText: 'Sold on' })).not.toContainText('changed since')
  const entry = dialog.getByRole('group', { name: 'Another entry' })
  await entry.getByLabel('Date').fill('2026-13-40')
  const first = dialog.getByRole('group', { name: 'Entry 1' })
  await expect(first).toContainText('Inspection 1, date')
  await first.getByLabel('Date').fill('2026-10-18')
  await first.getByLabel('Note').fill('Ring polished')
  await expect(dialog.locator('article.record')).toContainText('Ring polished', { timeout: 30_000 })
  expect((await new AxeBuilder({ page }).include('dialog[open]').analyze()).violations.map(({ id }) => id)).toEqual([])
})

test('a folder of hangers becomes one PDF; what cannot be read or fails is named', async () => {
  const { app, page, folder } = desktop
  const dialog = page.getByRole('dialog', { name: /^Sheets/ })
  const hangers = join(folder, 'hangers')
  await mkdir(hangers)
  await writeFile(join(hangers, 'fern.strandwise'), await named({}))
  await writeFile(join(hangers, 'second.strandwise'), await named({ name: 'Второе кашпо' }))
  await writeFile(join(hangers, 'long.strandwise'), await named({ name: 'Überlanges '.repeat(18).trim() }))
  await writeFile(join(hangers, 'broken.strandwise'), '{"format"')
  await writeFile(join(hangers, 'bare.strandwise'), JSON.stringify({ format: 'strandwise-hanger', version: 1, name: 'Bare' }))
  await answerOpening(app, hangers)
  await dialog.getByRole('radio', { name: 'every hanger in my folder' }).check()
  await dialog.getByRole('radio', { name: 'tag' }).check()
  await dialog.getByRole('button', { name: 'Choose folder…' }).click()
  await expect(dialog.getByRole('status').filter({ hasText: 'ready' })).toContainText(/^3 sheets are ready; 2 hangers are left out/, { timeout: 60_000 })
  await expect(dialog.getByRole('listitem').filter({ hasText: 'broken.strandwise' })).toContainText('cannot be read as JSON')
  await expect(dialog.getByRole('listitem').filter({ hasText: 'bare.strandwise' })).toContainText('Not enough is known')
  await answerSaving(app, join(folder, 'all.pdf'))
  await dialog.getByRole('button', { name: 'Save as PDF…' }).click()
  await expect(dialog.getByText('Written to all.pdf.')).toBeVisible()
  const { sizes, text } = await pdfAt(join(folder, 'all.pdf'))
  expect(sizes).toEqual(['612 × 792', '612 × 792', '612 × 792'])
  expect(text.join(' ').match(/Überlanges/g)?.length).toBeGreaterThanOrEqual(18)
  expect(text.join('\n')).toContain('Второе кашпо')

  await dialog.getByRole('radio', { name: /^size chart/ }).check()
  await dialog.getByRole('button', { name: 'Make the sheets' }).click()
  await expect(dialog.locator('article.chart').getByRole('row').filter({ hasText: 'Второе кашпо' }).first()).toBeVisible({ timeout: 60_000 })
  await expect(dialog.getByRole('listitem').filter({ hasText: 'broken.strandwise' })).toContainText('cannot be read as JSON')

  await dialog.getByRole('radio', { name: 'which of them take this hanger’s pot' }).check()
  await dialog.getByRole('button', { name: 'Make the sheets' }).click()
  await expect(dialog.getByRole('status').filter({ hasText: 'tried' })).toContainText(/^4 hangers were tried; 3 take this pot; 1 could not be read/, { timeout: 60_000 })
  await expect(dialog.locator('article.chart').getByRole('row').filter({ hasText: 'Второе кашпо' })).toContainText('takes this pot')
  await dialog.getByRole('button', { name: 'Второе кашпо (F-07)' }).click()
  await page.getByRole('button', { name: 'Don’t save' }).click()
  await expect(page.getByRole('textbox', { name: 'Name of the hanger' })).toHaveValue('Второе кашпо')
})
