import { EventEmitter } from 'node:events'
import { readFileSync } from 'node:fs'
import { originOf, ownAddress, shownAddress } from './addresses.mjs'
import { app } from './app.mjs'
import { hear, send } from './chromium.mjs'
import { createCodec } from './codec.mjs'
import { answerInvoke } from './ipcMain.mjs'
import { FROM_NODE, PRELOAD_WORLD, TO_NODE, pageScript, preloadScript } from './pageBridge.mjs'
import { emitPreventable } from './preventable.mjs'
import { printOptions } from './printOptions.mjs'
import { answerRequest, applyPermissions, isRequestAllowed, protocol, session } from './session.mjs'

const { encode, decode } = createCodec(null, null)
const all = new Set()

/** The page of a window: a target of the browser, with the preload in a world of its own. */
export class WebContents extends EventEmitter {
  session = session.defaultSession
  #target = ''
  #sessionId = ''
  #preloadWorld = 0
  #address = ''
  /** Addresses the app itself asked for, which is no navigation of the page's. */
  #expected = new Set()
  #openHandler = () => ({ action: 'allow' })
  #preferences
  #whenUp
  #gone = false

  constructor(options) {
    super()
    this.#preferences = { contextIsolation: true, sandbox: true, nodeIntegration: false, ...options.webPreferences }
    all.add(this)
    app.emit('web-contents-created', {}, this)
    this.#whenUp = this.#start(options)
  }

  async #start({ width = 800, height = 600 }) {
    this.#target = (await send('Target.createTarget', { url: 'about:blank', width, height, newWindow: true })).targetId
    this.#sessionId = (await send('Target.attachToTarget', { targetId: this.#target, flatten: true })).sessionId
    hear(this.#sessionId, (method, event) => this.#on(method, event))
    const { preload } = this.#preferences
    await Promise.all([
      applyPermissions(this),
      this.#send('Page.enable'),
      this.#send('Runtime.enable'),
      this.#send('Runtime.addBinding', { name: TO_NODE, executionContextName: PRELOAD_WORLD }),
      this.#send('Page.addScriptToEvaluateOnNewDocument', { source: pageScript(this.#refusesWindows()) }),
      preload && this.#send('Page.addScriptToEvaluateOnNewDocument', { source: preloadScript(readFileSync(preload, 'utf8')), worldName: PRELOAD_WORLD }),
      this.#send('Fetch.enable', { patterns: [{ urlPattern: '*' }] }),
    ])
  }

  // The page must know at once, so the app is asked before there is a page.
  #refusesWindows() { return this.#openHandler({ url: 'about:blank' }).action === 'deny' }

  #send(method, parameters) { return send(method, parameters, this.#sessionId) }

  #on(method, event) {
    if (method === 'Runtime.executionContextCreated') {
      if (event.context.name === PRELOAD_WORLD && event.context.auxData.frameId === this.#target) this.#preloadWorld = event.context.id
    } else if (method === 'Runtime.bindingCalled') void this.#answer(JSON.parse(event.payload), event.executionContextId)
    else if (method === 'Fetch.requestPaused') void this.#fetch(event).catch(() => undefined) // the page has gone
    else if (method === 'Page.frameNavigated' && !event.frame.parentId) this.#address = ownAddress(event.frame.url)
    else if (method === 'Page.loadEventFired' && this.#address !== 'about:blank') this.emit('did-finish-load', {})
    else if (method === 'Inspector.targetCrashed') this.emit('render-process-gone', {}, { reason: 'crashed' })
    else if (method === 'Target.detachedFromTarget') this.#end()
  }

  #end() {
    if (this.#gone) return
    this.#gone = true
    all.delete(this)
    this.emit('destroyed')
  }

  async #answer({ id, channel, args }, world) {
    const senderFrame = { url: this.#address, origin: originOf(this.#address), parent: null }
    const reply = await answerInvoke({ sender: this, senderFrame }, channel, args.map(decode))
      .then((value) => ({ id, value: encode(value) }))
      .catch((error) => ({ id, error: error.message }))
    await this.#tell(reply, world)
  }

  #tell(message, world) {
    const expression = `${FROM_NODE}(${JSON.stringify(JSON.stringify(message))})`
    return this.#send('Runtime.evaluate', { expression, contextId: world }).catch(() => undefined) // the page has gone
  }

  // Who asks first: the page's own navigation, then the app's rule for requests, then the app's own scheme.
  async #fetch({ requestId, request, resourceType, frameId }) {
    const address = ownAddress(request.url)
    const fail = (errorReason) => this.#send('Fetch.failRequest', { requestId, errorReason })
    if (resourceType === 'Document' && !this.#expected.delete(request.url)) {
      const details = { url: address, isMainFrame: frameId === this.#target }
      const may = emitPreventable(this, 'will-frame-navigate', details) && (!details.isMainFrame || emitPreventable(this, 'will-navigate', details))
      if (!may) return fail('Aborted')
    }
    if (!await isRequestAllowed(address)) return fail('BlockedByClient')
    const response = await answerRequest(address, request)
    if (!response) return this.#send('Fetch.continueRequest', { requestId })
    return this.#send('Fetch.fulfillRequest', {
      requestId,
      responseCode: response.status,
      responseHeaders: [...response.headers].map(([name, value]) => ({ name, value })),
      body: Buffer.from(await response.arrayBuffer()).toString('base64'),
    })
  }

  async loadURL(address) {
    await this.#whenUp
    const url = new URL(shownAddress(address, protocol.isProtocolHandled)).href
    this.#expected.add(url)
    const loaded = new Promise((resolve) => { this.once('did-finish-load', resolve) })
    const { errorText } = await this.#send('Page.navigate', { url })
    if (errorText) throw new Error(`${errorText.replace('net::', '')} loading '${address}'`)
    await loaded
  }

  async executeJavaScript(expression) {
    await this.#whenUp
    const { result, exceptionDetails } = await this.#send('Runtime.evaluate', { expression, awaitPromise: true, returnByValue: true })
    if (exceptionDetails) throw new Error(exceptionDetails.exception?.description ?? exceptionDetails.text)
    return result.value
  }

  send(channel, ...args) { void this.#tell({ channel, args: args.map(encode) }, this.#preloadWorld) }

  async printToPDF(options) {
    const { data } = await this.#send('Page.printToPDF', printOptions(options))
    return Buffer.from(data, 'base64')
  }

  /** Where this runs there is never a printer. */
  print(_options, done) { queueMicrotask(() => done?.(false, 'no valid printers available')) }

  /** Takes the page away for good; the window asks whether it may. */
  destroy() { void this.#whenUp.then(() => send('Target.closeTarget', { targetId: this.#target })) }

  close() { this.emit('-close') }

  isTarget(id) { return id === this.#target }
  isDestroyed() { return this.#gone }
  getURL() { return this.#address }
  getLastWebPreferences() { return this.#preferences }
  setWindowOpenHandler(handler) { this.#openHandler = handler }
  setWebRTCIPHandlingPolicy() { /* nothing here goes by WebRTC */ }
}

export const webContents = {
  getAllWebContents: () => [...all],
  fromDevToolsTargetId: (id) => [...all].find((contents) => contents.isTarget(id)),
}
