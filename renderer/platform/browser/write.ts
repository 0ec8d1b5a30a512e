import { FILE_KINDS, type FileExtension } from './fileKind'

/** Writes a file the user chose; the browser puts the new content in place of the old only when all is there. */
export async function writeThrough(handle: FileSystemFileHandle, text: string): Promise<void> {
  const stream = await handle.createWritable()
  try {
    await stream.write(text)
    await stream.close()
  } catch (error) {
    // Else the browser's own draft stays beside the file, and holds it.
    await stream.abort().catch(() => undefined)
    throw error
  }
}

/** Hands a text to the browser's downloads, which decide where it goes. */
export function download(name: string, extension: FileExtension, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: FILE_KINDS[extension].type }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  // Some browsers read the blob only after the click has been handled.
  setTimeout(() => { URL.revokeObjectURL(address) }, 60_000)
}
