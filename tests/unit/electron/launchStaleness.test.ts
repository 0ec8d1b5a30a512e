import { mkdirSync, mkdtempSync, renameSync, rmSync, utimesSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { contentHash, isStamped, removeStamp, writeStamp } from '../../../electron/launch/staleness.mjs'

let base: string
const put = (name: string, text: string): void => writeFileSync(join(base, name), text)
const hash = (): string => contentHash(base, ['src', 'package.json', 'missing'])

beforeEach(() => {
  base = mkdtempSync(join(tmpdir(), 'staleness-'))
  mkdirSync(join(base, 'src/inner'), { recursive: true })
  put('src/a.ts', 'one')
  put('src/inner/b.ts', 'two')
  put('package.json', '{}')
  put('readme', 'not among the sources')
})
afterEach(() => rmSync(base, { recursive: true }))

describe('the digest of the sources', () => {
  it('stays when only times or other files change', () => {
    const before = hash()
    utimesSync(join(base, 'src/a.ts'), 1, 1)
    put('readme', 'changed')
    expect(hash()).toBe(before)
  })

  it.each<[string, () => void]>([
    ['a content', () => put('src/inner/b.ts', 'twö')],
    ['a name', () => renameSync(join(base, 'src/a.ts'), join(base, 'src/c.ts'))],
    ['a single file', () => put('package.json', '{ }')],
    ['a new file', () => put('src/c.ts', '')],
    ['a file that goes', () => rmSync(join(base, 'src/a.ts'))],
    ['text that moves to the next file', () => { put('src/a.ts', 'onetw'); put('src/inner/b.ts', 'o') }],
  ])('changes with %s', (_what, change) => {
    const before = hash()
    change()
    expect(hash()).not.toBe(before)
  })
})

describe('a stamp', () => {
  it('holds for the digest it was made with, until it is removed', () => {
    const stamp = join(base, 'deep/er/stamp')
    expect(isStamped(stamp, 'abc')).toBe(false)
    writeStamp(stamp, 'abc')
    expect([isStamped(stamp, 'abc'), isStamped(stamp, 'abd')]).toEqual([true, false])
    removeStamp(stamp)
    removeStamp(stamp)
    expect(isStamped(stamp, 'abc')).toBe(false)
  })
})
