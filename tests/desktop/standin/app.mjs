import { EventEmitter } from 'node:events'
import { mkdtempSync, rmSync } from 'node:fs'
import { homedir, tmpdir } from 'node:os'
import { join } from 'node:path'
import { stopChromium } from './chromium.mjs'
import { emitPreventable } from './preventable.mjs'

const own = mkdtempSync(join(tmpdir(), 'stand-in-'))
process.once('exit', () => rmSync(own, { recursive: true, force: true, maxRetries: 5, retryDelay: 50 }))

const paths = new Map([['temp', tmpdir()], ['home', homedir()], ['userData', join(own, 'userData')], ['sessionData', join(own, 'session')]])
const switches = new Map()
const windows = new Set()
let about = { folder: '', name: '', version: '' }
let ready = false
let announce = null
const whenReady = new Promise((resolve) => { announce = resolve })
let quitting = false

/** What package.json says of the app. */
export const describeApp = (description) => { about = description }

/** The windows there are, in the order they were opened. */
export const openWindows = windows

/** Tells the app that it may open windows. */
export function announceReady() {
  ready = true
  app.emit('ready', {}, {})
  announce()
}

/** Ends the app after its last window unless it says otherwise, as Electron does. */
export function noteWindowClosed(window) {
  windows.delete(window)
  if (windows.size === 0 && !quitting && !app.emit('window-all-closed')) app.quit()
}

async function quit() {
  if (quitting || !emitPreventable(app, 'before-quit')) return
  quitting = true
  for (const window of windows) {
    window.close()
    if (window.isKeptOpen()) quitting = false
    if (!quitting) return
    await window.whenClosed
  }
  if (emitPreventable(app, 'will-quit')) app.exit(0)
}

export const app = Object.assign(new EventEmitter(), {
  isPackaged: false,
  isReady: () => ready,
  whenReady: () => whenReady,
  getName: () => about.name,
  getVersion: () => about.version,
  getAppPath: () => about.folder,
  getLocaleCountryCode: () => 'GB',
  getPath: (name) => paths.get(name) ?? join(own, name),
  setPath: (name, path) => { paths.set(name, path) },
  requestSingleInstanceLock: () => true,
  enableSandbox: () => undefined,
  commandLine: {
    appendSwitch: (name, value = '') => { switches.set(name, value) },
    all: () => [...switches].map(([name, value]) => value === '' ? `--${name}` : `--${name}=${value}`),
  },
  quit: () => { void quit() },
  exit: (code) => {
    process.exitCode = code
    stopChromium()
  },
})
