import { contextBridge, ipcRenderer, type IpcRendererEvent } from 'electron'
import { EVENTS, REQUESTS, type StrandwiseBridge, type Unsubscribe } from '../contract'

function listen<Arguments extends unknown[]>(channel: string, listener: (...args: Arguments) => void): Unsubscribe {
  // The event itself stays here: it would hand the page the whole of ipcRenderer.
  const receive = (_event: IpcRendererEvent, ...args: unknown[]): void => { listener(...args as Arguments) }
  ipcRenderer.on(channel, receive)
  return () => { ipcRenderer.off(channel, receive) }
}

contextBridge.exposeInMainWorld('strandwise', {
  openHanger: () => ipcRenderer.invoke(REQUESTS.openHanger),
  openRecent: (token) => ipcRenderer.invoke(REQUESTS.openRecent, token),
  recent: () => ipcRenderer.invoke(REQUESTS.recent),
  saveHanger: (token, text, options) => ipcRenderer.invoke(REQUESTS.saveHanger, token, text, options),
  saveHangerAs: (suggestedName, text) => ipcRenderer.invoke(REQUESTS.saveHangerAs, suggestedName, text),
  savePdf: (suggestedName) => ipcRenderer.invoke(REQUESTS.savePdf, suggestedName),
  print: (paper) => ipcRenderer.invoke(REQUESTS.print, paper),
  exportText: (suggestedName, extension, text) => ipcRenderer.invoke(REQUESTS.exportText, suggestedName, extension, text),
  loadShelf: () => ipcRenderer.invoke(REQUESTS.loadShelf),
  saveShelf: (text) => ipcRenderer.invoke(REQUESTS.saveShelf, text),
  setAsideShelf: () => ipcRenderer.invoke(REQUESTS.setAsideShelf),
  importShelfText: () => ipcRenderer.invoke(REQUESTS.importShelfText),
  chooseFolder: () => ipcRenderer.invoke(REQUESTS.chooseFolder),
  listFolder: () => ipcRenderer.invoke(REQUESTS.listFolder),
  readListed: (token) => ipcRenderer.invoke(REQUESTS.readListed, token),
  keepDraft: (draft) => ipcRenderer.invoke(REQUESTS.keepDraft, draft),
  takeDraft: () => ipcRenderer.invoke(REQUESTS.takeDraft),
  setUnsaved: (unsaved) => ipcRenderer.invoke(REQUESTS.setUnsaved, unsaved),
  takeOpened: () => ipcRenderer.invoke(REQUESTS.takeOpened),
  closeAfterSave: () => ipcRenderer.invoke(REQUESTS.closeAfterSave),
  onMenu: (listener) => listen(EVENTS.onMenu, listener),
  onOpened: (listener) => listen(EVENTS.onOpened, listener),
  onSaveBeforeClose: (listener) => listen(EVENTS.onSaveBeforeClose, listener),
} satisfies StrandwiseBridge)
