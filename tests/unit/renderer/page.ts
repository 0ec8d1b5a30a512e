import { createPinia, setActivePinia } from 'pinia'
import { vi } from 'vitest'
import { nextTick } from 'vue'

class NoWorker extends EventTarget {
  onmessage = null
  onerror = null
  postMessage = (): void => undefined
}

/** Stores of their own, no worker, and a frame as soon as what runs has ended. */
export function startPage(): void {
  setActivePinia(createPinia())
  vi.stubGlobal('Worker', NoWorker)
  vi.stubGlobal('requestAnimationFrame', (run: FrameRequestCallback) => {
    queueMicrotask(() => run(0))
    return 1
  })
}

/** Until the page has taken in what was done: a frame, and what it changes. */
export async function settled(): Promise<void> {
  await nextTick()
  await nextTick()
}
