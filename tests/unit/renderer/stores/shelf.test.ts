import { createPinia, setActivePinia } from 'pinia'
import { beforeEach, describe, expect, it } from 'vitest'
import { DEMOS, readShelf, writeShelf, type ShelfEntry } from '#core'
import type { FileProblemCode, ImportTextOutcome, LoadShelfOutcome, SaveOutcome, SetAsideOutcome } from '../../../../electron/contract'
import type { Platform } from '../../../../renderer/platform/platform'
import { useDocument } from '../../../../renderer/stores/document'
import { createShelf } from '../../../../renderer/stores/shelf'
import { BOWL, GRITTY, ROLL, SWAN } from '../../shelf/entries'

const failure = (code: FileProblemCode) => ({ ok: false as const, problem: { code, detail: 'E_DETAIL' } })
const textOf = (...entries: readonly ShelfEntry[]): string => writeShelf({ entries, extra: {} })
const namesIn = (text: string | null): string[] => {
  const read = readShelf(text ?? '')
  return read.ok ? read.shelf.entries.map(({ name }) => name) : ['unreadable']
}

/** A place for one shelf that behaves as both editions do. */
function place(text: string | null) {
  const state = {
    text, seen: null as string | null, aside: [] as string[], exported: [] as string[],
    loads: null as LoadShelfOutcome | null, saves: null as SaveOutcome | null, setsAside: null as SetAsideOutcome | null,
    imports: { ok: true, imported: null } as ImportTextOutcome,
  }
  const platform = {
    loadShelf: async (): Promise<LoadShelfOutcome> => {
      if (state.loads) return state.loads
      state.seen = state.text
      return { ok: true, text: state.text }
    },
    saveShelf: async (next: string): Promise<SaveOutcome> => {
      if (state.saves) return state.saves
      if (state.text !== null && state.text !== state.seen) return failure('CHANGED_ON_DISK')
      state.text = state.seen = next
      return { ok: true }
    },
    setAsideShelf: async (): Promise<SetAsideOutcome> => {
      if (state.setsAside) return state.setsAside
      if (state.text !== null) state.aside.push(state.text)
      state.text = null
      return { ok: true, name: `aside-${state.aside.length}.json` }
    },
    importShelfText: async () => state.imports,
    exportText: async (_: string, extension: string, exported: string) => {
      state.exported.push(exported)
      return { ok: true, name: `My shelf.${extension}` }
    },
  } as unknown as Platform
  return { state, platform }
}

beforeEach(() => setActivePinia(createPinia()))

async function start(text: string | null) {
  const { state, platform } = place(text)
  const shelf = createShelf(platform)
  await shelf.settled()
  return { state, platform, shelf, source: useDocument(), names: () => shelf.entries.value.map(({ name }) => name) }
}

describe('the shelf', () => {
  it('keeps what the hanger says of its cord, and has it in the next run', async () => {
    const { shelf, source, state } = await start(null)
    source.patch({ 'cord.fibre': 'linen', 'cord.diameter': '2.5 mm', 'pot.rim': '9 in' })
    source.editPullTest(0, 'load', '19 kg')
    expect(await shelf.keep('cord', 'Waxed', '2026-03-01', '')).toBe(true)
    expect(shelf.message.value).toEqual({ isProblem: false, text: 'The cord “Waxed” is on your shelf now.' })
    const again = createShelf(place(state.text).platform)
    await again.settled()
    expect(again.entries.value).toEqual([{
      kind: 'cord', name: 'Waxed', date: '2026-03-01', note: '', typed: { 'cord.fibre': 'linen', 'cord.diameter': '2.5 mm' }, pullTests: [{ typed: { load: '19 kg' }, extra: {} }], extra: {},
    }])
  })

  it('says what cannot be kept, and keeps nothing of it', async () => {
    const { shelf, source, state, names } = await start(textOf(ROLL))
    source.edit('cord.diameter', '5')
    expect(await shelf.keep('cord', 'B', '', '')).toBe(false)
    expect(shelf.message.value).toMatchObject({ isProblem: true, text: expect.stringContaining('Diameter of the cord') as string })
    source.edit('cord.diameter', '5 mm')
    expect(await shelf.keep('cord', 'roll b12', '', '')).toBe(false)
    expect(shelf.message.value?.text).toContain('already a cord called “Roll B12”')
    expect([names(), namesIn(state.text)]).toEqual([['Roll B12'], ['Roll B12']])
  })

  it('puts an entry on the hanger in one step, as a copy', async () => {
    const { shelf, source, state } = await start(textOf(ROLL))
    source.patch({ 'cord.fibre': 'jute', 'cord.rated': '900 N', 'testHang.mass': '9 kg' })
    const before = source.document
    shelf.use(ROLL)
    expect(source.document.typed).toEqual({ 'testHang.mass': '9 kg', ...ROLL.typed })
    expect(source.document.pullTests).toEqual(ROLL.pullTests)
    expect(shelf.message.value?.text).toMatch(/The cord “Roll B12” is in this hanger now.*test hang still counts/)
    source.edit('cord.diameter', '4 mm')
    expect(shelf.entries.value).toEqual([ROLL])
    expect(namesIn(state.text)).toEqual(['Roll B12'])
    expect(shelf.canUndo.value, 'the hanger was changed since').toBe(false)
    source.undo()
    expect(shelf.canUndo.value).toBe(true)
    await shelf.undo()
    expect(source.document).toBe(before)
    expect([shelf.entries.value, shelf.canUndo.value]).toEqual([[ROLL], false])
  })

  it('renames, removes and takes the last change back, all kept at once', async () => {
    const { shelf, state, names } = await start(textOf(ROLL, BOWL))
    expect(await shelf.rename(1, 'Green bowl')).toBe(true)
    expect(namesIn(state.text)).toEqual(['Roll B12', 'Green bowl'])
    await shelf.remove(0)
    expect(namesIn(state.text)).toEqual(['Green bowl'])
    await shelf.undo()
    expect([names(), namesIn(state.text)]).toEqual([['Roll B12', 'Green bowl'], ['Roll B12', 'Green bowl']])
    expect(shelf.canUndo.value).toBe(false)
    expect(await shelf.rename(0, ' ')).toBe(false)
    expect(shelf.message.value?.isProblem).toBe(true)
  })

  it('imports what can be read, reports the rest, and exports all', async () => {
    const { shelf, state, names } = await start(textOf(ROLL))
    const text = textOf(ROLL, { ...ROLL, typed: { 'cord.diameter': '9 mm' } }, { ...GRITTY, typed: { 'mix.capacity': '80 %', 'mix.porosity': '60 %' } }, SWAN)
    state.imports = { ok: true, imported: { name: 'friend.json', text } }
    await shelf.importFile()
    expect([names(), namesIn(state.text)]).toEqual([['Roll B12', 'Swan neck'], ['Roll B12', 'Swan neck']])
    expect(shelf.report.value?.text).toBe('friend.json: 1 entry came in, 1 was here already and 2 were refused.')
    expect(shelf.report.value?.refused).toEqual([expect.stringMatching(/^Entry 2, cord “Roll B12”: .*rename/), expect.stringMatching(/^Entry 3, mix “Gritty”: .*80 %.*60 %/)])
    await shelf.exportFile()
    expect(state.exported).toEqual([state.text])
    await shelf.undo()
    expect(names()).toEqual(['Roll B12'])
  })

  it.each([
    [{ ok: true, imported: { name: 'fern.strandwise', text: DEMOS[0]?.text ?? '' } }, 'fern.strandwise: This is a hanger file, not a shelf.'],
    [failure('NOT_TEXT'), 'Nothing was imported: it is not text.'],
    [{ ok: true, imported: null }, null],
  ] as const)('an import that is none leaves all as it was', async (imports, says) => {
    const { shelf, state, names } = await start(textOf(ROLL))
    state.imports = imports
    await shelf.importFile()
    expect(names()).toEqual(['Roll B12'])
    if (says === null) expect(shelf.message.value).toBeNull()
    else expect(shelf.message.value).toMatchObject({ isProblem: true, text: expect.stringContaining(says) as string })
  })
})

describe('nothing is lost', () => {
  it.each(['not JSON', DEMOS[0]?.text ?? '', '{"format": "strandwise-shelf", "version": 9}'])('a kept shelf that cannot be read is put aside, and that is said: %#', async (text) => {
    const { shelf, state, source } = await start(text)
    expect(shelf.message.value).toMatchObject({ isProblem: true, text: expect.stringContaining('aside-1.json') as string })
    expect([state.aside, state.text]).toEqual([[text], null])
    source.edit('mix.kind', 'coir')
    await shelf.keep('mix', 'Coir', '', '')
    expect(namesIn(state.text)).toEqual(['Coir'])
  })

  it('of a kept shelf of which one entry cannot be read, the rest is kept and the whole is put aside', async () => {
    const text = textOf(ROLL, { ...SWAN, typed: { 'hook.rated': 'plenty' } }, BOWL)
    const { shelf, state } = await start(text)
    expect(state.aside).toEqual([text])
    expect(namesIn(state.text)).toEqual(['Roll B12', 'Blue bowl'])
    expect(shelf.message.value?.text).toMatch(/Entry 2, hook “Swan neck”: .*plenty.*aside-1\.json/)
  })

  it('where it can be neither read nor put aside nothing is written, and each change says so', async () => {
    const { platform, state } = place('theirs')
    state.loads = failure('PERMISSION')
    state.setsAside = failure('PERMISSION')
    const shelf = createShelf(platform)
    await shelf.settled()
    expect(shelf.message.value?.text).toContain('Your shelf could not be read')
    useDocument().edit('mix.kind', 'coir')
    shelf.hush()
    await shelf.keep('mix', 'Coir', '', '')
    expect(shelf.message.value?.text).toContain('export it to keep it')
    expect([shelf.entries.value.length, state.text]).toEqual([1, 'theirs'])
  })

  it('a shelf that cannot be saved stays, and is saved with the next change', async () => {
    const { shelf, state, source } = await start(null)
    source.patch({ 'mix.kind': 'coir', 'hook.kind': 'closed' })
    state.saves = failure('DISK_FULL')
    await shelf.keep('mix', 'Coir', '', '')
    expect(shelf.message.value).toEqual({ isProblem: true, text: 'Your shelf could not be saved: no room is left. What is on it stays only until Strandwise is closed: export it to keep it.' })
    state.saves = null
    await shelf.keep('hook', 'Eye', '', '')
    expect(namesIn(state.text)).toEqual(['Coir', 'Eye'])
  })

  it('what another window kept meanwhile is added, not written over', async () => {
    const { shelf, state, source } = await start(textOf(ROLL))
    state.text = textOf(ROLL, BOWL)
    source.edit('mix.kind', 'coir')
    await shelf.keep('mix', 'Coir', '', '')
    expect(namesIn(state.text)).toEqual(['Roll B12', 'Coir', 'Blue bowl'])
    expect(shelf.message.value).toMatchObject({ isProblem: false, text: expect.stringContaining('another window') as string })
    expect(state.aside).toEqual([])
    expect(shelf.canUndo.value, 'to go back would take off what the other window kept').toBe(false)
  })

  it('where another window kept another thing of the same name, theirs is put aside', async () => {
    const { shelf, state } = await start(textOf(ROLL))
    const theirs = textOf({ ...ROLL, note: 'theirs' })
    state.text = theirs
    await shelf.rename(0, 'ROLL B12')
    expect(state.aside).toEqual([theirs])
    expect(namesIn(state.text)).toEqual(['ROLL B12'])
    expect(shelf.message.value?.isProblem).toBe(true)
  })

  it('what is kept before the shelf was read stands beside what was on it', async () => {
    const { platform, state } = place(textOf(ROLL))
    const shelf = createShelf(platform)
    useDocument().edit('mix.kind', 'coir')
    await shelf.keep('mix', 'Coir', '', '')
    expect(namesIn(state.text).sort()).toEqual(['Coir', 'Roll B12'])
  })
})
