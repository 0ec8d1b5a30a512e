import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { dirname, join, relative, sep } from 'node:path'

const filesUnder = (path) => {
  if (!existsSync(path)) return []
  if (statSync(path).isFile()) return [path]
  return readdirSync(path).sort().flatMap((name) => filesUnder(join(path, name)))
}

/**
 * A digest of the names and contents of files and folders; times do not count.
 * @param {string} base folder the names are relative to
 * @param {readonly string[]} sources files and folders in it; what is missing counts as empty
 */
export function contentHash(base, sources) {
  const hash = createHash('sha256')
  for (const file of sources.flatMap((source) => filesUnder(join(base, source)))) {
    const content = readFileSync(file)
    hash.update(`${relative(base, file).split(sep).join('/')}\0${content.length}\0`).update(content)
  }
  return hash.digest('hex')
}

/**
 * Whether a stamp says that these contents were dealt with.
 * @param {string} stamp
 * @param {string} hash
 */
export const isStamped = (stamp, hash) => existsSync(stamp) && readFileSync(stamp, 'utf8') === hash

/**
 * @param {string} stamp
 * @param {string} hash
 */
export function writeStamp(stamp, hash) {
  mkdirSync(dirname(stamp), { recursive: true })
  writeFileSync(stamp, hash)
}

/** @param {string} stamp */
export const removeStamp = (stamp) => rmSync(stamp, { force: true })
