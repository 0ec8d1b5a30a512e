import { chmod, mkdir, open, readFile, writeFile } from 'node:fs/promises'
import { constants } from 'node:os'
import { getSystemErrorMap } from 'node:util'
import { describe, expect, test } from 'vitest'
import { failureOf } from '../../../../../electron/main/files/fileProblem'
import { asOrdinaryUser, temporaryFolder } from '../temporaryFolder'

const folder = temporaryFolder()
const problem = async (work: Promise<unknown>) => failureOf(await work.then(() => 'nothing went wrong', (error: unknown) => error)).problem

describe('what really goes wrong with files', () => {
  test('a file that is not there, or whose folder is a file', async () => {
    expect(await problem(readFile(folder.file('none')))).toEqual({ code: 'NOT_FOUND', detail: 'ENOENT: no such file or directory' })
    await writeFile(folder.file('file'), '')
    const { code } = await problem(readFile(folder.file('file/within')))
    expect(code).toBe('NOT_FOUND')
  })

  test('a folder where a file should be', async () => {
    await mkdir(folder.file('pots'))
    expect(await problem(open(folder.file('pots'), 'r+'))).toMatchObject({ code: process.platform === 'win32' ? 'PERMISSION' : 'IS_FOLDER' })
  })

  test('a name that is too long', async () => {
    expect(await problem(writeFile(folder.file('n'.repeat(300)), ''))).toMatchObject({ code: process.platform === 'win32' ? 'NOT_FOUND' : 'TOO_LONG' })
  })

  test('a file that may not be written', async () => {
    await writeFile(folder.file('kept'), '')
    await chmod(folder.file('kept'), 0o444)
    expect(await asOrdinaryUser(() => problem(open(folder.file('kept'), 'r+')))).toMatchObject({ code: 'PERMISSION' })
  })

  test.each(process.platform === 'linux' ? ['/dev/full'] : [])('a disk that is full: %s', async (path) => {
    expect(await problem(writeFile(path, 'x'))).toEqual({ code: 'DISK_FULL', detail: 'ENOSPC: no space left on device' })
  })

  test('bytes that are no text', async () => {
    expect(await problem(Promise.resolve(new Uint8Array([0xff])).then((bytes) => new TextDecoder('utf-8', { fatal: true }).decode(bytes))))
      .toMatchObject({ code: 'NOT_TEXT' })
  })
})

test.each([
  ['EACCES', 'PERMISSION'], ['EPERM', 'PERMISSION'], ['EROFS', 'READ_ONLY'], ['ENOSPC', 'DISK_FULL'], ['EDQUOT', 'DISK_FULL'],
  ['EFBIG', 'TOO_LARGE'], ['EBUSY', 'BUSY'], ['ETXTBSY', 'BUSY'], ['ELOOP', 'BROKEN_LINK'], ['EILSEQ', 'BAD_NAME'],
  ['EIO', 'DISK_FAULT'], ['ESTALE', 'DISK_FAULT'], ['ENOTCONN', 'DISK_FAULT'], ['ETIMEDOUT', 'DISK_FAULT'], ['EMFILE', 'OTHER'],
] as const)('%s, as Node reports the system\'s number for it, is %s', (name, code) => {
  const errno = -constants.errno[name]
  const reported = getSystemErrorMap().get(errno)?.[0] ?? `Unknown system error ${errno}`
  const error = Object.assign(new Error(`${reported}: words, open '/home/ada/fern'`), { code: reported, errno })
  const { problem: found } = failureOf(error)
  expect(found.code).toBe(code)
  expect(found.detail).toMatch(new RegExp(`^${name}(: |$)`))
  expect(found.detail).not.toContain('ada')
})

test('whatever else was thrown is told as it is', () => {
  expect(failureOf(new Error('no printer'))).toEqual({ ok: false, problem: { code: 'OTHER', detail: 'no printer' } })
  expect(failureOf('odd')).toEqual({ ok: false, problem: { code: 'OTHER', detail: 'odd' } })
})
