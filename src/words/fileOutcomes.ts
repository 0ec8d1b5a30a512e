import { troubleText, type FileTrouble } from './fileTroubles'

/** What was being done with a hanger file, or with a page to be kept or printed, when it went wrong. */
export type FileDeed = 'open' | 'save' | 'export' | 'print'

export interface FileOutcome {
  readonly code: FileTrouble
  readonly deed: FileDeed
  /** What the system said, in its words. */
  readonly detail: string
}

const NOT_DONE: Readonly<Record<FileDeed, string>> = {
  open: 'The file was not opened',
  save: 'The hanger was not saved',
  export: 'Nothing was written',
  print: 'Nothing was printed',
}

/** Why, and where there is something to do about it, what. */
const WHY: Readonly<Record<FileTrouble, (outcome: FileOutcome) => string>> = {
  PERMISSION: ({ deed }) => (deed === 'open' ? 'you may not read it.' : 'you may not write there. Save it in another folder.'),
  READ_ONLY: ({ deed }) => (deed === 'open' ? 'it cannot be read there.' : 'that disk takes no writing. Save it in another place.'),
  DISK_FULL: () => 'no room is left on that disk. Make room, or save it in another place.',
  NOT_FOUND: ({ deed }) => (deed === 'open' ? 'it is no longer there. It may have been moved or renamed.' : 'the folder is no longer there. Save it in another place.'),
  IS_FOLDER: () => 'a folder of that name stands there. Choose another name.',
  BROKEN_LINK: ({ deed }) => (deed === 'open' ? 'it is a link that leads nowhere.' : 'a link stands there that leads nowhere. Choose another name.'),
  NOT_ORDINARY: ({ deed }) => (deed === 'open' ? 'it is a device or a pipe, not a file.' : 'a device or a pipe stands there, not a file. Choose another name.'),
  TOO_LONG: () => 'the name, or the path of its folders, is too long. Choose a shorter one.',
  BAD_NAME: ({ deed }) => (deed === 'open' ? 'the disk knows no such name.' : 'the disk takes no such name. Choose another.'),
  TOO_LARGE: ({ deed }) => (deed === 'open' ? 'it is larger than any hanger file can be.' : 'it would be larger than such a file can be.'),
  NOT_TEXT: () => 'it is not text, so it is no hanger file.',
  BUSY: () => 'another program holds the file. Close it there and try again.',
  DISK_FAULT: ({ deed }) => `the disk, stick or share reported a fault or does not answer. See that it is connected, ${deed === 'open' ? 'and try again.' : 'or save it in another place.'}`,
  CHANGED_ON_DISK: () => 'somebody else changed the file since it was opened here.',
  NO_PRINTER: () => 'no printer was found. Switch one on, or save a PDF and print it elsewhere.',
  OTHER: ({ detail }) => `the system said: ${detail}`,
}

/** The sentence for a file that could not be opened, saved or written. */
export const fileOutcomeText = (outcome: FileOutcome): string => `${NOT_DONE[outcome.deed]}: ${WHY[outcome.code](outcome)}`

/** Why what is not saved could not be kept for the case that the app ends before it is. */
export const draftNotKeptText = (code: FileTrouble, detail: string): string =>
  `What is not saved could not be kept for the case that Strandwise ends unasked: ${troubleText(code, detail)} Save the hanger often.`

/** A hanger that was not saved when the app last ended, put back as it stood; `file`: the one it came from. */
export const recoveredText = (file: string | null): string =>
  `Strandwise ended before this hanger was saved${file === null ? '' : ` (it came from ${file})`}. It is as it stood then: save it to keep it.`
