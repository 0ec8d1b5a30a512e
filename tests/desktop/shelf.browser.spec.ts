import { readFileSync } from 'node:fs'
import { expect, test, type Page } from 'playwright/test'
import { hangerPage } from './hangerPage'
import { shelfPanel } from './shelfPanel'
import { violations } from './violations'

/** A browser that offers no file pickers: saving downloads, opening uploads. */
const withoutPickers = (page: Page) => page.addInitScript(() => {
  Reflect.deleteProperty(window, 'showSaveFilePicker')
  Reflect.deleteProperty(window, 'showOpenFilePicker')
})

const ROLL = { kind: 'cord', name: 'Roll B12', date: '2026-02-17', cord: { fibre: 'cotton', make: 'loose', diameter: '3 mm', linearDensity: '4.8 g/m', lot: 'B12' }, pullTests: [{ load: '118 N' }, { load: '31 lb' }] }
const BOWL = { kind: 'pot', name: 'Blue bowl', pot: { shape: 'bowl', rim: '19 cm', material: 'stoneware' } }
const fileOf = (...entries: readonly unknown[]): string => JSON.stringify({ format: 'strandwise-shelf', version: 1, entries })

/** Kept before the page is first opened; what the page keeps later stays over a reload. */
const withShelf = (page: Page, text: string) => page.addInitScript((kept) => {
  if (sessionStorage.getItem('begun') === null) localStorage.setItem('strandwise.shelf', kept)
  sessionStorage.setItem('begun', 'yes')
}, text)

async function importText(page: Page, name: string, text: string): Promise<void> {
  const choosing = page.waitForEvent('filechooser')
  await page.getByRole('button', { name: 'Import…' }).click()
  await (await choosing).setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) })
}

const diameterOf = (page: Page) => hangerPage(page).questions.getByRole('textbox', { name: 'Diameter of the cord', exact: true })

test('an empty shelf explains itself; what is kept outlives a reload and is used in one step', async ({ page }) => {
  const hanger = hangerPage(page)
  const shelf = shelfPanel(page)
  await hanger.open()
  await shelf.open()
  await expect(shelf.panel).toContainText('Nothing is on your shelf yet.')
  await expect(shelf.panel).toContainText('This hanger says nothing of its cord yet.')
  await page.keyboard.press('Escape')
  await expect(shelf.panel).toBeHidden()

  await hanger.enter('Diameter of the cord', '5 mm')
  await shelf.open()
  await shelf.panel.getByRole('button', { name: 'Keep this hanger’s cord…' }).click()
  await expect(shelf.panel.getByLabel('Name')).toHaveValue('5 mm')
  await expect(shelf.panel.getByLabel('Name')).toBeFocused()
  await page.keyboard.type('Thick one')
  await page.keyboard.press('Enter')
  await expect(shelf.message).toHaveText('The cord “Thick one” is on your shelf now.')
  await expect(shelf.panel.getByRole('button', { name: 'Keep this hanger’s cord…' })).toBeFocused()
  await shelf.close()

  await page.reload()
  await hanger.enter('Diameter of the cord', '2 mm')
  await hanger.pick('Fibre of the cord', 'jute')
  await shelf.open()
  await shelf.use('Thick one')
  await expect(shelf.message).toContainText('“Thick one” is in this hanger now')
  await shelf.close()
  await expect(diameterOf(page)).toHaveValue('5 mm')
  await expect(hanger.questions.getByRole('combobox', { name: 'Fibre of the cord' }), 'no mixture of two cords').toHaveValue('')
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(diameterOf(page)).toHaveValue('2 mm')
})

test('renamed, removed and taken back, with the focus kept in place', async ({ page }) => {
  await withShelf(page, fileOf(ROLL, BOWL))
  await hangerPage(page).open()
  const shelf = shelfPanel(page)
  await shelf.open()
  await expect(shelf.panel.getByRole('listitem').first()).toContainText('3 mm cotton, single-strand string, loose, 4.8 g/m, 2 pull tests, lot B12')
  await shelf.panel.getByRole('button', { name: 'Rename Blue bowl' }).click()
  await page.keyboard.type('Green bowl')
  await page.keyboard.press('Enter')
  await expect(shelf.panel.getByRole('heading', { name: 'Green bowl' })).toBeVisible()
  await shelf.panel.getByRole('button', { name: 'Remove Roll B12' }).click()
  await expect(shelf.panel.getByRole('heading', { name: 'Roll B12' })).toBeHidden()
  await expect(page.locator(':focus')).toHaveText(/^Cords/)
  await shelf.panel.getByRole('button', { name: 'Undo' }).click()
  await expect(shelf.panel.getByRole('heading', { name: 'Roll B12' })).toBeVisible()
  await page.reload()
  await shelf.open()
  await expect(shelf.panel.getByRole('heading', { level: 4 })).toHaveText(['Roll B12', 'Green bowl'])
})

test('an import lets in what can be read and tells of the rest; an export is what was kept', async ({ page }) => {
  await withoutPickers(page)
  await withShelf(page, fileOf(ROLL))
  await hangerPage(page).open()
  const shelf = shelfPanel(page)
  await shelf.open()
  await importText(page, 'friend.json', fileOf(BOWL, { kind: 'cord', name: 'Odd', cord: { diameter: '3' } }, ROLL))
  await expect(shelf.report).toContainText('friend.json: 1 entry came in, 1 was here already and 1 was refused.')
  await expect(shelf.report.getByRole('listitem')).toHaveText(['Entry 2, cord “Odd”: Diameter of the cord: given “3”, but the unit is missing: write mm, cm, m, in, ft or yd after the number. Allowed: 0.5 mm to 30 mm.'])
  await expect(page.locator(':focus')).toHaveText('What the import came to')
  const downloading = page.waitForEvent('download')
  await shelf.panel.getByRole('button', { name: 'Export…' }).click()
  const download = await downloading
  expect(download.suggestedFilename()).toBe('My shelf.json')
  expect(JSON.parse(readFileSync(await download.path(), 'utf8'))).toEqual(JSON.parse(fileOf(ROLL, BOWL)))

  await importText(page, 'fern.strandwise', '{"format": "strandwise-hanger", "version": 1}')
  await expect(shelf.problem).toContainText('This is a hanger file, not a shelf.')
  await expect(shelf.panel.getByRole('heading', { level: 4 })).toHaveText(['Roll B12', 'Blue bowl'])
})

test('where the browser keeps no more, the shelf stays and says so', async ({ page }) => {
  await page.addInitScript(() => {
    Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError') }
  })
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.enter('Diameter of the cord', '5 mm')
  const shelf = shelfPanel(page)
  await shelf.open()
  await shelf.keep('cord', 'Thick one')
  await expect(shelf.problem).toHaveText('Your shelf could not be saved: no room is left. What is on it stays only until Strandwise is closed: export it to keep it.')
  await expect(shelf.panel.getByRole('heading', { name: 'Thick one' })).toBeVisible()
})

test('the shelf stands in nobody’s way, light or dark', async ({ page }) => {
  await withoutPickers(page)
  await withShelf(page, fileOf(ROLL, BOWL))
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.enter('Diameter of the cord', '5 mm')
  const shelf = shelfPanel(page)
  await shelf.open()
  await importText(page, 'friend.json', fileOf({ kind: 'rope' }))
  await shelf.panel.getByText('All that is known').first().click()
  await shelf.panel.getByRole('button', { name: 'Keep this hanger’s cord…' }).click()
  await shelf.panel.getByRole('button', { name: 'Rename Roll B12' }).click()
  // In the dark only the inks differ.
  for (const { colorScheme, rules } of [{ colorScheme: 'light', rules: 'all' }, { colorScheme: 'dark', rules: ['color-contrast'] }] as const) {
    await page.emulateMedia({ colorScheme })
    expect(await violations(page, 'dialog[open]', rules), colorScheme).toEqual([])
  }
})

for (const width of [390, 2560]) {
  test(`nothing of the shelf is cut off at ${width} px`, async ({ page }) => {
    await withShelf(page, fileOf({ ...ROLL, name: 'A-roll-of-cord-with-a-very-long-name-and-no-blanks-in-it-at-all', note: 'x'.repeat(200) }, BOWL))
    await page.setViewportSize({ width, height: 844 })
    await hangerPage(page).open()
    const shelf = shelfPanel(page)
    await shelf.open()
    const overflow = await shelf.panel.evaluate((dialog) => [dialog, ...dialog.querySelectorAll('*')]
      .filter((element) => !element.classList.contains('visually-hidden') && element.getBoundingClientRect().right > innerWidth + 1).length)
    expect(overflow).toBe(0)
  })
}
