/** What can stop a file from being had or written. */
export type FileTrouble =
  | 'PERMISSION' | 'READ_ONLY' | 'DISK_FULL' | 'NOT_FOUND' | 'IS_FOLDER' | 'BROKEN_LINK' | 'NOT_ORDINARY' | 'TOO_LONG' | 'BAD_NAME' | 'TOO_LARGE' | 'NOT_TEXT' | 'BUSY'
  | 'DISK_FAULT' | 'CHANGED_ON_DISK' | 'NO_PRINTER' | 'OTHER'

const TROUBLES: Readonly<Record<Exclude<FileTrouble, 'OTHER'>, string>> = {
  PERMISSION: 'it is not allowed there.',
  READ_ONLY: 'that disk takes no writing.',
  DISK_FULL: 'no room is left.',
  NOT_FOUND: 'the file or its folder is no longer there.',
  IS_FOLDER: 'a folder of that name stands there.',
  BROKEN_LINK: 'a link stands there that leads nowhere.',
  NOT_ORDINARY: 'a device or a pipe stands there, not a file.',
  TOO_LONG: 'the name, or the path of its folders, is too long.',
  BAD_NAME: 'the disk takes no such name.',
  TOO_LARGE: 'it is larger than such a file can be.',
  NOT_TEXT: 'it is not text.',
  BUSY: 'another program holds the file.',
  DISK_FAULT: 'the disk, stick or share reported a fault or does not answer.',
  CHANGED_ON_DISK: 'it was changed elsewhere meanwhile.',
  NO_PRINTER: 'no printer was found.',
}

/** The end of a sentence: what stopped it. `detail`: what the system said, told only where nothing better is known. */
export const troubleText = (code: FileTrouble, detail: string): string => (code === 'OTHER' ? `the system said: ${detail}` : TROUBLES[code])
