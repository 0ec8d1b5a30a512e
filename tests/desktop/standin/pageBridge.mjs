import { createCodec } from './codec.mjs'

/** Name of the world the preload runs in, apart from the page's own. */
export const PRELOAD_WORLD = 'stand-in preload'

/** Name of the function by which that world talks to Node. */
export const TO_NODE = '__standInToNode'

/** Name of the function by which Node talks to that world. */
export const FROM_NODE = '__standInFromNode'

/* The functions below run in the page, by their source text. */

/**
 * One end of the bridge between the page's world and the preload's. Events of the document reach both
 * worlds at once and carry text only, so that values are copied and functions called from afar.
 */
function openEnd(createCodec, own, other) {
  const functions = []
  const calls = new Map()
  let lastCall = 0
  const { encode, encodeInterface, decode } = createCodec(functions, (index) => (...args) => callAcross(index, args))
  const post = (message) => window.dispatchEvent(new CustomEvent(`stand-in ${other}`, { detail: JSON.stringify(message) }))
  const reasonOf = (error) => String(error?.message ?? error)

  function callAcross(index, args) {
    lastCall += 1
    const call = lastCall
    const promise = new Promise((resolve, reject) => { calls.set(call, { resolve, reject, immediate: null }) })
    promise.catch(() => undefined) // whoever awaits it hears of it
    post({ kind: 'call', call, index, args: args.map(encode) })
    const { immediate } = calls.get(call) ?? {}
    if (!immediate) return promise
    calls.delete(call)
    if (immediate.error !== undefined) throw new Error(immediate.error)
    return decode(immediate.value)
  }

  function answer({ call, index, args }) {
    try {
      const result = functions[index](...args.map(decode))
      if (typeof result?.then !== 'function') {
        post({ kind: 'immediate', call, value: encode(result) })
        return
      }
      result.then((value) => post({ kind: 'later', call, value: encode(value) }))
        .catch((error) => post({ kind: 'later', call, error: reasonOf(error) }))
    } catch (error) {
      post({ kind: 'immediate', call, error: reasonOf(error) })
    }
  }

  function settle({ call, value, error }) {
    const { resolve, reject } = calls.get(call)
    calls.delete(call)
    if (error === undefined) resolve(decode(value))
    else reject(new Error(error))
  }

  function freeze(value) {
    if (value === null || typeof value !== 'object') return value
    Object.values(value).forEach(freeze)
    return Object.freeze(value)
  }

  window.addEventListener(`stand-in ${own}`, ({ detail }) => {
    const message = JSON.parse(detail)
    if (message.kind === 'expose') Object.defineProperty(window, message.name, { value: freeze(decode(message.value)), enumerable: true })
    else if (message.kind === 'call') answer(message)
    else if (message.kind === 'immediate') calls.get(message.call).immediate = message
    else settle(message)
  })
  return { expose: (name, value) => post({ kind: 'expose', name, value: encodeInterface(value) }) }
}

/** What the preload gets for `electron`. */
function preloadElectron(createCodec, end, toNode, fromNode) {
  const { encode, decode } = createCodec(null, null)
  const listeners = new Map()
  const questions = new Map()
  let lastId = 0
  const listenersOf = (channel) => listeners.get(channel) ?? []

  globalThis[fromNode] = (text) => {
    const { id, channel, value, error, args } = JSON.parse(text)
    if (channel) listenersOf(channel).forEach((listener) => listener({ sender: ipcRenderer }, ...args.map(decode)))
    else if (error === undefined) questions.get(id).resolve(decode(value))
    else questions.get(id).reject(new Error(error))
    questions.delete(id)
  }

  const ipcRenderer = {
    invoke: (channel, ...args) => new Promise((resolve, reject) => {
      const message = JSON.stringify({ id: lastId += 1, channel, args: args.map(encode) })
      questions.set(lastId, { resolve, reject })
      globalThis[toNode](message)
    }),
    on(channel, listener) {
      listeners.set(channel, [...listenersOf(channel), listener])
      return this
    },
    off(channel, listener) {
      listeners.set(channel, listenersOf(channel).filter((other) => other !== listener))
      return this
    },
  }
  return { ipcRenderer, contextBridge: { exposeInMainWorld: end.expose } }
}

const inTopFrame = (code) => `if (window === window.top) { ${code} }`

const endOf = (own, other) => `(${openEnd})(${createCodec}, '${own}', '${other}')`

/** Script for the page's own world, to run before any of the page's. */
export const pageScript = (refusesWindows) => inTopFrame(`${endOf('page', 'preload')}; ${refusesWindows ? 'window.open = () => null' : ''}`)

/** Script for the preload's world: gives the preload what it has in a sandbox, and runs it. */
export const preloadScript = (preload) => inTopFrame(`
  const electron = (${preloadElectron})(${createCodec}, ${endOf('preload', 'page')}, '${TO_NODE}', '${FROM_NODE}')
  const require = (name) => {
    if (name === 'electron') return electron
    throw new Error('module not found: ' + name)
  }
  const module = { exports: {} };
  (function (require, module, exports, process) { ${preload}\n })(require, module, module.exports, { platform: '${process.platform}', sandboxed: true, env: {} })`)
