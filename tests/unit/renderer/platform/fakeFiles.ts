import { vi } from 'vitest'

/** A file of the user's, as a browser with pickers hands it out. */
export interface FakeFile {
  readonly handle: FileSystemFileHandle
  /** Null once it is gone. */
  content: string | null
  /** What beginning to write it comes to; null where it goes well. */
  refusal: DOMException | null
  /** What stops a writing that has begun, at the piece or at the end; null where it goes well. */
  stop: { readonly at: 'write' | 'close', readonly by: DOMException } | null
  /** Drafts of the browser that are neither in place nor given up. */
  drafts: number
}

export function fakeFile(name: string, content: string | null): FakeFile {
  const file: FakeFile = {
    content,
    refusal: null,
    stop: null,
    drafts: 0,
    handle: {
      name,
      getFile: async () => {
        if (file.content === null) throw new DOMException('gone', 'NotFoundError')
        return new File([file.content], name)
      },
      createWritable: async () => {
        if (file.refusal) throw file.refusal
        let draft = ''
        file.drafts += 1
        const go = (at: 'write' | 'close'): void => { if (file.stop?.at === at) throw file.stop.by }
        return {
          write: async (text: string) => {
            go('write')
            draft += text
          },
          close: async () => {
            go('close')
            file.content = draft
            file.drafts -= 1
          },
          abort: async () => { file.drafts -= 1 },
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
