/**
 * All that the page and the desktop shell say to each other. The preload builds `window.strandwise`
 * to this, the main process answers it, the page sees its types only.
 *
 * Files are named by tokens, which the main process hands out for files the user chose; a path never
 * travels in either direction. What can go wrong with a file is an answer (`ok: false`); a promise is
 * rejected only where the page itself is at fault.
 */

/** The ending of hanger files, without its dot. */
export const HANGER_EXTENSION = 'strandwise'

/** Largest hanger file that is read or written, bytes. */
export const HANGER_BYTES_LIMIT = 1_048_576

/** Most hanger files of a folder that are listed. */
export const FOLDER_FILES_LIMIT = 5000

/** Largest draft that is kept, bytes: a hanger file quoted in another text. */
export const DRAFT_BYTES_LIMIT = 3 * HANGER_BYTES_LIMIT

/** What stopped a file from being read or written. */
export const FILE_PROBLEM_CODES = [
  /** The user may not read the file, or not write the file or its folder. */
  'PERMISSION',
  /** The disk, stick or share takes no writing from anyone. */
  'READ_ONLY',
  /** No room is left, or no more is allowed to this user. */
  'DISK_FULL',
  /** The file, or the folder it was in, is gone. */
  'NOT_FOUND',
  /** A folder stands where the file should be. */
  'IS_FOLDER',
  /** A link stands there that leads to nothing, or back to itself. */
  'BROKEN_LINK',
  /** Something stands there that is no file one can keep things in: a pipe, say, or a device. */
  'NOT_ORDINARY',
  /** The name or the path is longer than the disk allows. */
  'TOO_LONG',
  /** The disk takes no such name. */
  'BAD_NAME',
  /** Larger than any hanger file, or any export, can be. */
  'TOO_LARGE',
  /** Not UTF-8 text. */
  'NOT_TEXT',
  /** Another program holds the file. */
  'BUSY',
  /** The disk, stick or share reported a fault, or answers no more. */
  'DISK_FAULT',
  /** Somebody else wrote the file since it was last read or saved here; nothing was overwritten. */
  'CHANGED_ON_DISK',
  /** No printer is there, or none that answers. */
  'NO_PRINTER',
  /** None of these: the detail is all that is known. */
  'OTHER',
] as const

export type FileProblemCode = (typeof FILE_PROBLEM_CODES)[number]

export interface FileProblem {
  readonly code: FileProblemCode
  /** What the system said, in its words; for a report of a fault, never the whole sentence shown. */
  readonly detail: string
}

export interface FileFailure {
  readonly ok: false
  readonly problem: FileProblem
}

/**
 * Stands for one file until the app is closed; means nothing to anyone but its giver. Each opening gives another, which
 * also stands for what was in the file then: by it nothing newer is ever written over unasked.
 */
export type FileToken = string

/** A file as it is known to the page: how it is called, and how to ask for it again. */
export interface NamedFile {
  readonly token: FileToken
  /** Name without its folder, with its ending. */
  readonly name: string
}

export interface OpenedHanger extends NamedFile {
  /** The whole text, without a byte order mark. */
  readonly text: string
}

/** `hanger` is null when the user chose no file. */
export type OpenOutcome = { readonly ok: true, readonly hanger: OpenedHanger | null } | FileFailure

/** The file is on the disk, whole, or it is as it was before. */
export type SaveOutcome = { readonly ok: true } | FileFailure

/** `saved` is null when the user chose no name. */
export type SaveAsOutcome = { readonly ok: true, readonly saved: NamedFile | null } | FileFailure

/** `name` is null when the user chose none, or when only the user knows what became of it. */
export type ExportOutcome = { readonly ok: true, readonly name: string | null } | FileFailure

/** What a page is printed on: as is usual where the user is, or as a sheet needs it. */
export const PAPERS = ['usual', 'a4', 'letter', 'a5', 'halfLetter'] as const

export type Paper = (typeof PAPERS)[number]

/** It went to the printer, or the user thought better of it. */
export type PrintOutcome = { readonly ok: true } | FileFailure

/** `text` is null where nothing was kept yet. */
export type LoadShelfOutcome = { readonly ok: true, readonly text: string | null } | FileFailure

/** `name` is what the shelf's file is called now; null if there was none. */
export type SetAsideOutcome = { readonly ok: true, readonly name: string | null } | FileFailure

/** `imported` is null when the user chose no file. */
export type ImportTextOutcome = { readonly ok: true, readonly imported: { readonly name: string, readonly text: string } | null } | FileFailure

/** A file used before, the latest first in a list. */
export interface RecentHanger extends NamedFile {
  /** The folder as a person would write it, to be shown only; null where that is not known. */
  readonly place: string | null
}

/** The folder of the maker's own hangers, by its name only. */
export interface HangerFolder {
  readonly name: string
}

/** `folder` is null when the user chose none. */
export type ChooseFolderOutcome = { readonly ok: true, readonly folder: HangerFolder | null } | FileFailure

/** A hanger file found in the folder, not read yet. */
export interface FolderFile extends NamedFile {
  /** Bytes; null where nothing can be learned of the file. */
  readonly size: number | null
  /** When it was last written, ms since 1970; null where nothing can be learned of the file. */
  readonly modified: number | null
}

export interface FolderListing {
  readonly folder: HangerFolder
  /** The latest written first; at most `FOLDER_FILES_LIMIT`. */
  readonly files: readonly FolderFile[]
  /** Whether the folder holds more of them than are listed. */
  readonly isCut: boolean
}

/** `listing` is null where no folder was chosen yet. */
export type ListFolderOutcome = { readonly ok: true, readonly listing: FolderListing | null } | FileFailure

/** The text without a byte order mark. */
export type ReadListedOutcome = { readonly ok: true, readonly text: string } | FileFailure

export interface SaveOptions {
  /** Whether to write although somebody else changed the file. */
  readonly overwrite: boolean
}

/** Endings of what can be exported as text, without the dot. */
export const EXPORT_EXTENSIONS = ['svg', 'json', 'html', 'csv'] as const

export type ExportExtension = (typeof EXPORT_EXTENSIONS)[number]

/** What the native menu, or a key, can ask of the page. */
export const MENU_COMMANDS = ['new', 'open', 'save', 'saveAs', 'drawing', 'pdf', 'print', 'undo', 'redo', 'catalogue', 'shelf', 'hangers', 'place', 'sheets', 'choosing', 'maps', 'compare', 'chance', 'habits', 'help'] as const

export type MenuCommand = (typeof MENU_COMMANDS)[number]

/** Stops a listener from being called. */
export type Unsubscribe = () => void

/** `window.strandwise`: one method per intention. */
export interface StrandwiseBridge {
  /** Lets the user choose a hanger file and reads it. */
  openHanger(): Promise<OpenOutcome>
  /** Reads a file of `recent()`, or of a folder listed, to work on it. */
  openRecent(token: FileToken): Promise<OpenOutcome>
  recent(): Promise<readonly RecentHanger[]>
  /** Writes a file that was opened or saved before. */
  saveHanger(token: FileToken, text: string, options: SaveOptions): Promise<SaveOutcome>
  /** Lets the user choose a name, offering the one suggested (without ending), and writes. */
  saveHangerAs(suggestedName: string, text: string): Promise<SaveAsOutcome>
  /** Lets the user choose a name, and writes the page there as its print styles show it. */
  savePdf(suggestedName: string): Promise<ExportOutcome>
  /** Lets the user choose a printer, and prints the page as its print styles show it. */
  print(paper: Paper): Promise<PrintOutcome>
  exportText(suggestedName: string, extension: ExportExtension, text: string): Promise<ExportOutcome>
  /** Reads the maker's own shelf. */
  loadShelf(): Promise<LoadShelfOutcome>
  /** Writes the maker's own shelf; never over what was not read here before (CHANGED_ON_DISK). */
  saveShelf(text: string): Promise<SaveOutcome>
  /** Gives what lies in the shelf's place another name, so that a shelf can be saved and nothing is lost. */
  setAsideShelf(): Promise<SetAsideOutcome>
  /** Lets the user choose a shelf file and reads it. */
  importShelfText(): Promise<ImportTextOutcome>
  /** Lets the user choose the folder of their hangers, which is remembered between runs. */
  chooseFolder(): Promise<ChooseFolderOutcome>
  /** The hanger files in that folder, none of them read. */
  listFolder(): Promise<ListFolderOutcome>
  /** Reads a file of the folder to tell of it: unlike opening, this makes it neither recent nor the one to be saved over. */
  readListed(token: FileToken): Promise<ReadListedOutcome>
  /** Keeps what is not saved yet for the next start, should this one end without closing; null: nothing is unsaved any more. */
  keepDraft(draft: string | null): Promise<SaveOutcome>
  /** What was left unsaved when the app last ended without closing. */
  takeDraft(): Promise<string | null>
  /** Whether closing the window now would lose something; if so, the user is asked first. */
  setUnsaved(unsaved: boolean): Promise<void>
  /** The page listens now: files the user opened from outside until now are handed over. */
  takeOpened(): Promise<void>
  /** Closes the window, without a question, after the page has saved as it was asked. */
  closeAfterSave(): Promise<void>
  onMenu(listener: (command: MenuCommand) => void): Unsubscribe
  /** A hanger file was opened from outside: double click, command line, dropped on the icon. */
  onOpened(listener: (outcome: OpenOutcome) => void): Unsubscribe
  /** The user wants to save before the window closes. */
  onSaveBeforeClose(listener: () => void): Unsubscribe
}

/** Channels on which the page asks and the main process answers. */
export const REQUESTS = {
  openHanger: 'hanger:open',
  openRecent: 'hanger:open-recent',
  recent: 'hanger:recent',
  saveHanger: 'hanger:save',
  saveHangerAs: 'hanger:save-as',
  savePdf: 'page:save-pdf',
  print: 'page:print',
  exportText: 'page:export-text',
  loadShelf: 'shelf:load',
  saveShelf: 'shelf:save',
  setAsideShelf: 'shelf:set-aside',
  importShelfText: 'shelf:import-text',
  chooseFolder: 'folder:choose',
  listFolder: 'folder:list',
  readListed: 'folder:read',
  keepDraft: 'draft:keep',
  takeDraft: 'draft:take',
  setUnsaved: 'window:set-unsaved',
  takeOpened: 'hanger:take-opened',
  closeAfterSave: 'window:close-after-save',
} as const satisfies Partial<Record<keyof StrandwiseBridge, string>>

/** Channels on which the main process tells the page something. */
export const EVENTS = {
  onMenu: 'menu:command',
  onOpened: 'hanger:opened',
  onSaveBeforeClose: 'window:save-before-close',
} as const satisfies Record<Exclude<keyof StrandwiseBridge, keyof typeof REQUESTS>, string>
