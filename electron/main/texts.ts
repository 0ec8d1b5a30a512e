import type { ExportExtension, HANGER_EXTENSION } from '../contract'

type FileKind = ExportExtension | 'pdf' | typeof HANGER_EXTENSION

const KINDS: Readonly<Record<FileKind, string>> = { strandwise: 'Strandwise hanger', pdf: 'PDF', svg: 'Drawing (SVG)', json: 'JSON', html: 'Web page' }

/** All that the desktop shell itself says: menus and dialogs. What the window says stands in `renderer/texts`. */
export const texts = {
  appName: 'Strandwise',
  /** What dialogs call each kind of file. */
  kinds: KINDS,
  allFiles: 'All files',
  /** Name of a file for which none is left, without its ending. */
  fileStem: 'hanger',
  cancel: 'Cancel',
  replace: {
    question: (file: string) => `Replace ${file}?`,
    detail: 'There is a file of this name in the folder already.',
    yes: 'Replace',
  },
  unsaved: {
    question: 'Save the changes to this hanger before closing?',
    detail: 'Without saving they are lost.',
    save: 'Save',
    discard: 'Don’t save',
  },
} as const
