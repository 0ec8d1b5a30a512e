import type { ExportExtension, HANGER_BYTES_LIMIT, HANGER_EXTENSION } from '../../../electron/contract'

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
  strandwise: { description: 'Strandwise hanger', type: 'application/json' },
  svg: { description: 'Drawing (SVG)', type: 'image/svg+xml' },
  json: { description: 'JSON', type: 'application/json' },
  html: { description: 'Web page', type: 'text/html' },
}

/** A file name to offer for what the page calls its hanger. */
export function fileName(suggested: string, extension: FileExtension): string {
  const stem = suggested.replace(/[\p{Cc}\s<>:"/\\|?*]+/gu, ' ').trim().slice(0, 80)
  return `${stem === '' ? 'hanger' : stem}.${extension}`
}
