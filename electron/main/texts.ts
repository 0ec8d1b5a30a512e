import type { ExportExtension, HANGER_EXTENSION, MenuCommand } from '../contract'

type FileKind = ExportExtension | 'pdf' | typeof HANGER_EXTENSION

const COMMANDS: Readonly<Record<MenuCommand, string>> = {
  new: 'New hanger',
  open: 'Open…',
  save: 'Save',
  saveAs: 'Save as…',
  drawing: 'Save drawing…',
  pdf: 'Save as PDF…',
  print: 'Print…',
  undo: 'Undo',
  redo: 'Redo',
  catalogue: 'Catalogue',
  shelf: 'Shelf',
  hangers: 'My hangers',
  place: 'What the place needs',
  sheets: 'Sheets',
  choosing: 'Choose sizes',
  maps: 'Maps',
  compare: 'Compare two hangers',
  chance: 'Chance',
  habits: 'Units and appearance…',
  help: 'Strandwise help',
}

const KINDS: Readonly<Record<FileKind, string>> = { strandwise: 'Strandwise hanger', pdf: 'PDF', svg: 'Drawing (SVG)', json: 'JSON', html: 'Web page', csv: 'Table (CSV)' }

/** All that the desktop shell itself says: menus and dialogs. What the window says stands in `renderer/texts`. */
export const texts = {
  appName: 'Strandwise',
  menus: { file: 'File', edit: 'Edit', view: 'View', help: 'Help' },
  commands: COMMANDS,
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
