import { createPinia, setActivePinia } from 'pinia'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { nextTick } from 'vue'
import { useDocument } from '../../../../renderer/stores/document'
import { useResult } from '../../../../renderer/stores/result'
import { useView } from '../../../../renderer/stores/view'
import { demoDocument } from '../hangers'

class NoWorker extends EventTarget {
  onmessage = null
  onerror = null
  postMessage = (): void => undefined
}

beforeEach(() => {
  setActivePinia(createPinia())
  vi.stubGlobal('Worker', NoWorker)
  vi.stubGlobal('requestAnimationFrame', (run: FrameRequestCallback) => {
    run(0)
    return 1
  })
})
afterEach(() => { vi.unstubAllGlobals() })

describe('what is looked at', () => {
  it('is the part that decides, until another is chosen', () => {
    useDocument().load(demoDocument('glazed-pot-by-the-reading-chair'))
    const view = useView()
    expect(view.selected).toBe(useResult().check?.governing?.link)
    view.select('seat')
    expect(view.selected).toBe('seat')
    expect(view.choices).toBe(1)
  })

  it('stays with a part that is worked on, though another decides by then', async () => {
    const source = useDocument()
    source.load(demoDocument('glazed-pot-by-the-reading-chair'))
    const view = useView()
    view.keep('hook')
    source.edit('hook.kind', 'closed')
    await nextTick()
    expect(useResult().check?.governing?.link).not.toBe('hook')
    expect(view.selected).toBe('hook')
    expect(view.choices).toBe(0)
  })

  it('is again the part that decides in another hanger', async () => {
    const view = useView()
    view.select('load')
    useDocument().load(demoDocument('fern-over-the-sideboard'))
    await nextTick()
    expect(view.selected).toBe(useResult().check?.governing?.link)
  })
})
