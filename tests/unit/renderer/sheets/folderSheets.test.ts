import { describe, expect, it } from 'vitest'
import { EMPTY_DOCUMENT } from '#core'
import type { FolderFile } from '../../../../electron/contract'
import type { Platform } from '../../../../renderer/platform/platform'
import type { SheetOutcome } from '../../../../renderer/sheets/messages'
import { createFolderSheets } from '../../../../renderer/sheets/folderSheets'
import type { Sheet } from '../../../../src/sheet/sheet'
import { QUIET_PLATFORM } from '../stores/quietPlatform'

const fileOf = (name: string): FolderFile => ({ token: name, name, size: 2, modified: 1 })
const sheet = (kind: Sheet['kind'], title: string): SheetOutcome =>
  ({ ok: true, isOnlyDraft: kind !== 'tag', sheet: { kind, title, language: 'en', format: 'a4', draft: null, pages: [], notices: [] } })
const settle = (): Promise<void> => new Promise((done) => { setTimeout(done) })

function start(names: readonly string[], answer: (text: string) => SheetOutcome | null | Promise<SheetOutcome | null>, most: number, changes: Partial<Platform> = {}) {
  const platform: Platform = {
    ...QUIET_PLATFORM,
    listFolder: async () => ({ ok: true, listing: { folder: { name: 'Hangers' }, files: names.map(fileOf), isCut: false } }),
    readListed: async (token) => (token === 'gone' ? { ok: false, problem: { code: 'NOT_FOUND', detail: '' } } : { ok: true, text: token }),
    ...changes,
  }
  const ask = { sheet: async ({ source }: { source: object }) => answer('text' in source ? String(source.text) : ''), row: async () => null, pot: async () => null }
  return createFolderSheets(platform, ask, () => '2026-11-26', most)
}
const titles = ({ sheets }: ReturnType<typeof start>): readonly string[] => sheets.value.map(({ title }) => title)

describe('sheets of a folder', () => {
  it('leave out by name what cannot be read, fails or breaks, and hold the rest in order', async () => {
    const folder = start(['fern', 'gone', 'weak', 'bare', 'odd', 'worse', 'ivy'], (text) => {
      if (text === 'weak') return sheet('mustChange', text)
      if (text === 'bare') return sheet('notKnown', text)
      if (text === 'odd') return { ok: false, problem: 'No JSON.' }
      return text === 'worse' ? null : sheet('tag', text)
    }, 9)
    await folder.start('tag', 'a4', EMPTY_DOCUMENT)
    expect([folder.state.value, folder.done.value, titles(folder)]).toEqual(['done', 7, ['fern', 'ivy']])
    expect(folder.leftOut.value.map(({ name }) => name)).toEqual(['gone', 'weak', 'bare', 'odd', 'worse'])
    expect(folder.leftOut.value.map(({ why }) => why)).toEqual([
      expect.stringContaining('no longer there'), expect.stringContaining('fails'), expect.stringContaining('Not enough is known'), 'No JSON.', expect.stringContaining('could not be made'),
    ])
  })

  it('are held no more at once than was agreed; the next are made on asking', async () => {
    const folder = start(['a', 'b', 'c', 'd', 'e'], (text) => sheet('tag', text), 2)
    await folder.start('tag', 'a4', EMPTY_DOCUMENT)
    expect(titles(folder)).toEqual(['a', 'b'])
    await folder.next('tag', 'a4')
    expect([titles(folder), folder.done.value, folder.all.value]).toEqual([['c', 'd'], 4, 5])
  })

  it('are made no further once stopped, and what was made is kept', async () => {
    const waiting: ((outcome: SheetOutcome) => void)[] = []
    const folder = start(['a', 'b', 'c'], () => new Promise<SheetOutcome>((done) => { waiting.push(done) }), 9)
    void folder.start('tag', 'a4', EMPTY_DOCUMENT)
    await settle()
    waiting[0]?.(sheet('tag', 'a'))
    await settle()
    folder.stop()
    waiting[1]?.(sheet('tag', 'b'))
    await settle()
    expect([folder.state.value, titles(folder), waiting.length]).toEqual(['stopped', ['a'], 2])
  })

  it('need a folder that can be looked into', async () => {
    const none = start([], () => null, 9, { listFolder: async () => ({ ok: true, listing: null }) })
    await none.start('tag', 'a4', EMPTY_DOCUMENT)
    expect([none.state.value, none.problem.value]).toEqual(['noFolder', null])
    const gone = start([], () => null, 9, { listFolder: async () => ({ ok: false, problem: { code: 'NOT_FOUND', detail: '' } }) })
    await gone.start('tag', 'a4', EMPTY_DOCUMENT)
    expect(gone.problem.value).toContain('no longer there')
  })

  it('become one list of those that take the pot that was asked about, which can be opened', async () => {
    const asked: unknown[] = []
    const pot = { ...EMPTY_DOCUMENT, name: 'Fern' }
    const platform: Platform = {
      ...QUIET_PLATFORM,
      listFolder: async () => ({ ok: true, listing: { folder: { name: 'Hangers' }, files: ['weak', 'gone', 'strong'].map(fileOf), isCut: false } }),
      readListed: async (token) => (token === 'gone' ? { ok: false, problem: { code: 'NOT_FOUND', detail: '' } } : { ok: true, text: token }),
    }
    const folder = createFolderSheets(platform, {
      sheet: async () => null, row: async () => null,
      pot: async ({ text, pot: whose }) => {
        asked.push(whose)
        return { ok: true, taken: { file: text, document: { ...EMPTY_DOCUMENT, name: text }, heaviest: 4, isTold: true, verdict: text === 'strong' ? 'holds' : 'fails', watered: 3, overLimit: false, decides: 'leg', takes: text === 'strong' } }
      },
    }, () => '2026-11-26', 9)
    folder.gather('pot')
    await folder.start('tag', 'a4', pot)
    expect(asked).toEqual([pot, pot])
    expect([folder.takers.value, folder.taking.value]).toEqual([[{ name: 'strong', token: 'strong' }], 1])
    expect(folder.leftOut.value.map(({ name }) => name)).toEqual(['gone'])
    const [list] = folder.sheets.value
    const [, table] = list?.pages[0]?.blocks ?? []
    expect(table?.kind === 'table' ? table.rows.map(({ head }) => head) : null).toEqual(['strong', 'weak'])
    folder.gather('each')
    expect([folder.takers.value, folder.sheets.value]).toEqual([[], []])
  })
})
