import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from 'playwright/test'
import { extractText, getDocumentProxy } from 'unpdf'
import { MENU_COMMANDS } from '../../electron/contract'
import { desktopApp } from './desktopApp'
import { answerQuestions, answerSaving } from './dialogs'

const desktop = desktopApp()

test('every command of the menu reaches the page', async () => {
  const { app, page } = desktop
  await answerSaving(app, null)
  await app.evaluate(({ BrowserWindow, dialog }) => {
    dialog.showOpenDialog = () => Promise.resolve({ canceled: true, filePaths: [] })
    for (const { webContents } of BrowserWindow.getAllWindows()) webContents.print = (_options, done) => { done?.(false, 'Print job canceled') }
  })
  await page.evaluate(() => {
    const heard: string[] = []
    Object.assign(window, { heard })
    window.strandwise?.onMenu((command) => { heard.push(command) })
  })
  for (const command of MENU_COMMANDS) {
    await app.evaluate(({ Menu }, id) => { Menu.getApplicationMenu()?.getMenuItemById(id)?.click() }, command)
  }
  await expect.poll(() => page.evaluate(() => (window as unknown as { heard: string[] }).heard)).toEqual(MENU_COMMANDS)
})

test('saves the page as a PDF that can be read and searched', async () => {
  const { app, folder, page } = desktop
  const path = join(folder, 'fern.pdf')
  await answerSaving(app, path)
  await page.evaluate(() => { document.getElementById('app')?.append('Ficus ½ on 3 mm cord') })
  expect(await page.evaluate(() => window.strandwise?.savePdf('Fern'))).toEqual({ ok: true, name: 'fern.pdf' })

  const pdf = await getDocumentProxy(new Uint8Array(await readFile(path)))
  const { text } = await extractText(pdf, { mergePages: true })
  expect(text).toContain('Ficus ½ on 3 mm cord')
  const [, , width, height] = (await pdf.getPage(1)).view
  expect([[595, 842], [612, 792]]).toContainEqual([Math.floor(width ?? 0), Math.floor(height ?? 0)])
})

test('asks before unsaved work is lost, and ends with its last window', async () => {
  const { app, page } = desktop
  const ended = app.waitForEvent('close')
  const close = (): Promise<void> => app.evaluate(({ BrowserWindow }) => { BrowserWindow.getAllWindows()[0]?.close() })
  await answerSaving(app, null)
  await page.evaluate(async () => {
    Object.assign(window, { asked: 0 })
    window.strandwise?.onSaveBeforeClose(() => { (window as unknown as { asked: number }).asked += 1 })
    await window.strandwise?.setUnsaved(true)
  })
  const asked = (): Promise<number> => page.evaluate(() => (window as unknown as { asked: number }).asked)

  await answerQuestions(app, 'Cancel')
  await close()
  expect(await asked()).toBe(0)
  await answerQuestions(app, 'Save')
  await close()
  await expect.poll(asked).toBe(1)
  void page.evaluate(() => window.strandwise?.closeAfterSave()).catch(() => undefined) // the page goes before the answer
  await ended
})
