// Fails when files import each other in a circle; a type counts as much as a value.
import { existsSync, readFileSync, readdirSync } from 'node:fs'
import { dirname, join, relative, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import ts from 'typescript'

const sourceFiles = (folder) =>
  existsSync(folder)
    ? readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.(ts|vue|mjs)$/.test(name))
      .map((name) => join(folder, name))
    : []

const scriptOf = (file) => {
  const text = readFileSync(file, 'utf8')
  return file.endsWith('.vue') ? [...text.matchAll(/<script[^>]*>([\s\S]*?)<\/script>/g)].map((m) => m[1]).join('\n') : text
}

/**
 * Which file imports which, by relative imports only.
 * @param {string[]} folders absolute paths
 * @returns {Map<string, string[]>}
 */
export function importGraph(folders) {
  const files = folders.flatMap(sourceFiles)
  const known = new Set(files)
  return new Map(files.map((file) => {
    const targets = ts.preProcessFile(scriptOf(file), true, true).importedFiles
      .filter(({ fileName }) => fileName.startsWith('.'))
      .map(({ fileName }) => resolve(dirname(file), fileName))
    return [file, targets.flatMap((target) => [target, `${target}.ts`].filter((path) => known.has(path)))]
  }))
}

/**
 * The first circle found, as the files passed on the way round, or null.
 * @param {Map<string, string[]>} graph
 * @returns {string[] | null}
 */
export function findCycle(graph) {
  const done = new Set()
  const walk = (file, path) => {
    if (path.includes(file)) return [...path.slice(path.indexOf(file)), file]
    if (done.has(file)) return null
    for (const target of graph.get(file) ?? []) {
      const cycle = walk(target, [...path, file])
      if (cycle) return cycle
    }
    done.add(file)
    return null
  }
  for (const file of graph.keys()) {
    const cycle = walk(file, [])
    if (cycle) return cycle
  }
  return null
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const root = resolve(import.meta.dirname, '../..')
  const graph = importGraph(['src', 'electron', 'renderer'].map((folder) => join(root, folder)))
  const cycle = findCycle(graph)
  if (cycle) console.error(`Import circle: ${cycle.map((file) => relative(root, file)).join(' -> ')}`)
  else console.log(`${graph.size} files, no import circle`)
  process.exitCode = cycle ? 1 : 0
}
