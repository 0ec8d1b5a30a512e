import { existsSync, readFileSync, realpathSync } from 'node:fs'
import { basename, delimiter, dirname, join } from 'node:path'
import { memory, root } from './places.mjs'
import { runNode } from './run.mjs'
import { say } from './say.mjs'
import { contentHash, isStamped, writeStamp } from './staleness.mjs'

const readPackages = (file) => JSON.parse(readFileSync(file, 'utf8')).packages

/**
 * Whether the packages a lock file asks for are the ones npm says it has installed. Optional packages
 * may be missing: they are for other systems.
 * @param {Record<string, { version?: string, integrity?: string, optional?: boolean }>} wanted
 * @param {Record<string, { version?: string, integrity?: string }>} installed
 */
export function agree(wanted, installed) {
  return Object.entries(wanted).every(([path, { version, integrity, optional }]) => {
    const found = installed[path]
    return path === '' || (found ? found.version === version && found.integrity === integrity : optional === true)
  })
}

/** The script behind the npm command: starting `npm` itself would need a shell on Windows. */
export function findNpm() {
  const named = process.env.npm_execpath
  if (named && basename(named) === 'npm-cli.js' && existsSync(named)) return named
  const beside = dirname(process.execPath)
  const places = [join(beside, 'node_modules/npm/bin/npm-cli.js'), join(beside, '../lib/node_modules/npm/bin/npm-cli.js')]
  const onPath = (process.env.PATH ?? '').split(delimiter)
    .map((folder) => join(folder, 'npm'))
    .filter((file) => existsSync(file))
    .map((file) => realpathSync(file))
    .filter((file) => basename(file) === 'npm-cli.js')
  return [...places, ...onPath].find((file) => existsSync(file)) ?? null
}

const stamp = join(memory, 'installed')
const lockHash = () => contentHash(root, ['package-lock.json'])

/** Whether node_modules holds what package-lock.json asks for. */
export function isInstalled() {
  if (isStamped(stamp, lockHash())) return true
  const record = join(root, 'node_modules/.package-lock.json')
  return existsSync(record) && agree(readPackages(join(root, 'package-lock.json')), readPackages(record))
}

/**
 * Installs the packages. Call it with the lock held.
 * @returns {Promise<boolean>} whether they are there now
 */
export async function install() {
  const npm = findNpm()
  if (!npm) {
    say('npm was not found beside Node; run "npm ci" in the project folder.')
    return false
  }
  say('Installing the packages, once …')
  const { code, output } = await runNode(npm, ['ci', '--no-audit', '--no-fund'], { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] })
  if (code !== 0) {
    say(`${output.trimEnd()}\nThe packages could not be installed (npm ci ended with ${code}).`)
    return false
  }
  writeStamp(stamp, lockHash())
  return true
}
