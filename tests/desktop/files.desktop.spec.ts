import { chmod, readFile, readdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from 'playwright/test'
import type { OpenOutcome, SaveAsOutcome, SaveOutcome } from '../../electron/contract'
import { desktopApp } from './desktopApp'
import { answerOpening, answerQuestions, answerSaving } from './dialogs'

const desktop = desktopApp({ 'given.strandwise': '{"format": "strandwise-hanger", "version": 1}' })

const saveAs = (name: string, text: string): Promise<SaveAsOutcome | undefined> =>
  desktop.page.evaluate((args) => window.strandwise?.saveHangerAs(...args), [name, text] as const)

const save = (token: string, text: string, overwrite = false): Promise<SaveOutcome | undefined> =>
  desktop.page.evaluate((args) => window.strandwise?.saveHanger(...args), [token, text, { overwrite }] as const)

const open = (): Promise<OpenOutcome | undefined> => desktop.page.evaluate(() => window.strandwise?.openHanger())

async function savedToken(path: string, text: string): Promise<string> {
  await answerSaving(desktop.app, path)
  const outcome = await saveAs('Fern', text)
  if (!outcome?.ok || !outcome.saved) throw new Error(`not saved: ${JSON.stringify(outcome)}`)
  return outcome.saved.token
}

test('saves under a chosen name, saves again with a backup, and leaves nothing else in the folder', async () => {
  const { app, folder } = desktop
  await answerSaving(app, join(folder, 'Fern ½'))
  const outcome = await saveAs('Fern', '{"leaves": "grün"}')
  expect(outcome).toEqual({ ok: true, saved: { token: expect.any(String), name: 'Fern ½.strandwise' } })
  const token = (outcome as { saved: { token: string } }).saved.token

  expect(await save(token, '{"leaves": 7}')).toEqual({ ok: true })
  expect((await readdir(folder)).sort()).toEqual(['Fern ½.strandwise', 'Fern ½.strandwise~'])
  expect(await readFile(join(folder, 'Fern ½.strandwise'), 'utf8')).toBe('{"leaves": 7}')
  expect(await readFile(join(folder, 'Fern ½.strandwise~'), 'utf8')).toBe('{"leaves": "grün"}')

  // The system has asked about the name as typed, without its ending.
  await answerQuestions(app, 'Cancel')
  expect(await saveAs('Fern', '{}')).toEqual({ ok: true, saved: null })
  expect(await readFile(join(folder, 'Fern ½.strandwise'), 'utf8')).toBe('{"leaves": 7}')
  await answerQuestions(app, 'Replace')
  expect(await saveAs('Fern', '{}')).toMatchObject({ ok: true, saved: { token } })
  await answerSaving(app, null)
  expect(await saveAs('Fern', '{}')).toEqual({ ok: true, saved: null })
})

test('does not overwrite what somebody else has written, unless told to', async () => {
  const path = join(desktop.folder, 'fern.strandwise')
  const token = await savedToken(path, '{"cord": "3 mm"}')
  await writeFile(path, '{"cord": "5 mm"}')
  expect(await save(token, '{"cord": "4 mm"}')).toMatchObject({ ok: false, problem: { code: 'CHANGED_ON_DISK' } })
  expect(await readFile(path, 'utf8')).toBe('{"cord": "5 mm"}')
  expect(await save(token, '{"cord": "4 mm"}', true)).toEqual({ ok: true })
  expect(await readFile(path, 'utf8')).toBe('{"cord": "4 mm"}')
  expect(await readFile(`${path}~`, 'utf8')).toBe('{"cord": "5 mm"}')
})

test('says so when a file may not be written, and leaves it as it was', async () => {
  const { app, folder } = desktop
  const path = join(folder, 'fern.strandwise')
  const token = await savedToken(path, '{"cord": "3 mm"}')
  // The superuser may write everything, so for a moment the app is somebody else.
  const isRoot = process.getuid?.() === 0
  await chmod(path, 0o444)
  if (isRoot) {
    await chmod(folder, 0o777)
    await chmod(join(folder, '..'), 0o755)
    await app.evaluate(() => process.seteuid?.(65534))
  }
  const outcome = await save(token, '{}')
  if (isRoot) await app.evaluate(() => process.seteuid?.(0))
  await chmod(path, 0o644)

  expect(outcome).toMatchObject({ ok: false, problem: { code: 'PERMISSION' } })
  expect(JSON.stringify(outcome)).not.toContain(folder)
  expect(await readFile(path, 'utf8')).toBe('{"cord": "3 mm"}')
  expect(await readdir(folder)).toEqual(['fern.strandwise'])
})

test('opens text that is UTF-8, refuses other bytes, and remembers what was used', async () => {
  const { app, folder, page } = desktop
  const good = join(folder, 'ivy.strandwise')
  const bad = join(folder, 'moss.strandwise')
  await writeFile(good, '\ufeff{"ring": "5 cm, größer"}')
  await writeFile(bad, Buffer.from([0x7b, 0xff, 0xfe, 0x7d]))

  await answerOpening(app, bad)
  expect(await open()).toMatchObject({ ok: false, problem: { code: 'NOT_TEXT' } })
  await answerOpening(app, good)
  const opened = { ok: true, hanger: { token: expect.any(String), name: 'ivy.strandwise', text: '{"ring": "5 cm, größer"}' } }
  expect(await open()).toEqual(opened)

  const recent = await page.evaluate(() => window.strandwise?.recent())
  expect(recent?.map(({ name }) => name)).not.toContain('moss.strandwise')
  expect(recent?.[0]).toMatchObject({ name: 'ivy.strandwise', place: folder })
  expect(await page.evaluate((token) => window.strandwise?.openRecent(token), recent?.[0]?.token ?? '')).toEqual(opened)
})

test('hands over a file that was opened from outside', async () => {
  const { app, folder, page } = desktop
  const recent = await page.evaluate(() => window.strandwise?.recent())
  expect(recent?.map(({ name }) => name), 'the one it was started with').toContain('given.strandwise')

  const path = join(folder, 'palm.strandwise')
  await writeFile(path, '{"legs": 4}')
  const heard = page.evaluate(() => new Promise<unknown>((done) => { window.strandwise?.onOpened(done) }))
  await app.evaluate(({ app: shell }, cwd) => { shell.emit('second-instance', {}, ['strandwise', '--switch', 'palm.strandwise'], cwd, null) }, folder)
  expect(await heard).toEqual({ ok: true, hanger: { token: expect.any(String), name: 'palm.strandwise', text: '{"legs": 4}' } })
})
