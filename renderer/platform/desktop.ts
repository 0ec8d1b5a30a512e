import type { StrandwiseBridge } from '../../electron/contract'
import { readHanger } from './browser/readHanger'
import { onlyFile } from './browser/onlyFile'
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
    canChooseFolder: true,
    // The page reads it by itself: to ask for the file again it would have to know its path.
    openDropped: async (dropped) => {
      const file = onlyFile(dropped)
      const outcome = await readHanger(file)
      return outcome.ok ? { ok: true, hanger: { token: null, name: file.name, text: outcome.text } } : outcome
    },
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
