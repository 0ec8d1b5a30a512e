import type {
  ChooseFolderOutcome, ExportExtension, ExportOutcome, FileFailure, FileToken, ImportTextOutcome, ListFolderOutcome, LoadShelfOutcome, MenuCommand, OpenOutcome,
  Paper, PrintOutcome, ReadListedOutcome, RecentHanger, SaveAsOutcome, SaveOptions, SaveOutcome, SetAsideOutcome, Unsubscribe,
} from '../../electron/contract'

/** The text of a file that was dropped; `token` is null where the file cannot be written again, for nobody knows where it lies. */
export type DropOutcome = { readonly ok: true, readonly hanger: { readonly token: FileToken | null, readonly name: string, readonly text: string } } | FileFailure

/**
 * What the page needs of whatever it runs in. There are two: the desktop shell and a plain browser;
 * `choose.ts` picks one, and nothing else in the page knows which.
 *
 * What goes wrong with a file is an answer, not a rejection.
 */
export interface Platform {
  /** Lets the user choose a hanger file and reads it; `hanger` is null if none was chosen. */
  openHanger(): Promise<OpenOutcome>
  /** Reads a file of `recent()`, or of a folder listed, to work on it. */
  openRecent(token: FileToken): Promise<OpenOutcome>
  /** Reads the one file that was dropped; to be called while the drop is handled, for what was dropped is gone after. */
  openDropped(dropped: DataTransfer): Promise<DropOutcome>
  /** Files used before, the latest first. */
  recent(): Promise<readonly RecentHanger[]>
  /** Writes a file that was opened or saved before. */
  saveHanger(token: FileToken, text: string, options: SaveOptions): Promise<SaveOutcome>
  /** Lets the user choose a name, offering the one suggested (without ending), and writes; `saved` is null if none was chosen. */
  saveHangerAs(suggestedName: string, text: string): Promise<SaveAsOutcome>
  /** The page, as its print styles show it, as a PDF file; `name` is null if none was chosen or if the browser's print dialog took over. */
  savePdf(suggestedName: string): Promise<ExportOutcome>
  /** Lets the user choose a printer, and prints the page as its print styles show it. */
  print(paper: Paper): Promise<PrintOutcome>
  exportText(suggestedName: string, extension: ExportExtension, text: string): Promise<ExportOutcome>
  /** The maker's own shelf as it was kept last; `text` is null if it never was. */
  loadShelf(): Promise<LoadShelfOutcome>
  /** Keeps the shelf; never over what was not read or written here before (CHANGED_ON_DISK). */
  saveShelf(text: string): Promise<SaveOutcome>
  /** Moves what lies in the shelf's place out of the way, under the name answered. */
  setAsideShelf(): Promise<SetAsideOutcome>
  /** Lets the user choose a shelf file and reads it; `imported` is null if none was chosen. */
  importShelfText(): Promise<ImportTextOutcome>
  /** Whether a folder can be looked into here. */
  readonly canChooseFolder: boolean
  /** Lets the user choose the folder of their hangers; only where `canChooseFolder`. */
  chooseFolder(): Promise<ChooseFolderOutcome>
  /** The hanger files in the folder chosen last, none of them read; `listing` is null if none was. */
  listFolder(): Promise<ListFolderOutcome>
  /** Reads a file of the folder to tell of it; to work on it, it is opened by `openRecent`. */
  readListed(token: FileToken): Promise<ReadListedOutcome>
  /** Keeps what is not saved yet for the next start, should this one end without closing; null: nothing is unsaved any more. */
  keepDraft(draft: string | null): Promise<SaveOutcome>
  /** What was left unsaved when the app last ended without closing. */
  takeDraft(): Promise<string | null>
  /** Whether closing now would lose something; if so, the user is asked first. */
  setUnsaved(unsaved: boolean): void
  /** Commands of the menu or, where there is none, of its keys. */
  onMenu(listener: (command: MenuCommand) => void): Unsubscribe
  /** Hanger files opened from outside the page, those opened before the first listener came included. */
  onOpened(listener: (outcome: OpenOutcome) => void): Unsubscribe
  /** The user closes the window and wants to save: `save` answers whether that was done, and only then the window closes. */
  onSaveBeforeClose(save: () => Promise<boolean>): Unsubscribe
}
