import { existsSync, mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { memory, root } from './places.mjs'
import { run, runNode } from './run.mjs'
import { say } from './say.mjs'
import { removeStamp, writeStamp } from './staleness.mjs'

const DOWNLOAD_LIMIT_MS = 60_000
const DAY_MS = 24 * 60 * 60_000
const folder = join(root, 'node_modules/electron')
const refused = join(memory, 'runtime-refused')

const USUAL_NAMES = { darwin: 'Electron.app/Contents/MacOS/Electron', win32: 'electron.exe' }

/** Path of the Electron runtime, or null if it is not there. */
export function findRuntime() {
  const record = join(folder, 'path.txt')
  const name = existsSync(record) ? readFileSync(record, 'utf8').trim() : USUAL_NAMES[process.platform] ?? 'electron'
  const path = join(process.env.ELECTRON_OVERRIDE_DIST_PATH || join(folder, 'dist'), name)
  return existsSync(path) ? path : null
}

/** Whether there is a screen to open a window on. */
export const hasDisplay = () => process.platform !== 'linux' || Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY)

/**
 * The runtime, fetched if need be; a refusal is remembered for a day, so that every start without a
 * network does not wait for it again.
 * @returns {Promise<string | null>}
 */
export async function obtainRuntime() {
  const found = findRuntime()
  if (found || process.env.ELECTRON_OVERRIDE_DIST_PATH) return found
  if (existsSync(refused) && Date.now() - statSync(refused).mtimeMs < DAY_MS) return null
  say('Fetching the Electron runtime, once …')
  await runNode(join(folder, 'install.js'), [], { cwd: root, stdio: 'ignore', timeout: DOWNLOAD_LIMIT_MS })
  const fetched = findRuntime()
  if (fetched) removeStamp(refused)
  else writeStamp(refused, new Date().toISOString())
  return fetched
}

/**
 * Opens the window and waits until it is closed.
 * @param {string} runtime
 * @param {readonly string[]} args
 * @param {string} cwd
 * @returns {Promise<{ code: number, shown: boolean }>} `shown`: whether a window was ever seen; the main
 *   process says so by making the file named in STRANDWISE_READY_FILE
 */
export async function openDesktop(runtime, args, cwd) {
  const note = mkdtempSync(join(tmpdir(), 'strandwise-'))
  const readyFile = join(note, 'ready')
  const env = { ...process.env, STRANDWISE_READY_FILE: readyFile }
  delete env.ELECTRON_RUN_AS_NODE
  const { code } = await run(runtime, [root, ...args], { cwd, env, stdio: 'inherit' })
  const shown = existsSync(readyFile)
  rmSync(note, { recursive: true, force: true })
  return { code, shown }
}
