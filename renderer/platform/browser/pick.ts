import { FILE_KINDS, fileName, type FileExtension } from './fileKind'

interface PickerOptions {
  readonly suggestedName?: string
  readonly types: readonly { readonly description: string, readonly accept: Readonly<Record<string, readonly string[]>> }[]
}

// Some browsers only, so the standard library of types does not know them.
interface Pickers {
  readonly showOpenFilePicker?: (options: PickerOptions) => Promise<readonly FileSystemFileHandle[]>
  readonly showSaveFilePicker?: (options: PickerOptions) => Promise<FileSystemFileHandle>
}

export interface PickedFile {
  readonly file: File
  /** By which the file can be written again; null where the browser gives none. */
  readonly handle: FileSystemFileHandle | null
}

const pickers = (): Pickers => window as unknown as Pickers

const optionsFor = (extension: FileExtension): PickerOptions => {
  const { description, type } = FILE_KINDS[extension]
  return { types: [{ description, accept: { [type]: [`.${extension}`] } }] }
}

/** What was picked; null where the user picked nothing. */
export async function nullIfDismissed<Value>(picking: Promise<Value>): Promise<Value | null> {
  try {
    return await picking
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return null
    throw error
  }
}

function pickByInput(extension: FileExtension): Promise<PickedFile | null> {
  const input = document.createElement('input')
  input.type = 'file'
  input.accept = `.${extension},.json,application/json`
  return new Promise((resolve) => {
    input.addEventListener('change', () => {
      const file = input.files?.[0]
      resolve(file ? { file, handle: null } : null)
    })
    input.addEventListener('cancel', () => { resolve(null) })
    input.click()
  })
}

/** Lets the user choose a file of the ending; null if none was chosen. To be called while a click or key is handled. */
export async function pickFile(extension: FileExtension): Promise<PickedFile | null> {
  const { showOpenFilePicker } = pickers()
  if (!showOpenFilePicker) return pickByInput(extension)
  const handles = await nullIfDismissed(showOpenFilePicker.call(window, optionsFor(extension)))
  const handle = handles?.[0]
  return handle ? { file: await handle.getFile(), handle } : null
}

/** Whether the browser lets the user choose where something is saved. */
export const canPickTarget = (): boolean => pickers().showSaveFilePicker !== undefined

/** Lets the user choose where to save; null if nowhere. Only where `canPickTarget`. */
export async function pickTarget(suggestedName: string, extension: FileExtension): Promise<FileSystemFileHandle | null> {
  const { showSaveFilePicker } = pickers()
  if (!showSaveFilePicker) throw new Error('This browser has no picker')
  return nullIfDismissed(showSaveFilePicker.call(window, { ...optionsFor(extension), suggestedName: fileName(suggestedName, extension) }))
}
