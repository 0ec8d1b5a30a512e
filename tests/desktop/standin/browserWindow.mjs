import { EventEmitter } from 'node:events'
import { app, noteWindowClosed, openWindows } from './app.mjs'
import { emitPreventable } from './preventable.mjs'
import { WebContents } from './webContents.mjs'

/** A window: nothing but its page, for there is no screen. */
export class BrowserWindow extends EventEmitter {
  static getAllWindows = () => [...openWindows]

  static fromWebContents = (contents) => [...openWindows].find((window) => window.webContents === contents) ?? null

  #bounds
  #visible
  #kept = false

  constructor(options = {}) {
    super()
    const { x = 0, y = 0, width = 800, height = 600, show = true } = options
    this.#bounds = { x, y, width, height }
    this.#visible = show
    this.webContents = new WebContents(options)
    this.webContents.once('did-finish-load', () => this.emit('ready-to-show'))
    this.webContents.on('-close', () => this.close())
    this.whenClosed = new Promise((resolve) => {
      this.webContents.once('destroyed', () => {
        this.emit('closed')
        resolve()
        noteWindowClosed(this)
      })
    })
    openWindows.add(this)
    app.emit('browser-window-created', {}, this)
  }

  loadURL(address) { return this.webContents.loadURL(address) }

  close() {
    this.#kept = !emitPreventable(this, 'close')
    if (!this.#kept) this.webContents.destroy()
  }

  /** Whether the last try to close it was prevented. */
  isKeptOpen() { return this.#kept }

  destroy() { this.webContents.destroy() }
  show() { this.#visible = true }
  isVisible() { return this.#visible }
  isDestroyed() { return this.webContents.isDestroyed() }
  isMinimized() { return false }
  isMaximized() { return false }
  getNormalBounds() { return this.#bounds }
  focus() { /* there is no screen */ }
}
