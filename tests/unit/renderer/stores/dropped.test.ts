import { mount } from '@vue/test-utils'
import { createPinia, setActivePinia } from 'pinia'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { nextTick } from 'vue'
import { writeDocument } from '#core'
import FileDrop from '../../../../renderer/components/FileDrop.vue'
import type { DropOutcome, Platform } from '../../../../renderer/platform/platform'
import { useDocument } from '../../../../renderer/stores/document'
import { createFile, PLATFORM } from '../../../../renderer/stores/file'
import { useQuestions } from '../../../../renderer/stores/questions'
import { demoDocument } from '../hangers'
import { QUIET_PLATFORM } from './quietPlatform'

const fern = demoDocument('fern-over-the-sideboard')
const dropOf = (...names: string[]): DataTransfer => ({ files: names.map((name) => new File(['?'], name)), types: ['Files'] }) as unknown as DataTransfer
const settle = (): Promise<void> => new Promise((done) => { setTimeout(done) })

/** A shell in which dropped files have the text of the fern, and this token. */
function platformWith(token: string | null, changes: Partial<Platform> = {}) {
  const openDropped = vi.fn(async ({ files }: DataTransfer): Promise<DropOutcome> => ({ ok: true, hanger: { token, name: files[0]?.name ?? '', text: writeDocument(fern) } }))
  const saveHanger = vi.fn<Platform['saveHanger']>(async () => ({ ok: true }))
  const saveHangerAs = vi.fn(async (name: string) => ({ ok: true as const, saved: { token: 'chosen', name: `${name}.strandwise` } }))
  return { ...QUIET_PLATFORM, openDropped, saveHanger, saveHangerAs, ...changes }
}

beforeEach(() => setActivePinia(createPinia()))

describe('a file dropped on the window', () => {
  it('is opened, and saved again where it came from', async () => {
    const platform = platformWith('fern')
    const file = createFile(platform)
    await file.openDropped(dropOf('my fern.strandwise'))
    expect(useDocument().document).toEqual(fern)
    expect([file.name.value, file.isDirty.value, file.message.value]).toEqual(['my fern.strandwise', false, null])
    await file.save()
    expect(platform.saveHanger).toHaveBeenCalledWith('fern', writeDocument(fern), { overwrite: false })
  })

  it('without a token is known by its name, and saving asks where to, as it was called', async () => {
    const platform = platformWith(null)
    const file = createFile(platform)
    await file.openDropped(dropOf('my fern.strandwise'))
    expect(file.name.value).toBe('my fern.strandwise')
    expect(file.message.value).toEqual({ isProblem: false, text: 'my fern.strandwise is open. Where it lies is not told to Strandwise: saving asks where to.' })
    expect(await file.save()).toBe(true)
    expect(platform.saveHangerAs).toHaveBeenCalledWith('my fern', writeDocument(fern))
    await file.save()
    expect(platform.saveHangerAs).toHaveBeenCalledOnce()
    expect(platform.saveHanger).toHaveBeenCalledWith('chosen', writeDocument(fern), { overwrite: false })
  })

  it.each([
    [['a.strandwise', 'b.strandwise', 'c.strandwise'], '3 files were dropped and none was opened: drop one hanger file at a time.'],
    [['leaf.png'], 'leaf.png was not opened: a hanger file ends in .strandwise.'],
    [[], 'Nothing was opened: what was dropped is no file.'],
  ])('%j is not even read, and it is said why', async (names, sentence) => {
    const platform = platformWith('fern')
    const file = createFile(platform)
    await file.openDropped(dropOf(...names))
    expect(platform.openDropped).not.toHaveBeenCalled()
    expect(file.message.value).toEqual({ isProblem: true, text: sentence })
  })

  it('asks first where something is not saved', async () => {
    const file = createFile(platformWith('fern'))
    const source = useDocument()
    source.edit('pot.rim', '93 mm')
    const dropping = file.openDropped(dropOf('FERN.STRANDWISE'))
    await settle()
    expect(useQuestions().open).toBe('unsaved')
    useQuestions().answer('cancel')
    await dropping
    expect(source.document.typed).toEqual({ 'pot.rim': '93 mm' })
  })

  it('that cannot be read, or is no hanger, leaves everything as it was and says why', async () => {
    const answers: DropOutcome[] = [
      { ok: false, problem: { code: 'NOT_TEXT', detail: '' } },
      { ok: true, hanger: { token: null, name: 'x.json', text: '{"format": "another"}' } },
    ]
    const file = createFile(platformWith(null, { openDropped: async () => answers.shift() as DropOutcome }))
    const before = useDocument().document
    for (const said of ['not text', 'another']) {
      await file.openDropped(dropOf('x.json'))
      expect(file.message.value?.text).toContain(said)
      expect([useDocument().document, file.name.value]).toEqual([before, null])
    }
  })
})

describe('the window', () => {
  afterEach(() => { document.body.replaceChildren() })

  function show() {
    const platform = platformWith('fern')
    const drop = mount(FileDrop, { attachTo: document.body, global: { plugins: [createPinia()], provide: { [PLATFORM as symbol]: platform } } })
    const send = (type: string, transfer: Partial<DataTransfer>, target: EventTarget = document.body): Event => {
      const event = Object.assign(new Event(type, { bubbles: true, cancelable: true }), { dataTransfer: { ...transfer }, relatedTarget: null })
      target.dispatchEvent(event)
      return event
    }
    return { platform, drop, send }
  }

  it('says that it takes a file while one is held over it, and is never left for it', async () => {
    const { platform, drop, send } = show()
    const files = dropOf('fern.strandwise')
    expect(send('dragover', files).defaultPrevented).toBe(true)
    await nextTick()
    expect(drop.text()).toBe('Let go to open this hanger.')
    expect(send('drop', files).defaultPrevented).toBe(true)
    await nextTick()
    expect(drop.text()).toBe('')
    expect(platform.openDropped).toHaveBeenCalledOnce()
    drop.unmount()
    expect(send('dragover', files).defaultPrevented).toBe(false)
  })

  it('lets words fall into a field, and nothing else anywhere', () => {
    const { send } = show()
    const field = document.body.appendChild(document.createElement('input'))
    const words = { types: ['text/plain'], files: [] as unknown as FileList }
    expect(['dragover', 'drop'].map((type) => send(type, words, field).defaultPrevented)).toEqual([false, false])
    expect(['dragover', 'drop'].map((type) => send(type, words).defaultPrevented)).toEqual([true, true])
    expect(send('drop', dropOf('fern.strandwise'), field).defaultPrevented).toBe(true)
  })
})
