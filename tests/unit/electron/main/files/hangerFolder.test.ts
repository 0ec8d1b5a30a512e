import { mkdir, rm, symlink, utimes, writeFile } from 'node:fs/promises'
import { basename } from 'node:path'
import { beforeEach, expect, test } from 'vitest'
import type { FolderListing } from '../../../../../electron/contract'
import { createHangerFiles, type HangerFiles } from '../../../../../electron/main/files/hangerFiles'
import { createHangerFolder, type HangerFolderPlace } from '../../../../../electron/main/files/hangerFolder'
import { temporaryFolder } from '../temporaryFolder'

const place = temporaryFolder()
let files: HangerFiles
let folder: HangerFolderPlace

beforeEach(async () => {
  files = createHangerFiles()
  folder = createHangerFolder(place.file('memory/folder.json'), files)
  await mkdir(place.file('Hangers'))
})

async function put(name: string, text: string, written: number): Promise<void> {
  await writeFile(place.file(`Hangers/${name}`), text)
  await utimes(place.file(`Hangers/${name}`), written, written)
}

async function listed(): Promise<FolderListing> {
  const outcome = await folder.list()
  if (!outcome.ok || outcome.listing === null) throw new Error('not listed')
  return outcome.listing
}

test('nothing is listed until a folder was chosen; it is remembered in the next run', async () => {
  expect(await folder.list()).toEqual({ ok: true, listing: null })
  expect(folder.choose(place.file('Hangers'))).toEqual({ name: 'Hangers' })
  const next = createHangerFolder(place.file('memory/folder.json'), createHangerFiles())
  expect(await next.list()).toEqual({ ok: true, listing: { folder: { name: 'Hangers' }, files: [], isCut: false } })
})

test('lists hanger files only, the latest written first, and no path', async () => {
  await put('fern.strandwise', '{"a": 1}', 1_700_000_000)
  await put('IVY.STRANDWISE', '{}', 1_700_000_900)
  await put('notes.txt', 'x', 1_700_000_950)
  await put('.hidden.strandwise', 'x', 1_700_000_960)
  await put('fern.strandwise~', 'x', 1_700_000_970)
  await mkdir(place.file('Hangers/old.strandwise'))
  await symlink(place.file('nowhere'), place.file('Hangers/gone.strandwise'))
  folder.choose(place.file('Hangers'))
  const { files: found } = await listed()
  expect(found.map(({ name, size, modified }) => [name, size, modified])).toEqual([
    ['IVY.STRANDWISE', 2, 1_700_000_900_000], ['fern.strandwise', 8, 1_700_000_000_000], ['gone.strandwise', null, null],
  ])
  expect(JSON.stringify(found)).not.toContain(basename(place.path))
  expect(await folder.read(found[1]?.token ?? '')).toEqual({ ok: true, text: '{"a": 1}' })
  expect(await folder.read(found[2]?.token ?? '')).toMatchObject({ ok: false, problem: { code: 'NOT_FOUND' } })
})

test('reads no more than a hanger file can hold, and only text', async () => {
  await writeFile(place.file('Hangers/huge.strandwise'), Buffer.alloc(1_048_577, 'x'))
  await writeFile(place.file('Hangers/picture.strandwise'), Buffer.from([0xff, 0xfe, 0x00]))
  folder.choose(place.file('Hangers'))
  const found = (await listed()).files
  const codeOf = async (name: string) => {
    const outcome = await folder.read(found.find((file) => file.name === name)?.token ?? '')
    return outcome.ok ? 'read' : outcome.problem.code
  }
  expect([await codeOf('huge.strandwise'), await codeOf('picture.strandwise')]).toEqual(['TOO_LARGE', 'NOT_TEXT'])
})

test('only files of the folder are read', async () => {
  await writeFile(place.file('other.strandwise'), '{}')
  folder.choose(place.file('Hangers'))
  await folder.list()
  expect(() => folder.read(files.tokenFor(place.file('other.strandwise')))).toThrow('No file of the folder')
  expect(() => folder.read(place.file('other.strandwise'))).toThrow('No file of the folder')
})

test('looking at a file does not make what somebody else wrote mine to overwrite', async () => {
  const path = place.file('Hangers/fern.strandwise')
  await files.saveAs(path, 'mine')
  await writeFile(path, 'theirs')
  folder.choose(place.file('Hangers'))
  const token = (await listed()).files[0]?.token ?? ''
  expect(await folder.read(token)).toEqual({ ok: true, text: 'theirs' })
  expect(await files.save(token, 'mine again', { overwrite: false })).toMatchObject({ ok: false, problem: { code: 'CHANGED_ON_DISK' } })
})

test('a folder that is gone is a failure, and what was remembered by anyone else is not taken for a path', async () => {
  folder.choose(place.file('Hangers'))
  await rm(place.file('Hangers'), { recursive: true })
  expect(await folder.list()).toMatchObject({ ok: false, problem: { code: 'NOT_FOUND', detail: expect.not.stringContaining('Hangers') as string } })
  for (const stored of ['"relative/place"', '7', '{"path": "/"}', 'no JSON']) {
    await writeFile(place.file('stored.json'), stored)
    expect(await createHangerFolder(place.file('stored.json'), files).list()).toEqual({ ok: true, listing: null })
  }
})
