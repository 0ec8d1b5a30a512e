import { chmod, mkdir, readFile, readdir, writeFile } from 'node:fs/promises'
import { beforeEach, expect, test } from 'vitest'
import { HANGER_BYTES_LIMIT } from '../../../../../electron/contract'
import { createShelfFile, type ShelfFile } from '../../../../../electron/main/files/shelfFile'
import { asOrdinaryUser, temporaryFolder } from '../temporaryFolder'

const folder = temporaryFolder()
let shelf: ShelfFile
let path: string

beforeEach(() => {
  path = folder.file('memory/shelf.json')
  shelf = createShelfFile(path)
})
const onDisk = (): Promise<string> => readFile(path, 'utf8')
const names = async (): Promise<string[]> => (await readdir(folder.file('memory'))).sort()

test('is not there at first, is made with its folder, and is there in the next run', async () => {
  expect(await shelf.load()).toEqual({ ok: true, text: null })
  expect(await shelf.save('1')).toEqual({ ok: true })
  expect(await shelf.save('2')).toEqual({ ok: true })
  expect(await names()).toEqual(['shelf.json', 'shelf.json~'])
  expect(await createShelfFile(path).load()).toEqual({ ok: true, text: '2' })
  expect(await readFile(`${path}~`, 'utf8')).toBe('1')
})

test('is never written over what was not read here', async () => {
  await mkdir(folder.file('memory'))
  await writeFile(path, 'theirs')
  expect(await shelf.save('mine')).toMatchObject({ ok: false, problem: { code: 'CHANGED_ON_DISK' } })
  expect(await shelf.load()).toEqual({ ok: true, text: 'theirs' })
  expect(await shelf.save('mine')).toEqual({ ok: true })
  await writeFile(path, 'theirs again')
  expect(await shelf.save('mine')).toMatchObject({ ok: false, problem: { code: 'CHANGED_ON_DISK' } })
  expect(await onDisk()).toBe('theirs again')
})

test('that nobody can read is put aside, each under a name of its own, and then the place is free', async () => {
  await mkdir(folder.file('memory'))
  for (const byte of [0xff, 0xfe]) {
    await writeFile(path, Buffer.from([byte]))
    expect(await shelf.load()).toMatchObject({ ok: false, problem: { code: 'NOT_TEXT' } })
    expect(await shelf.save('mine')).toMatchObject({ ok: false })
    expect(await shelf.setAside()).toMatchObject({ ok: true })
  }
  expect(await shelf.save('mine')).toEqual({ ok: true })
  expect(await names()).toEqual(['shelf-set-aside-1.json', 'shelf-set-aside-2.json', 'shelf.json'])
  expect([...await readFile(folder.file('memory/shelf-set-aside-2.json'))]).toEqual([0xfe])
  expect(await onDisk()).toBe('mine')
})

test('that is not there need not be put aside', async () => {
  expect(await shelf.setAside()).toEqual({ ok: true, name: null })
})

test('may not be larger than a hanger file', async () => {
  expect(await shelf.save('x'.repeat(HANGER_BYTES_LIMIT + 1))).toMatchObject({ ok: false, problem: { code: 'TOO_LARGE' } })
  expect(await names()).toEqual([])
})

test('a folder that takes no writing is an answer', async () => {
  await chmod(folder.path, 0o555)
  expect(await asOrdinaryUser(() => shelf.save('1'))).toMatchObject({ ok: false, problem: { code: 'PERMISSION' } })
  await chmod(folder.path, 0o777)
  await mkdir(folder.file('memory'))
  await writeFile(path, Buffer.from([0xff]))
  await chmod(folder.file('memory'), 0o555)
  expect(await asOrdinaryUser(() => shelf.setAside())).toMatchObject({ ok: false, problem: { code: 'PERMISSION' } })
  await chmod(folder.file('memory'), 0o755)
})

test('reads another file by its name, or says why not', async () => {
  await writeFile(folder.file('friend.json'), '{"a": 1}')
  expect(await shelf.read(folder.file('friend.json'))).toEqual({ ok: true, imported: { name: 'friend.json', text: '{"a": 1}' } })
  expect(await shelf.read(folder.file('none.json'))).toMatchObject({ ok: false, problem: { code: 'NOT_FOUND' } })
})
