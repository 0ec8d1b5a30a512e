import { join } from 'node:path'
import { output, root } from './places.mjs'
import { runNode } from './run.mjs'
import { say } from './say.mjs'
import { contentHash, isStamped, removeStamp, writeStamp } from './staleness.mjs'

const SOURCES = [
  'electron/main', 'electron/preload', 'electron/contract.ts', 'electron/contentSecurityPolicy.json',
  'renderer', 'src', 'electron.vite.config.ts', 'package.json', 'package-lock.json',
]
const stamp = join(output, 'built')
const sourceHash = () => contentHash(root, SOURCES)

/** Whether out/ was made from what the sources hold now. */
export const isBuilt = () => isStamped(stamp, sourceHash())

/**
 * Builds all parts. Call it with the lock held.
 * @returns {Promise<boolean>} whether out/ is up to date now
 */
export async function build() {
  const hash = sourceHash()
  say('Building …')
  removeStamp(stamp)
  const script = join(root, 'node_modules/electron-vite/bin/electron-vite.js')
  const result = await runNode(script, ['build', '--logLevel', 'warn'], { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] })
  if (result.code !== 0) {
    say(`${result.output.trimEnd()}\nThe build failed.`)
    return false
  }
  writeStamp(stamp, hash)
  return true
}
