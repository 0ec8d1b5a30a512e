import { nextTick, shallowRef, type Component, type ShallowRef } from 'vue'

interface Openable {
  readonly open: () => unknown
}

/** A dialog whose code is fetched when it is first opened, so that the first screen need not wait for it. */
export interface LazyDialog<Handle extends Openable> {
  /** What is to be drawn; null until it was asked for. */
  readonly component: ShallowRef<Component | null>
  /** The dialog itself; null until it was asked for. */
  readonly handle: ShallowRef<Handle | null>
  readonly setHandle: (handle: unknown) => void
  readonly open: () => Promise<void>
}

export function lazyDialog<Handle extends Openable = Openable>(load: () => Promise<{ readonly default: Component }>): LazyDialog<Handle> {
  const component = shallowRef<Component | null>(null)
  const handle = shallowRef(null) as ShallowRef<Handle | null>
  return {
    component,
    handle,
    setHandle: (next) => { handle.value = next as Handle | null },
    open: async () => {
      component.value ??= (await load()).default
      await nextTick()
      await handle.value?.open()
    },
  }
}
