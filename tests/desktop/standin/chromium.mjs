import { spawn } from 'node:child_process'

const SWITCHES = [
  '--headless=new', '--remote-debugging-pipe', '--remote-debugging-port=0', '--no-first-run', '--no-startup-window',
  '--disable-gpu', '--hide-scrollbars',
  ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
]

const waiting = new Map()
const sessions = new Map()
let browser = null
let lastId = 0

/** Sends a command of the DevTools protocol, to the browser or to one session, and resolves with its result. */
export function send(method, parameters = {}, sessionId = undefined) {
  lastId += 1
  const id = lastId
  browser.stdio[3].write(`${JSON.stringify({ id, method, params: parameters, sessionId })}\0`)
  return new Promise((resolve, reject) => { waiting.set(id, { resolve, reject, method }) })
}

/** Calls back with each event of a session. */
export const hear = (sessionId, listener) => { sessions.set(sessionId, listener) }

function take(message) {
  const { id, method, params, sessionId, result, error } = message
  if (id === undefined) {
    // The end of a page is told to the browser's own session.
    const about = method === 'Target.detachedFromTarget' ? params.sessionId : sessionId
    sessions.get(about)?.(method, params)
    return
  }
  const asked = waiting.get(id)
  waiting.delete(id)
  if (error) asked.reject(new Error(`${asked.method}: ${error.message}`))
  else asked.resolve(result)
}

function readMessages(stream) {
  let rest = ''
  stream.setEncoding('utf8').on('data', (text) => {
    const parts = (rest + text).split('\0')
    rest = parts.pop()
    parts.forEach((part) => take(JSON.parse(part)))
  })
}

/** Starts the browser that shows the app's pages. Playwright learns its address from stderr, as from Electron. */
export async function startChromium({ profile, switches, onExit }) {
  const executable = process.env.STRANDWISE_CHROMIUM ?? '/usr/bin/chromium'
  browser = spawn(executable, [...SWITCHES, ...switches, `--user-data-dir=${profile}`], { stdio: ['ignore', 'ignore', 'pipe', 'pipe', 'pipe'] })
  browser.stderr.setEncoding('utf8').on('data', (text) => {
    const [line] = /^DevTools listening on ws:\S+$/m.exec(text) ?? []
    if (line) console.error(line)
  })
  readMessages(browser.stdio[4])
  browser.stdio[3].on('error', () => undefined) // it has gone already
  browser.once('exit', onExit)
  await send('Browser.getVersion')
}

/** Ends the browser, gently at first. */
export function stopChromium() {
  setTimeout(() => browser.kill('SIGKILL'), 2000).unref()
  send('Browser.close').catch(() => undefined)
}
