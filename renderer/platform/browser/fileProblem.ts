import type { FileFailure, FileProblemCode } from '../../../electron/contract'

/** What browsers call the ways in which a file cannot be had. */
const CODES: Readonly<Record<string, FileProblemCode>> = {
  NotAllowedError: 'PERMISSION',
  SecurityError: 'PERMISSION',
  NotReadableError: 'PERMISSION',
  NoModificationAllowedError: 'BUSY',
  InvalidStateError: 'BUSY',
  NotFoundError: 'NOT_FOUND',
  TypeMismatchError: 'IS_FOLDER',
  QuotaExceededError: 'DISK_FULL',
}

export const fileFailure = (code: FileProblemCode, detail: string): FileFailure => ({ ok: false, problem: { code, detail } })

/** Turns what a file operation of the browser threw into an answer. */
export function failureOf(error: unknown): FileFailure {
  if (!(error instanceof DOMException) && !(error instanceof Error)) return fileFailure('OTHER', String(error))
  return fileFailure(CODES[error.name] ?? 'OTHER', `${error.name}: ${error.message}`)
}
