import { mkdir, readFile, readdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from 'playwright/test'
import { desktopApp } from './desktopApp'
import { answerOpening, answerSaving } from './dialogs'
import { hangerPage } from './hangerPage'
import { shelfPanel } from './shelfPanel'

const desktop = desktopApp()
/** What is on the disk; nothing until the shelf has been written for the first time. */
const kept = (): Promise<string> => readFile(join(desktop.memory, 'shelf.json'), 'utf8').catch(() => 'null')

test('what is kept on the shelf is there in the next run, and is used in another hanger', async () => {
  const hanger = hangerPage(desktop.page)
  await hanger.enter('Diameter of the cord', '2.5 mm')
  await hanger.pick('Fibre of the cord', 'linen')
  let shelf = shelfPanel(desktop.page)
  await shelf.open()
  await shelf.keep('cord', 'Waxed linen')
  await expect(shelf.message).toHaveText('The cord “Waxed linen” is on your shelf now.')
  await expect.poll(async () => JSON.parse(await kept()) as unknown).toMatchObject({ format: 'strandwise-shelf', version: 1, entries: [{ kind: 'cord', name: 'Waxed linen', cord: { fibre: 'linen', diameter: '2.5 mm' } }] })

  await desktop.page.evaluate(() => window.strandwise?.setUnsaved(false))
  await desktop.restart()
  shelf = shelfPanel(desktop.page)
  const again = hangerPage(desktop.page)
  const diameter = again.questions.getByRole('textbox', { name: 'Diameter of the cord', exact: true })
  await expect(diameter).toHaveValue('')
  await shelf.open()
  await shelf.use('Waxed linen')
  await shelf.close()
  await expect(diameter).toHaveValue('2.5 mm')
})

test('an import tells of each entry it refused, and an export writes what is there', async () => {
  const shelf = shelfPanel(desktop.page)
  const friend = join(desktop.folder, 'friend.json')
  await writeFile(friend, JSON.stringify({ format: 'strandwise-shelf', version: 1, entries: [
    { kind: 'hook', name: 'Eye', hook: { kind: 'closed', rated: '40 kgf' } },
    { kind: 'mix', name: 'Wet', mix: { capacity: '80 %', porosity: '70 %' } },
    { kind: 'cord', name: 'WAXED linen', cord: { diameter: '3 mm' } },
  ] }))
  await answerOpening(desktop.app, friend)
  await shelf.open()
  await shelf.panel.getByRole('button', { name: 'Import…' }).click()
  await expect(shelf.report).toContainText('friend.json: 1 entry came in and 2 were refused.')
  await expect(shelf.report.getByRole('listitem')).toHaveText([/^Entry 2, mix “Wet”: .*80 %.*at most.*70 %/, /^Entry 3, cord “WAXED linen”: There is already a cord called “Waxed linen”/])

  const path = join(desktop.folder, 'mine.json')
  await answerSaving(desktop.app, path)
  await shelf.panel.getByRole('button', { name: 'Export…' }).click()
  await expect(shelf.message).toHaveText('Your shelf is written to mine.json.')
  expect(await readFile(path, 'utf8')).toBe(await kept())
  await shelf.close()
})

test('a shelf that cannot be read is put aside, not written over, and that is said', async () => {
  const path = join(desktop.memory, 'shelf.json')
  await mkdir(desktop.memory, { recursive: true })
  await writeFile(path, '{"format": "strandwise-shelf", "version": 1, "entr')
  await desktop.page.evaluate(() => window.strandwise?.setUnsaved(false))
  await desktop.restart()
  await expect(desktop.page.getByRole('alert')).toContainText('kept as shelf-set-aside-1.json')
  expect(await readFile(join(desktop.memory, 'shelf-set-aside-1.json'), 'utf8')).toContain('"entr')
  expect(await readdir(desktop.memory)).not.toContain('shelf.json')
})
