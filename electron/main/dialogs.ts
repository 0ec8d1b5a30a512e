import { existsSync } from 'node:fs'
import { basename } from 'node:path'
import { dialog, type BrowserWindow } from 'electron'
import type { ClosingAnswer } from './closing'
import { fileName } from './files/fileName'
import { texts } from './texts'

const KINDS: Readonly<Record<string, string>> = texts.kinds

const filterFor = (extension: string): Electron.FileFilter => ({ name: KINDS[extension] ?? extension, extensions: [extension] })

/** Path of the file the user chooses, those of the ending first; or null. */
export async function chooseFile(window: BrowserWindow, extension: string): Promise<string | null> {
  const { canceled, filePaths } = await dialog.showOpenDialog(window, {
    properties: ['openFile'],
    filters: [filterFor(extension), { name: texts.allFiles, extensions: ['*'] }],
  })
  return canceled ? null : filePaths[0] ?? null
}

/** Path of the folder the user chooses, or null. */
export async function chooseFolder(window: BrowserWindow): Promise<string | null> {
  const { canceled, filePaths } = await dialog.showOpenDialog(window, { properties: ['openDirectory'] })
  return canceled ? null : filePaths[0] ?? null
}

async function mayReplace(window: BrowserWindow, path: string): Promise<boolean> {
  const { response } = await dialog.showMessageBox(window, {
    type: 'warning',
    message: texts.replace.question(basename(path)),
    detail: texts.replace.detail,
    buttons: [texts.replace.yes, texts.cancel],
    defaultId: 1,
    cancelId: 1,
    noLink: true,
  })
  return response === 0
}

/**
 * Path under which the user wants something saved, or null. A name typed without the ending gets
 * it; the system has then not asked about the name that is really written, so this does.
 */
export async function chooseTarget(window: BrowserWindow, suggestedName: string, extension: string): Promise<string | null> {
  const { canceled, filePath } = await dialog.showSaveDialog(window, {
    defaultPath: fileName(suggestedName, extension),
    filters: [filterFor(extension)],
  })
  if (canceled || !filePath) return null
  if (filePath.toLowerCase().endsWith(`.${extension}`)) return filePath
  const whole = `${filePath}.${extension}`
  return !existsSync(whole) || await mayReplace(window, whole) ? whole : null
}

/** Asks what is to become of changes that are not saved. */
export async function askAboutUnsaved(window: BrowserWindow): Promise<ClosingAnswer> {
  const { response } = await dialog.showMessageBox(window, {
    type: 'question',
    message: texts.unsaved.question,
    detail: texts.unsaved.detail,
    buttons: [texts.unsaved.save, texts.unsaved.discard, texts.cancel],
    defaultId: 0,
    cancelId: 2,
    noLink: true,
  })
  return (['save', 'discard'] as const)[response] ?? 'cancel'
}
