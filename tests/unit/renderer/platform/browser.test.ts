import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { browserPlatform } from '../../../../renderer/platform/browser'
import type { Platform } from '../../../../renderer/platform/platform'
import { fakeFile, stubPickers } from './fakeFiles'

const KEEP = { overwrite: false }
let platform: Platform

beforeEach(() => {
  localStorage.clear()
  platform = browserPlatform()
})
afterEach(() => {
  vi.unstubAllGlobals()
  vi.restoreAllMocks()
})

async function savedAs(name: string, text: string): Promise<string> {
  const outcome = await platform.saveHangerAs(name, text)
  if (!outcome.ok || !outcome.saved) throw new Error('not saved')
  return outcome.saved.token
}

describe('a browser with pickers', () => {
  test('opens a file and writes the same one again', async () => {
    const file = fakeFile('fern.strandwise', '\ufeff{"cord": "½ in"}')
    stubPickers(file)
    const outcome = await platform.openHanger()
    expect(outcome).toMatchObject({ ok: true, hanger: { name: 'fern.strandwise', text: '{"cord": "½ in"}' } })
    const token = outcome.ok ? outcome.hanger?.token ?? '' : ''
    expect(await platform.saveHanger(token, '{"cord": "3 mm"}', KEEP)).toEqual({ ok: true })
    expect(file.content).toBe('{"cord": "3 mm"}')
  })

  test('does not overwrite what somebody else wrote, unless told to; a file that is gone is written anew', async () => {
    const file = fakeFile('fern.strandwise', null)
    stubPickers(file)
    const token = await savedAs('Fern', 'mine')
    file.content = 'theirs'
    expect(await platform.saveHanger(token, 'mine', KEEP)).toMatchObject({ ok: false, problem: { code: 'CHANGED_ON_DISK' } })
    expect(file.content).toBe('theirs')
    expect(await platform.saveHanger(token, 'mine', { overwrite: true })).toEqual({ ok: true })
    file.content = null
    expect(await platform.saveHanger(token, 'again', KEEP)).toEqual({ ok: true })
    expect(file.content).toBe('again')
  })

  test('writes a dropped file again where the browser lets it, else as a download', async () => {
    const file = fakeFile('fern.strandwise', 'mine')
    const drop = async (items: unknown[]) => {
      const outcome = await platform.openDropped({ files: [new File(['mine'], 'fern.strandwise')], items } as unknown as DataTransfer)
      return outcome.ok ? outcome.hanger : null
    }
    const withHandle = await drop([{ kind: 'string' }, { kind: 'file', getAsFileSystemHandle: async () => ({ ...file.handle, kind: 'file' }) }])
    expect(withHandle).toMatchObject({ name: 'fern.strandwise', text: 'mine' })
    expect(await platform.saveHanger(withHandle?.token ?? '', 'new', KEEP)).toEqual({ ok: true })
    expect(file.content).toBe('new')
    const click = vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(() => undefined)
    const without = await drop([{ kind: 'file', getAsFileSystemHandle: async () => { throw new DOMException('no', 'NotAllowedError') } }])
    expect(await platform.saveHanger(without?.token ?? '', 'newer', KEEP)).toEqual({ ok: true })
    expect(click).toHaveBeenCalledOnce()
    expect(file.content).toBe('new')
  })

  test('says what stopped it', async () => {
    const file = fakeFile('fern.strandwise', null)
    stubPickers(file)
    const token = await savedAs('Fern', '1')
    file.refusal = new DOMException('no', 'NotAllowedError')
    expect(await platform.saveHanger(token, '2', KEEP)).toEqual({ ok: false, problem: { code: 'PERMISSION', detail: 'NotAllowedError: no' } })
    file.refusal = new DOMException('no', 'QuotaExceededError')
    expect(await platform.saveHanger(token, '2', KEEP)).toMatchObject({ problem: { code: 'DISK_FULL' } })
    expect(file.content).toBe('1')
    expect(await platform.saveHangerAs('Fern', 'x'.repeat(1_048_577))).toMatchObject({ problem: { code: 'TOO_LARGE' } })
  })

  test.each(['write', 'close'] as const)('a disk that fills at the %s is told, and nothing of the writing stays', async (at) => {
    const file = fakeFile('fern.strandwise', null)
    stubPickers(file)
    const token = await savedAs('Fern', '1')
    file.stop = { at, by: new DOMException('full', 'QuotaExceededError') }
    expect(await platform.saveHanger(token, '2', KEEP)).toMatchObject({ ok: false, problem: { code: 'DISK_FULL' } })
    expect([file.content, file.drafts]).toEqual(['1', 0])
    file.stop = null
    expect(await platform.saveHanger(token, '2', KEEP)).toEqual({ ok: true })
  })

  test('a file opened again but not taken is not written over by what was opened before', async () => {
    const file = fakeFile('fern.strandwise', 'mine')
    stubPickers(file)
    const first = await platform.openHanger()
    const token = first.ok ? first.hanger?.token ?? '' : ''
    file.content = 'theirs'
    const second = await platform.openRecent(token)
    expect(second).toMatchObject({ ok: true, hanger: { text: 'theirs' } })
    expect(await platform.saveHanger(token, 'mine again', KEEP)).toMatchObject({ ok: false, problem: { code: 'CHANGED_ON_DISK' } })
    expect(file.content).toBe('theirs')
    expect(await platform.saveHanger(second.ok ? second.hanger?.token ?? '' : '', 'theirs and more', KEEP)).toEqual({ ok: true })
  })

  test('a picker that is dismissed is no failure', async () => {
    stubPickers(null)
    expect(await platform.openHanger()).toEqual({ ok: true, hanger: null })
    expect(await platform.saveHangerAs('Fern', '{}')).toEqual({ ok: true, saved: null })
    expect(await platform.exportText('Fern', 'svg', '<svg/>')).toEqual({ ok: true, name: null })
  })

  test('offers a name that is a name', async () => {
    const { save } = stubPickers(fakeFile('fern.svg', null))
    expect(await platform.exportText('Fern / ../kitchen', 'svg', '<svg/>')).toEqual({ ok: true, name: 'fern.svg' })
    expect(save).toHaveBeenCalledWith(expect.objectContaining({ suggestedName: 'Fern .. kitchen.svg' }))
    await platform.exportText('🪴'.repeat(200), 'svg', '<svg/>')
    expect(save).toHaveBeenLastCalledWith(expect.objectContaining({ suggestedName: `${'🪴'.repeat(45)}.svg` }))
  })
})

describe('a browser without', () => {
  test('saves by downloading, under the same name each time', async () => {
    const downloads: [string, string][] = []
    const blobs: Blob[] = []
    vi.spyOn(URL, 'createObjectURL').mockImplementation((blob) => `blob:${blobs.push(blob as Blob) - 1}`)
    vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) { downloads.push([this.download, this.href]) })
    const token = await savedAs('Fern', '1')
    expect(await platform.saveHanger(token, '2', KEEP)).toEqual({ ok: true })
    expect(await platform.exportText('Fern', 'json', '3')).toEqual({ ok: true, name: 'Fern.json' })
    expect(downloads).toEqual([['Fern.strandwise', 'blob:0'], ['Fern.strandwise', 'blob:1'], ['Fern.json', 'blob:2']])
    expect(await Promise.all(blobs.map((blob) => blob.text()))).toEqual(['1', '2', '3'])
  })

  test.each([
    ['change', { ok: true, hanger: { name: 'ivy.strandwise', text: '{}' } }],
    ['cancel', { ok: true, hanger: null }],
  ])('opens by upload: %s', async (event, outcome) => {
    vi.spyOn(HTMLInputElement.prototype, 'click').mockImplementation(function (this: HTMLInputElement) {
      expect(this.type).toBe('file')
      if (event === 'change') Object.defineProperty(this, 'files', { value: [new File(['{}'], 'ivy.strandwise')] })
      this.dispatchEvent(new Event(event))
    })
    expect(await platform.openHanger()).toMatchObject(outcome)
  })

  test('makes a PDF by the print dialog, with the hanger\'s name for a title meanwhile', async () => {
    document.title = 'Strandwise'
    const titles: string[] = []
    vi.stubGlobal('print', () => { titles.push(document.title) })
    expect(await platform.savePdf('Fern')).toEqual({ ok: true, name: null })
    window.dispatchEvent(new Event('afterprint'))
    expect([...titles, document.title]).toEqual(['Fern', 'Strandwise'])
  })
})

test('what was used is kept over a reload, as text', async () => {
  stubPickers(fakeFile('fern.strandwise', '{"legs": 4}'))
  await platform.openHanger()
  const afterReload = browserPlatform()
  const [fern] = await afterReload.recent()
  expect(fern).toMatchObject({ name: 'fern.strandwise', place: null })
  expect(await afterReload.openRecent(fern?.token ?? '')).toMatchObject({ ok: true, hanger: { token: fern?.token, text: '{"legs": 4}' } })
  expect(await afterReload.openRecent('none')).toMatchObject({ ok: false, problem: { code: 'NOT_FOUND' } })
})

test('a token nobody was given is refused', async () => {
  await expect(platform.saveHanger('seven', '{}', KEEP)).rejects.toThrow('No file goes by this token')
})

test('leaving is held up while something would be lost', () => {
  const isHeld = (): boolean => !window.dispatchEvent(new Event('beforeunload', { cancelable: true }))
  platform.setUnsaved(true)
  platform.setUnsaved(true)
  expect(isHeld()).toBe(true)
  platform.setUnsaved(false)
  expect(isHeld()).toBe(false)
})

test('keys stand in for the menu until nobody listens', () => {
  const listener = vi.fn()
  const stop = platform.onMenu(listener)
  const press = (): boolean => window.dispatchEvent(new KeyboardEvent('keydown', { key: 's', ctrlKey: true, cancelable: true }))
  expect(press()).toBe(false)
  expect(window.dispatchEvent(new KeyboardEvent('keydown', { key: 'x', ctrlKey: true, cancelable: true }))).toBe(true)
  stop()
  expect(press()).toBe(true)
  expect(listener.mock.calls).toEqual([['save']])
})

test.each([
  ['change', { ok: true, imported: { name: 'friend.json', text: '{"a": 1}' } }],
  ['cancel', { ok: true, imported: null }],
])('a shelf file comes in by upload: %s', async (event, outcome) => {
  vi.spyOn(HTMLInputElement.prototype, 'click').mockImplementation(function (this: HTMLInputElement) {
    expect(this.accept).toContain('.json')
    if (event === 'change') Object.defineProperty(this, 'files', { value: [new File(['{"a": 1}'], 'friend.json')] })
    this.dispatchEvent(new Event(event))
  })
  expect(await platform.importShelfText()).toEqual(outcome)
})

test('a browser that keeps nothing for the page still opens and saves files', async () => {
  const file = fakeFile('fern.strandwise', '{}')
  stubPickers(file)
  const forbidden = vi.spyOn(globalThis, 'localStorage', 'get').mockImplementation(() => { throw new DOMException('no', 'SecurityError') })
  expect(await platform.recent()).toEqual([])
  const outcome = await platform.openHanger()
  expect(outcome).toMatchObject({ ok: true, hanger: { text: '{}' } })
  expect(await platform.saveHanger(outcome.ok ? outcome.hanger?.token ?? '' : '', '{"legs": 3}', KEEP)).toEqual({ ok: true })
  expect(file.content).toBe('{"legs": 3}')
  expect(await platform.saveShelf('{}')).toMatchObject({ ok: false, problem: { code: 'PERMISSION' } })
  expect(forbidden).toHaveBeenCalled()
})
