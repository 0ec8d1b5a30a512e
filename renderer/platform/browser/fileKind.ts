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

/** A file name to offer for what the page calls its hanger. */
export function fileName(suggested: string, extension: FileExtension): string {
  const stem = suggested.replace(/[\p{Cc}\s<>:"/\\|?*]+/gu, ' ').trim().slice(0, 80)
  return `${stem === '' ? t.fileStem : stem}.${extension}`
}
