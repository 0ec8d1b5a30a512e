import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { app, BrowserWindow, screen, type WebContents } from 'electron'
import { EVENTS } from '../contract'
import { guardClosing, type Closing } from './closing'
import { askAboutUnsaved } from './dialogs'
import { START_ADDRESS } from './origin'
import { texts } from './texts'
import { rememberedPlace, rememberPlace, SMALLEST } from './windowPlace'

/** The app's one window, which on a Mac may be closed and opened again. */
export interface MainWindow {
  readonly open: () => void
  readonly isOpen: () => boolean
  readonly contents: () => WebContents | undefined
  /** @throws if it is closed */
  readonly window: () => BrowserWindow
  /** @throws if it is closed */
  readonly closing: () => Closing
  /** Tells the page something; says nothing if there is none. */
  readonly tell: (channel: (typeof EVENTS)[keyof typeof EVENTS], ...args: unknown[]) => void
  readonly comeForward: () => void
}

const PREFERENCES: Electron.WebPreferences = {
  preload: join(import.meta.dirname, '../preload/preload.cjs'),
  contextIsolation: true,
  sandbox: true,
  nodeIntegration: false,
  nodeIntegrationInWorker: false,
  nodeIntegrationInSubFrames: false,
  webSecurity: true,
  webviewTag: false,
  navigateOnDragDrop: false,
  spellcheck: false,
  devTools: !app.isPackaged,
}

// For the launcher, which falls back to the browser where no window ever came.
function noteReady(): void {
  const path = process.env['STRANDWISE_READY_FILE']
  if (path) writeFileSync(path, '')
}

/**
 * @param stateFile where the window's place is remembered
 * @param onClosed called after each closing; `lost`: the page was gone before, and nobody could save
 */
export function createMainWindow(stateFile: string, onClosed: (lost: boolean) => void): MainWindow {
  let current: { readonly window: BrowserWindow, readonly closing: Closing } | null = null

  function get(): NonNullable<typeof current> {
    if (!current) throw new Error('The window is closed')
    return current
  }

  function open(): void {
    const { bounds, maximized } = rememberedPlace(stateFile, screen.getAllDisplays().map(({ workArea }) => workArea))
    const window = new BrowserWindow({ ...bounds, ...SMALLEST, show: false, title: texts.appName, webPreferences: PREFERENCES })
    const closing = guardClosing(window, {
      ask: () => askAboutUnsaved(window),
      requestSave: () => { window.webContents.send(EVENTS.onSaveBeforeClose) },
      closeWindow: () => { window.close() },
      quit: () => { app.quit() },
    })
    current = { window, closing }
    let lost = false
    window.once('ready-to-show', () => {
      if (maximized) window.maximize()
      window.show()
      noteReady()
    })
    window.on('close', () => { rememberPlace(stateFile, window) })
    window.on('closed', () => {
      current = null
      onClosed(lost)
    })
    // A page that is gone cannot save, so a question would only hold the window open.
    window.webContents.on('render-process-gone', () => {
      lost = true
      closing.setUnsaved(false)
    })
    // The launcher takes this end without a window as a sign to serve the page to the browser.
    window.loadURL(START_ADDRESS).catch((error: unknown) => {
      if (window.isDestroyed()) return
      console.error(error)
      app.exit(1)
    })
  }

  return {
    open,
    isOpen: () => current !== null,
    contents: () => current?.window.webContents,
    window: () => get().window,
    closing: () => get().closing,
    tell: (channel, ...args) => { current?.window.webContents.send(channel, ...args) },
    comeForward: () => {
      if (!current) return
      if (current.window.isMinimized()) current.window.restore()
      current.window.focus()
    },
  }
}
