import { readdirSync, readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { expect, test } from 'vitest'
import { texts } from '../../../../renderer/texts/texts'

const renderer = resolve(import.meta.dirname, '../../../../renderer')

/** Paths of all entries, as `area.entry` or, where entries stand by code, `area.entry.code`. */
function pathsOf(entries: object, above: string): readonly string[] {
  return Object.entries(entries).flatMap(([key, entry]: [string, unknown]) => {
    const path = above === '' ? key : `${above}.${key}`
    return typeof entry === 'object' && entry !== null && !Array.isArray(entry) ? pathsOf(entry, path) : [path]
  })
}

/** Every mention of an entry in a source, by its full path; `x[code]` mentions all that stands under `x`. */
function mentionsIn(source: string): readonly string[] {
  const names = new Map([['texts', '']])
  const uses = source.replaceAll(/const (\w+) = texts\.([\w.]+)/g, (_, name: string, path: string) => {
    names.set(name, path)
    return ''
  })
  return [...names].flatMap(([name, above]) =>
    [...uses.matchAll(new RegExp(`(?<![\\w.])${name}((?:\\.\\w+)+)(\\[)?`, 'g'))].map(([, path = '', byCode]) => `${above}${above === '' ? path.slice(1) : path}${byCode === undefined ? '' : '.*'}`))
}

const sources = readdirSync(renderer, { recursive: true, encoding: 'utf8' })
  .filter((path) => /\.(vue|ts)$/.test(path) && !path.startsWith('texts'))
  .map((path) => readFileSync(resolve(renderer, path), 'utf8'))
const mentions = new Set(sources.flatMap(mentionsIn))

const isUsed = (path: string): boolean =>
  path.split('.').some((_, i, keys) => mentions.has(`${keys.slice(0, i).join('.')}.*`)) || mentions.has(path)
  // An entry may be a record or a list that is handed on whole, or a text whose method is called.
  || [...mentions].some((mention) => path.startsWith(`${mention}.`) || mention.startsWith(`${path}.`))

test('every text of the catalogue is said somewhere in the window', () => {
  expect(pathsOf(texts, '').filter((path) => !isUsed(path))).toEqual([])
})

test('an entry that nobody says would be found', () => {
  const said = new Set(mentionsIn('const t = texts.care\nt.lookFor; t.replace(2); t.kinds[kind]; it.other; texts.shelf.close'))
  expect(said).toEqual(new Set(['care.lookFor', 'care.replace', 'care.kinds.*', 'shelf.close']))
})
