import { chmod, lstat, mkdir, readFile, readdir, readlink, stat, symlink, writeFile } from 'node:fs/promises'
import { describe, expect, test } from 'vitest'
import { writeAtomic } from '../../../../../electron/main/files/writeAtomic'
import { asOrdinaryUser, temporaryFolder } from '../temporaryFolder'

const folder = temporaryFolder()
const bytes = (text: string) => new TextEncoder().encode(text)
const write = (name: string, text: string, backup = true) => writeAtomic(folder.file(name), bytes(text), { backup })
const read = (name: string) => readFile(folder.file(name), 'utf8')
const names = async () => (await readdir(folder.path)).sort()

test('a new file is there whole, and alone', async () => {
  await write('fern', 'new')
  expect(await read('fern')).toBe('new')
  expect(await names()).toEqual(['fern'])
})

test('what a file held before is kept beside it, from the last writing only', async () => {
  await write('fern', 'first')
  await write('fern', 'second')
  await write('fern', 'third')
  expect([await read('fern'), await read('fern~')]).toEqual(['third', 'second'])
  expect(await names()).toEqual(['fern', 'fern~'])
})

test('no backup where none is asked for', async () => {
  await write('fern', 'first')
  await write('fern', 'second', false)
  expect(await names()).toEqual(['fern'])
})

describe.runIf(process.platform !== 'win32')('where files have modes and links', () => {
  test('the mode stays, whatever the umask', async () => {
    await writeFile(folder.file('fern'), 'first')
    await chmod(folder.file('fern'), 0o666)
    await write('fern', 'second')
    expect((await stat(folder.file('fern'))).mode & 0o777).toBe(0o666)
  })

  test('a link stays one, and its file is written', async () => {
    await mkdir(folder.file('cellar'))
    await writeFile(folder.file('cellar/fern'), 'first')
    await symlink(folder.file('cellar/fern'), folder.file('fern'))
    await write('fern', 'second')
    expect(await readlink(folder.file('fern'))).toBe(folder.file('cellar/fern'))
    expect([await read('cellar/fern'), await read('cellar/fern~')]).toEqual(['second', 'first'])
  })

  test('a link to nothing is refused and left alone', async () => {
    await symlink(folder.file('gone'), folder.file('fern'))
    await expect(write('fern', 'new')).rejects.toMatchObject({ problem: 'BROKEN_LINK' })
    expect((await lstat(folder.file('fern'))).isSymbolicLink()).toBe(true)
    expect(await names()).toEqual(['fern'])
  })

  test('a backup that is a link does not reach what it leads to', async () => {
    await writeFile(folder.file('letter'), 'dear aunt')
    await writeFile(folder.file('fern'), 'first')
    await symlink(folder.file('letter'), folder.file('fern~'))
    await write('fern', 'second')
    expect([await read('letter'), await read('fern~')]).toEqual(['dear aunt', 'first'])
  })

  test('a folder that may not be written in', async () => {
    await writeFile(folder.file('fern'), 'first')
    await chmod(folder.file('fern'), 0o666)
    await chmod(folder.path, 0o555)
    await asOrdinaryUser(() => expect(write('fern', 'second')).rejects.toMatchObject({ code: 'EACCES' }))
    await chmod(folder.path, 0o777)
    expect(await read('fern')).toBe('first')
    expect(await names()).toEqual(['fern'])
  })

  test('a file that may not be written, though its folder may', async () => {
    await writeFile(folder.file('fern'), 'first')
    await chmod(folder.file('fern'), 0o444)
    await asOrdinaryUser(() => expect(write('fern', 'second')).rejects.toMatchObject({ code: 'EACCES' }))
    expect(await read('fern')).toBe('first')
    expect(await names()).toEqual(['fern'])
  })
})

test('where no backup can be made nothing is written, and no draft stays', async () => {
  await writeFile(folder.file('fern'), 'first')
  await mkdir(folder.file('fern~'))
  await expect(write('fern', 'second')).rejects.toThrow()
  expect(await read('fern')).toBe('first')
  expect(await names()).toEqual(['fern', 'fern~'])
})

test('a folder is not replaced by a file', async () => {
  await mkdir(folder.file('fern'))
  await expect(write('fern', 'new')).rejects.toThrow()
  expect((await stat(folder.file('fern'))).isDirectory()).toBe(true)
  expect(await names()).toEqual(['fern'])
})

test('a folder that is gone is not made again', async () => {
  await expect(write('cellar/fern', 'new')).rejects.toMatchObject({ code: 'ENOENT' })
  expect(await names()).toEqual([])
})
