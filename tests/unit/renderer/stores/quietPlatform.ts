import type { Platform } from '../../../../renderer/platform/platform'

const stop = (): void => undefined

/** A shell in which nothing happens: no file is ever chosen, nothing was kept. */
export const QUIET_PLATFORM: Platform = {
  openHanger: async () => ({ ok: true, hanger: null }),
  openRecent: async () => ({ ok: true, hanger: null }),
  openDropped: async () => { throw new Error('Nothing was dropped') },
  recent: async () => [],
  saveHanger: async () => ({ ok: true }),
  saveHangerAs: async () => ({ ok: true, saved: null }),
  savePdf: async () => ({ ok: true, name: null }),
  print: async () => ({ ok: true }),
  exportText: async () => ({ ok: true, name: null }),
  loadShelf: async () => ({ ok: true, text: null }),
  saveShelf: async () => ({ ok: true }),
  setAsideShelf: async () => ({ ok: true, name: null }),
  importShelfText: async () => ({ ok: true, imported: null }),
  canChooseFolder: true,
  chooseFolder: async () => ({ ok: true, folder: null }),
  listFolder: async () => ({ ok: true, listing: null }),
  readListed: async () => ({ ok: true, text: '' }),
  keepDraft: async () => ({ ok: true }),
  takeDraft: async () => null,
  setUnsaved: stop,
  onMenu: () => stop,
  onOpened: () => stop,
  onSaveBeforeClose: () => stop,
}
