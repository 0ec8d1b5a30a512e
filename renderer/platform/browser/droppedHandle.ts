// Some browsers only, so the standard library of types does not know it.
interface HandledItem {
  readonly getAsFileSystemHandle?: () => Promise<FileSystemHandle | null>
}

const isFileHandle = (handle: FileSystemHandle | null): handle is FileSystemFileHandle => handle?.kind === 'file'

/** By which the dropped file can be written again; null where the browser gives none. To be called while the drop is handled. */
export async function droppedHandle({ items }: Pick<DataTransfer, 'items'>): Promise<FileSystemFileHandle | null> {
  const item = [...items].find(({ kind }) => kind === 'file') as HandledItem | undefined
  try {
    const handle = await item?.getAsFileSystemHandle?.() ?? null
    return isFileHandle(handle) ? handle : null
  } catch {
    return null // then it is saved as a download
  }
}
