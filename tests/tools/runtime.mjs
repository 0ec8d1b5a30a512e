import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { findRuntime, hasDisplay } from '../../electron/launch/desktop.mjs'
import { root } from '../../electron/launch/places.mjs'
import { findChromium } from './chromium.mjs'

function realRuntime() {
  const path = findRuntime()
  if (!path) return { why: 'it is not installed' }
  if (!hasDisplay()) return { why: 'there is no screen' }
  const { status, stdout } = spawnSync(path, ['--version'], { encoding: 'utf8', timeout: 20_000, windowsHide: true })
  return status === 0 ? { version: stdout.trim() } : { why: 'it does not start' }
}

/**
 * Decides, once for all test processes, which Electron runs the desktop tests: the real runtime where
 * it works, else the stand-in on Chromium. The choice is left in the environment, where Playwright
 * and the stand-in look: STRANDWISE_RUNTIME, STRANDWISE_CHROMIUM, ELECTRON_OVERRIDE_DIST_PATH.
 */
export function chooseRuntime() {
  if (process.env.STRANDWISE_RUNTIME) return
  process.env.STRANDWISE_CHROMIUM = findChromium()
  const { version, why } = realRuntime()
  process.env.STRANDWISE_RUNTIME = version ? 'electron' : 'stand-in'
  if (version) console.log(`Desktop tests run on Electron ${version}.`)
  else {
    process.env.ELECTRON_OVERRIDE_DIST_PATH = join(root, 'tests/desktop/standin')
    console.log(`Desktop tests run on the stand-in, not on Electron: ${why}.`)
  }
}
