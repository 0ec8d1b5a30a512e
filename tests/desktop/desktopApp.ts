import { existsSync } from 'node:fs'
import { mkdtemp, realpath, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { _electron, expect, test, type ElectronApplication, type Page } from 'playwright/test'
import type {} from '../../renderer/platform/desktop'

const root = resolve(import.meta.dirname, '../..')

/** Where the built preload lies. */
export const preload = join(root, 'out/preload/preload.cjs')

/** The built app, started once for all tests of a file; whatever it remembers is thrown away. */
export interface DesktopApp {
  readonly app: ElectronApplication
  readonly page: Page
  /** An empty folder for files. */
  readonly folder: string
  /** The folder of what the app remembers between runs. */
  readonly memory: string
  /** Closes the app and starts it again, with what it remembers. */
  restart(): Promise<void>
  /** Kills the app's process as a power cut would, and starts it again. */
  crash(): Promise<void>
}

/**
 * To be called at the top of a test file; what it answers is filled before the first test.
 *
 * @param given hanger files, by name and text, that the app is started with
 */
export function desktopApp(given: Readonly<Record<string, string>> = {}): DesktopApp {
  const started: { app?: ElectronApplication, page?: Page, place?: string } = {}
  const need = <Value>(value: Value | undefined): Value => {
    if (value === undefined) throw new Error('The app has not been started')
    return value
  }

  test.beforeAll(async () => {
    const place = await realpath(await mkdtemp(join(tmpdir(), 'strandwise-desktop-')))
    started.place = place
    for (const [name, text] of Object.entries(given)) await writeFile(join(place, name), text)
    await launch(place)
  })

  async function launch(place: string): Promise<void> {
    const ready = join(place, 'ready')
    await rm(ready, { force: true })
    started.app = await _electron.launch({
      args: [root, ...Object.keys(given)],
      cwd: place,
      env: { ...process.env, STRANDWISE_USER_DATA: join(place, 'memory'), STRANDWISE_READY_FILE: ready },
    })
    started.page = await started.app.firstWindow()
    await expect(started.page.locator('#app')).not.toBeEmpty()
    await expect.poll(() => existsSync(ready), 'the launcher is told of the window').toBe(true)
  }

  test.beforeEach(async () => {
    Object.assign(files, { folder: await mkdtemp(join(need(started.place), 'files-')) })
  })
  test.afterAll(async () => {
    await started.app?.close()
    if (started.place) await rm(started.place, { recursive: true, force: true, maxRetries: 5 })
  })

  const files = { folder: '' }
  return {
    get app() { return need(started.app) },
    get page() { return need(started.page) },
    get folder() { return files.folder },
    get memory() { return join(need(started.place), 'memory') },
    crash: async () => {
      const gone = new Promise((done) => { started.app?.process().once('exit', done) })
      started.app?.process().kill('SIGKILL')
      await gone
      await launch(need(started.place))
    },
    restart: async () => {
      await started.app?.close()
      await launch(need(started.place))
    },
  }
}
