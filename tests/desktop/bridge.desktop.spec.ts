import { expect, test } from 'playwright/test'
import { EVENTS, REQUESTS } from '../../electron/contract'
import { desktopApp, preload } from './desktopApp'

const desktop = desktopApp()

test('the page gets one frozen method for each intention, and nothing of Node', async () => {
  const seen = await desktop.page.evaluate(() => ({
    methods: Object.entries(window.strandwise ?? {}).map(([name, value]) => [name, typeof value] as const),
    frozen: Object.isFrozen(window.strandwise),
    replaced: Reflect.set(window, 'strandwise', {}),
    node: ['require', 'process', 'module', 'Buffer', 'global', 'electron', 'ipcRenderer'].filter((name) => name in window),
  }))
  expect(Object.fromEntries(seen.methods)).toEqual(Object.fromEntries(Object.keys({ ...REQUESTS, ...EVENTS }).map((name) => [name, 'function'])))
  expect(seen).toMatchObject({ frozen: true, replaced: false, node: [] })
})

test('a question that is not in the contract is refused by an error', async () => {
  const refusals = await desktop.page.evaluate(async () => {
    const bridge = window.strandwise as unknown as Record<string, (...args: unknown[]) => Promise<unknown>>
    const asked: [string, ...unknown[]][] = [
      ['saveHanger', 'no such token', '{}', { overwrite: false }],
      ['openRecent', '../../../etc/hostname'],
      ['saveHanger', 'token', '{}', { overwrite: true, path: '/etc/hostname' }],
      ['saveHangerAs', 'Fern', { text: '{}' }],
      ['exportText', 'Fern', 'exe', 'text'],
      ['setUnsaved', 'yes'],
      ['saveShelf', { text: '{}' }],
    ]
    return Promise.all(asked.map(async ([name, ...args]) => {
      try {
        await bridge[name]?.(...args)
        return 'answered'
      } catch (error) {
        return String(error)
      }
    }))
  })
  expect(refusals).toEqual([
    expect.stringContaining('No file goes by this token'),
    expect.stringContaining('No file goes by this token'),
    ...Array.from({ length: 5 }, () => expect.stringContaining('arguments it does not take')),
  ])
})

test('another window gets no answer, though it has the bridge and even the same page', async () => {
  const said = await desktop.app.evaluate(async ({ BrowserWindow }, path) => {
    const stranger = new BrowserWindow({ show: false, webPreferences: { preload: path, sandbox: true, contextIsolation: true } })
    const ask = async (address: string): Promise<unknown> => {
      await stranger.loadURL(address)
      return stranger.webContents.executeJavaScript('window.strandwise.recent().then(() => "answered", (error) => error.message)')
    }
    const answers = [await ask('data:text/html,<title>stranger</title>'), await ask('strandwise-app://app/index.html')]
    stranger.destroy()
    return answers
  }, preload)
  expect(said).toEqual(Array.from({ length: 2 }, () => expect.stringContaining('the app\'s own page only')))
})
