import { execFileSync } from 'node:child_process'
import { mkdir, writeFile } from 'node:fs/promises'
import { expect, test } from 'vitest'
import { readLimited } from '../../../../../electron/main/files/readLimited'
import { temporaryFolder } from '../temporaryFolder'

const folder = temporaryFolder()

test('reads a file as large as the limit, and none larger', async () => {
  await writeFile(folder.file('seven'), 'seven b')
  expect(Buffer.from(await readLimited(folder.file('seven'), 7) ?? []).toString()).toBe('seven b')
  expect(await readLimited(folder.file('seven'), 6)).toBeNull()
})

test('a folder is told by the system\'s own error', async () => {
  await mkdir(folder.file('pots'))
  await expect(readLimited(folder.file('pots'), 7)).rejects.toMatchObject({ code: 'EISDIR' })
})

test.each(process.platform === 'win32' ? [] : ['pipe'])('a %s nobody writes to is refused at once', async (name) => {
  execFileSync('mkfifo', [folder.file(name)])
  await expect(readLimited(folder.file(name), 7)).rejects.toMatchObject({ name: 'FileError', problem: 'NOT_ORDINARY' })
})
