import type { StrandwiseBridge } from '../../electron/contract'
import type { Platform } from './platform'

declare global {
  interface Window {
    /** There in the desktop shell only. */
    readonly strandwise?: StrandwiseBridge
  }
}

/** The desktop shell, by way of its bridge. */
export function desktopPlatform(bridge: StrandwiseBridge): Platform {
  return {
    ...bridge,
    setUnsaved: (unsaved) => { void bridge.setUnsaved(unsaved) },
    onOpened: (listener) => {
      const unsubscribe = bridge.onOpened(listener)
      void bridge.takeOpened()
      return unsubscribe
    },
    onSaveBeforeClose: (save) => bridge.onSaveBeforeClose(() => {
      void save().then((saved) => saved ? bridge.closeAfterSave() : undefined)
    }),
  }
}
