import type { FileFailure } from '../../../electron/contract'
import { BYTES_LIMIT } from './fileKind'
import { failureOf, fileFailure } from './fileProblem'

/** The whole text of a hanger file, without a byte order mark. */
export async function readHanger(file: Blob): Promise<{ readonly ok: true, readonly text: string } | FileFailure> {
  if (file.size > BYTES_LIMIT) return fileFailure('TOO_LARGE', `${file.size} bytes`)
  let bytes: ArrayBuffer
  try {
    bytes = await file.arrayBuffer()
  } catch (error) {
    return failureOf(error)
  }
  try {
    return { ok: true, text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) }
  } catch {
    return fileFailure('NOT_TEXT', 'not UTF-8')
  }
}
