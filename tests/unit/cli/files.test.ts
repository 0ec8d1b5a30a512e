import { execFileSync } from 'node:child_process'
import { closeSync, mkdirSync, mkdtempSync, openSync, rmSync, symlinkSync, writeFileSync, writeSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { listFolder, openFile, readFile } from '../../../src/cli/files'
import { whyOf } from '../../../src/cli/whyOf'
import { writeBytes } from '../../../src/cli/writeWhole'

let folder = ''
const at = (name: string): string => join(folder, name)
beforeEach(() => { folder = mkdtempSync(join(tmpdir(), 'strandwise-cli-')) })
afterEach(() => { rmSync(folder, { recursive: true, force: true }) })

test('files of every name are found in their folder and read', () => {
  const names = ['Farn über'.normalize('NFC'), 'Farn über'.normalize('NFD'), 'سرخس', '👩🏽‍🌾🪴', 'fern . ', '--fern'].map((stem) => `${stem}.strandwise`)
  for (const name of names) writeFileSync(at(name), name)
  expect(listFolder(folder)?.map((path) => readFile(path))).toEqual([...names].sort().map((text) => ({ ok: true, text })))
})

describe.runIf(process.platform === 'linux')('what cannot be read', () => {
  test.each([
    ['a name that is too long', () => at('n'.repeat(300)), 'the name, or the path of its folders, is too long.'],
    ['a path that is too long', () => at('pots/'.repeat(1000)), 'the name, or the path of its folders, is too long.'],
    ['a file for a folder', () => at('fern/within'), 'there is no such file.'],
    ['a link in a circle', () => at('circle'), 'it is a link that leads nowhere.'],
    ['a link to nothing', () => at('dangling'), 'there is no such file.'],
    ['a folder', () => at('pots'), 'this is a folder, not a file.'],
  ])('%s is told in a sentence', (_, path, why) => {
    writeFileSync(at('fern'), '')
    mkdirSync(at('pots'))
    symlinkSync('circle', at('circle'))
    symlinkSync('nothing', at('dangling'))
    expect(readFile(path())).toEqual({ ok: false, why })
    expect(openFile(path())).toEqual({ ok: false, why })
  })

  test('a device without an end, and a file beyond the limit, are read no further; what comes through a pipe is read', () => {
    expect(readFile('/dev/zero')).toEqual({ ok: false, why: 'the file has more than 1048576 bytes; at most 1048576 are read.' })
    writeFileSync(at('large'), new Uint8Array(1048577))
    expect(readFile(at('large'))).toEqual({ ok: false, why: 'the file has 1048577 bytes; at most 1048576 are read.' })
    execFileSync('mkfifo', [at('pipe')])
    execFileSync('sh', ['-c', 'printf hanger > "$0" &', at('pipe')], { stdio: 'ignore' })
    expect(readFile(at('pipe'))).toEqual({ ok: true, text: 'hanger' })
  })
})

describe('an answer that is written', () => {
  test('is written whole, however little is taken at once', () => {
    const taken: number[] = []
    writeBytes('grün and 🪴', (bytes, offset) => {
      const some = bytes.subarray(offset, offset + 3)
      taken.push(...some)
      return some.length
    })
    expect(new TextDecoder().decode(Uint8Array.from(taken))).toBe('grün and 🪴')
  })

  test.runIf(process.platform === 'linux')('to a disk that is full ends with why', () => {
    const fd = openSync('/dev/full', 'w')
    const write = (): void => { writeBytes('answer', (bytes, offset) => writeSync(fd, bytes, offset)) }
    expect(write).toThrow(expect.objectContaining({ code: 'ENOSPC' }))
    closeSync(fd)
    expect(whyOf(Object.assign(new Error('ENOSPC: words'), { code: 'ENOSPC' }))).toBe('no room is left on that disk.')
  })
})

test('what has no sentence yet is told by its name, never by a path', () => {
  expect(whyOf(Object.assign(new Error("EMFILE: words, open '/home/ada/fern'"), { code: 'EMFILE' }))).toBe('the system said: EMFILE.')
})
