import { createPinia, setActivePinia } from 'pinia'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { nextTick } from 'vue'
import { DEMOS, EMPTY_DOCUMENT, writeDocument } from '#core'
import type { FileProblemCode, OpenOutcome, SaveOutcome } from '../../../../electron/contract'
import type { Platform } from '../../../../renderer/platform/platform'
import { useDocument } from '../../../../renderer/stores/document'
import { draftText, readDraft } from '../../../../renderer/stores/drafts'
import { createFile } from '../../../../renderer/stores/file'
import { useQuestions } from '../../../../renderer/stores/questions'
import { demoDocument } from '../hangers'
import { QUIET_PLATFORM } from './quietPlatform'

const fern = demoDocument('fern-over-the-sideboard')
const failure = (code: FileProblemCode) => ({ ok: false as const, problem: { code, detail: 'E_DETAIL' } })

/** A shell that keeps what it is given and answers as it is told. */
function shell() {
  const state = {
    written: [] as { token: string, text: string, overwrite: boolean }[],
    unsaved: [] as boolean[],
    drafts: [] as (string | null)[],
    keeps: { ok: true } as SaveOutcome,
    leftBehind: null as string | null,
    chosenName: 'fern.strandwise' as string | null,
    opens: { ok: true, hanger: { token: 'fern', name: 'fern.strandwise', text: writeDocument(fern) } } as OpenOutcome,
    saves: [] as SaveOutcome[],
    fromOutside: null as ((outcome: OpenOutcome) => void) | null,
    beforeClose: (): Promise<boolean> => Promise.resolve(false),
  }
  const stop = (): void => undefined
  const platform: Platform = {
    ...QUIET_PLATFORM,
    openHanger: async () => state.opens,
    openRecent: async () => state.opens,
    recent: async () => [],
    saveHanger: async (token, text, { overwrite }) => {
      const outcome = state.saves.shift() ?? { ok: true }
      if (outcome.ok) state.written.push({ token, text, overwrite })
      return outcome
    },
    saveHangerAs: async (_, text) => {
      const outcome = state.saves.shift() ?? { ok: true }
      if (!outcome.ok) return outcome
      if (state.chosenName === null) return { ok: true, saved: null }
      state.written.push({ token: 'chosen', text, overwrite: false })
      return { ok: true, saved: { token: 'chosen', name: state.chosenName } }
    },
    savePdf: async () => ({ ok: true, name: 'fern.pdf' }),
    exportText: async () => ({ ok: true, name: null }),
    keepDraft: async (draft) => {
      if (draft === null || state.keeps.ok) state.drafts.push(draft)
      return draft === null ? { ok: true } : state.keeps
    },
    takeDraft: async () => state.leftBehind,
    setUnsaved: (unsaved) => { state.unsaved.push(unsaved) },
    onMenu: () => stop,
    onOpened: (listener) => {
      state.fromOutside = listener
      return stop
    },
    onSaveBeforeClose: (save) => {
      state.beforeClose = save
      return stop
    },
  }
  return { state, platform }
}

beforeEach(() => setActivePinia(createPinia()))

function start(given: { readonly leftBehind?: string } = {}) {
  const { state, platform } = shell()
  state.leftBehind = given.leftBehind ?? null
  return { state, file: createFile(platform), source: useDocument(), questions: useQuestions() }
}

/** Lets what was begun run until it waits for the user. */
const settle = (): Promise<void> => new Promise((done) => { setTimeout(done) })

describe('the file', () => {
  it('saved, changed and opened again brings back what was typed', async () => {
    const { file, source, state } = start()
    source.edit('pot.rim', '4 3/4 in')
    source.editPullTest(0, 'load', '31 lb')
    source.rename('Fern')
    expect(await file.save()).toBe(true)
    const text = state.written[0]?.text ?? ''
    source.edit('pot.rim', '9 cm')
    state.opens = { ok: true, hanger: { token: 'chosen', name: 'fern.strandwise', text } }
    const opening = file.open()
    useQuestions().answer('discard')
    await opening
    expect(source.document).toEqual({ name: 'Fern', typed: { 'pot.rim': '4 3/4 in' }, pullTests: [{ typed: { load: '31 lb' }, extra: {} }], inspections: [], sold: null, extra: {} })
  })

  it('lags behind from the first edit until saved, or until the edit is undone', async () => {
    const { file, source, state } = start()
    expect(file.isDirty.value).toBe(false)
    source.edit('pot.rim', '9 cm')
    expect(file.isDirty.value).toBe(true)
    await file.save()
    expect(file.isDirty.value).toBe(false)
    source.edit('pot.height', '8 cm')
    source.undo()
    await nextTick()
    expect(file.isDirty.value).toBe(false)
    expect(state.unsaved).toContain(true)
    expect(state.unsaved.at(-1)).toBe(false)
  })

  it('still lags behind if it was changed while it was being saved', async () => {
    const { file, source, state } = start()
    source.edit('pot.rim', '9 cm')
    const saving = file.save()
    await Promise.resolve()
    source.edit('pot.rim', '10 cm')
    await saving
    expect(state.written[0]?.text).toContain('"9 cm"')
    expect(file.isDirty.value).toBe(true)
  })

  it('asks for a name once, then writes to that file', async () => {
    const { file, source, state } = start()
    source.edit('pot.rim', '9 cm')
    await file.save()
    source.edit('pot.rim', '10 cm')
    await file.save()
    expect(state.written.map(({ token }) => token)).toEqual(['chosen', 'chosen'])
    expect(state.written[1]?.text).toContain('"10 cm"')
    expect(file.name.value).toBe('fern.strandwise')
  })

  it('is not saved when no name was chosen', async () => {
    const { file, source, state } = start()
    state.chosenName = null
    source.edit('pot.rim', '9 cm')
    expect(await file.save()).toBe(false)
    expect(file.isDirty.value).toBe(true)
  })

  it('says why it could not be saved, and stays unsaved', async () => {
    const { file, source, state } = start()
    source.edit('pot.rim', '9 cm')
    state.saves = [failure('DISK_FULL')]
    expect(await file.save()).toBe(false)
    expect(file.message.value).toEqual({ isProblem: true, text: 'The hanger was not saved: no room is left on that disk. Make room, or save it in another place.' })
    expect(file.isDirty.value).toBe(true)
  })

  it.each([
    ['overwrite', [{ token: 'fern', overwrite: true }]],
    ['saveAs', [{ token: 'chosen', overwrite: false }]],
    ['cancel', []],
  ])('that somebody else changed is written over only when told: %s', async (answer, written) => {
    const { file, source, state, questions } = start()
    await file.open()
    source.edit('pot.rim', '9 cm')
    state.saves = [failure('CHANGED_ON_DISK')]
    const saving = file.save()
    await settle()
    expect(questions.open).toBe('overwrite')
    questions.answer(answer)
    expect(await saving).toBe(written.length > 0)
    expect(state.written.map(({ token, overwrite }) => ({ token, overwrite }))).toEqual(written)
  })

  it.each(['startNew', 'open', 'openRecent', 'openDemo', 'fromOutside'] as const)('with changes not saved is not put aside by %s without asking', async (way) => {
    const { file, source, state, questions } = start()
    source.edit('pot.rim', '9 cm')
    const before = source.document
    const go = {
      startNew: file.startNew, open: file.open, openRecent: () => file.openRecent('fern'), openDemo: () => file.openDemo(DEMOS[0]?.text ?? ''),
      fromOutside: async () => state.fromOutside?.(state.opens),
    }[way]
    const going = go()
    await settle()
    expect(questions.open).toBe('unsaved')
    questions.answer('cancel')
    await going
    await settle()
    expect(source.document).toBe(before)
    const again = go()
    await settle()
    questions.answer('discard')
    await again
    await settle()
    expect(source.document).not.toBe(before)
    expect(file.isDirty.value).toBe(false)
  })

  it('is kept when the save asked for before leaving fails', async () => {
    const { file, source, state, questions } = start()
    source.edit('pot.rim', '9 cm')
    const before = source.document
    state.saves = [failure('PERMISSION')]
    const going = file.startNew()
    await settle()
    questions.answer('save')
    await going
    expect(source.document).toBe(before)
  })

  it('that cannot be opened leaves the hanger at hand and says why', async () => {
    const { file, source, state } = start()
    state.opens = failure('NOT_FOUND')
    await file.open()
    expect(file.message.value?.text).toBe('The file was not opened: it is no longer there. It may have been moved or renamed.')
    state.opens = { ok: true, hanger: { token: 'x', name: 'x.strandwise', text: '{"format":"other"}' } }
    await file.open()
    expect(file.message.value).toMatchObject({ isProblem: true, text: expect.stringContaining('not a hanger file') as string })
    expect(source.document).toBe(EMPTY_DOCUMENT)
    expect(file.name.value).toBeNull()
  })

  it('tells of entries this version does not know, and writes them back', async () => {
    const { file, state } = start()
    const text = JSON.stringify({ format: 'strandwise-hanger', version: 1, shop: { price: 12 } })
    state.opens = { ok: true, hanger: { token: 'x', name: 'x.strandwise', text } }
    await file.open()
    expect(file.message.value?.text).toContain('shop')
    await file.save()
    expect(JSON.parse(state.written[0]?.text ?? '')).toMatchObject({ shop: { price: 12 } })
  })

  it('saves before the window closes, and answers whether it did', async () => {
    const { source, state } = start()
    source.edit('pot.rim', '9 cm')
    state.saves = [failure('READ_ONLY')]
    expect(await state.beforeClose()).toBe(false)
    expect(await state.beforeClose()).toBe(true)
  })
})

describe('a hanger that is not saved', () => {
  beforeEach(() => { vi.useFakeTimers() })
  afterEach(() => { vi.useRealTimers() })

  it('is kept a moment after the last change, and no longer once it is saved', async () => {
    const { source, state, file } = start()
    source.edit('pot.rim', '9 cm')
    await nextTick()
    source.edit('pot.rim', '93 mm')
    await nextTick()
    expect(state.drafts).toEqual([])
    await vi.advanceTimersByTimeAsync(1000)
    expect(state.drafts.map((draft) => readDraft(draft ?? '')?.document.typed)).toEqual([{ 'pot.rim': '93 mm' }])
    await file.save()
    await nextTick()
    expect(state.drafts.at(-1)).toBeNull()
  })

  it('is kept while somebody types without a pause', async () => {
    const { source, state } = start()
    for (let n = 0; n < 20; n++) {
      source.edit('pot.rim', `${100 + n} mm`)
      await vi.advanceTimersByTimeAsync(300)
    }
    expect(state.drafts.length).toBeGreaterThan(5)
  })

  it('says once that it cannot be kept, and again only after it could be meanwhile', async () => {
    const { source, state, file } = start()
    const change = async (rim: string, keeps: SaveOutcome): Promise<string | undefined> => {
      file.hush()
      state.keeps = keeps
      source.edit('pot.rim', rim)
      await vi.advanceTimersByTimeAsync(1000)
      return file.message.value?.text
    }
    expect(await change('9 cm', failure('DISK_FULL'))).toBe('What is not saved could not be kept for the case that Strandwise ends unasked: no room is left. Save the hanger often.')
    expect(await change('10 cm', failure('DISK_FULL'))).toBeUndefined()
    expect(await change('11 cm', { ok: true })).toBeUndefined()
    expect(await change('12 cm', failure('PERMISSION'))).toContain('it is not allowed there.')
    expect(source.document.typed).toEqual({ 'pot.rim': '12 cm' })
  })

  it('comes back at the next start, not saved, with the name of its file', async () => {
    const kept = draftText({ file: 'fern.strandwise', document: fern })
    const { source, file } = start({ leftBehind: kept })
    await vi.advanceTimersByTimeAsync(0)
    expect(source.document).toEqual(fern)
    expect(file.isDirty.value).toBe(true)
    expect(file.name.value).toBeNull()
    expect(file.message.value?.text).toContain('fern.strandwise')
  })

  it.each(['', '{', 'null', '{"text": 7}', '{"text": "{}"}', '{"file": 4, "text": "no hanger"}'])('that cannot be read is passed over: %s', async (leftBehind) => {
    const { source, file } = start({ leftBehind })
    await vi.advanceTimersByTimeAsync(0)
    expect(source.document).toBe(EMPTY_DOCUMENT)
    expect(file.message.value).toBeNull()
  })

  it('asks before a file opened from outside takes its place', async () => {
    const { source, state, questions } = start({ leftBehind: draftText({ file: null, document: fern }) })
    state.fromOutside?.({ ok: true, hanger: { token: 'x', name: 'x.strandwise', text: writeDocument(EMPTY_DOCUMENT) } })
    await vi.advanceTimersByTimeAsync(0)
    expect(questions.open).toBe('unsaved')
    questions.answer('cancel')
    await vi.advanceTimersByTimeAsync(0)
    expect(source.document).toEqual(fern)
  })
})
