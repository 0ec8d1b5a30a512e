import { readFileSync, writeFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { expect, test } from 'vitest'
import { createRecentFiles } from '../../../../../electron/main/files/recentFiles'
import { temporaryFolder } from '../temporaryFolder'

const folder = temporaryFolder()
const recent = () => createRecentFiles(folder.file('memory/recent.json'))
const fern = resolve('/pots/fern')
const ivy = resolve('/pots/ivy')

test('the latest comes first, once, and is still there in the next run', () => {
  const list = recent()
  list.remember(fern)
  list.remember(ivy)
  list.remember(fern)
  expect(list.list()).toEqual([fern, ivy])
  expect(recent().list()).toEqual([fern, ivy])
  list.forget(fern)
  expect(recent().list()).toEqual([ivy])
})

test('a dozen are kept', () => {
  const list = recent()
  for (let index = 1; index <= 15; index += 1) list.remember(resolve(`/pots/${index}`))
  expect(recent().list()).toHaveLength(12)
  expect(recent().list()[11]).toBe(resolve('/pots/4'))
})

test.each(['', '{}', '[1, "pots/fern", null]', 'not JSON'])('a memory that reads %j is an empty one', (text) => {
  writeFileSync(folder.file('recent.json'), text)
  expect(createRecentFiles(folder.file('recent.json')).list()).toEqual([])
})

test('where nothing can be remembered the list still works', () => {
  writeFileSync(folder.file('memory'), 'a file where the folder should be')
  const list = recent()
  list.remember(fern)
  expect(list.list()).toEqual([fern])
  expect(readFileSync(folder.file('memory'), 'utf8')).toBe('a file where the folder should be')
})
