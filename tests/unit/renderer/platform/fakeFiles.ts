import { vi } from 'vitest'

/** A file of the user's, as a browser with pickers hands it out. */
export interface FakeFile {
  readonly handle: FileSystemFileHandle
  /** Null once it is gone. */
  content: string | null
  /** What writing it comes to; null where it goes well. */
  refusal: DOMException | null
}

export function fakeFile(name: string, content: string | null): FakeFile {
  const file: FakeFile = {
    content,
    refusal: null,
    handle: {
      name,
      getFile: async () => {
        if (file.content === null) throw new DOMException('gone', 'NotFoundError')
        return new File([file.content], name)
      },
      createWritable: async () => {
        if (file.refusal) throw file.refusal
        let draft = ''
        return {
          write: async (text: string) => { draft += text },
          close: async () => { file.content = draft },
        }
      },
    } as unknown as FileSystemFileHandle,
  }
  return file
}

/** Gives the browser pickers that answer with a file, or are dismissed. */
export function stubPickers(answer: FakeFile | null): { readonly save: ReturnType<typeof vi.fn> } {
  const pick = async (): Promise<FileSystemFileHandle> => {
    if (!answer) throw new DOMException('dismissed', 'AbortError')
    return answer.handle
  }
  const save = vi.fn(pick)
  vi.stubGlobal('showOpenFilePicker', async () => [await pick()])
  vi.stubGlobal('showSaveFilePicker', save)
  return { save }
}
