import type { ExportExtension, HANGER_BYTES_LIMIT, HANGER_EXTENSION } from '../../../electron/contract'
import { texts } from '../../texts/texts'

const t = texts.files

/** Ending of hanger files; held to the desktop's by its type. */
export const EXTENSION: typeof HANGER_EXTENSION = 'strandwise'

/** Largest hanger file, bytes; held to the desktop's by its type. */
export const BYTES_LIMIT: typeof HANGER_BYTES_LIMIT = 1_048_576

export type FileExtension = ExportExtension | typeof EXTENSION

export interface FileKind {
  readonly description: string
  /** Media type to be written and asked for. */
  readonly type: string
}

export const FILE_KINDS: Readonly<Record<FileExtension, FileKind>> = {
  strandwise: { description: t.kinds.strandwise, type: 'application/json' },
  svg: { description: t.kinds.svg, type: 'image/svg+xml' },
  json: { description: t.kinds.json, type: 'application/json' },
  html: { description: t.kinds.html, type: 'text/html' },
  csv: { description: t.kinds.csv, type: 'text/csv' },
}

/** Longest name offered, in bytes of UTF-8: usual disks allow 255 with the ending. */
const NAME_BYTES_LIMIT = 180

function shorten(text: string): string {
  const characters = [...text]
  while (new TextEncoder().encode(characters.join('')).length > NAME_BYTES_LIMIT) characters.pop()
  return characters.join('')
}

/** A file name to offer for what the page calls its hanger; what the browser does not take of it, it replaces. */
export function fileName(suggested: string, extension: FileExtension): string {
  const stem = shorten(suggested.replace(/[\p{Cc}\p{Cs}\s<>:"/\\|?*]+/gu, ' ').trim()).trim()
  return `${stem === '' ? t.fileStem : stem}.${extension}`
}
