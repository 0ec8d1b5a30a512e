import { constants } from 'node:os'
import { getSystemErrorMap } from 'node:util'
import type { FileFailure, FileProblemCode } from '../../contract'

const CODES: Readonly<Record<string, FileProblemCode>> = {
  EACCES: 'PERMISSION',
  EPERM: 'PERMISSION',
  EROFS: 'READ_ONLY',
  ENOSPC: 'DISK_FULL',
  EDQUOT: 'DISK_FULL',
  ENOENT: 'NOT_FOUND',
  ENOTDIR: 'NOT_FOUND',
  EISDIR: 'IS_FOLDER',
  ENAMETOOLONG: 'TOO_LONG',
  EFBIG: 'TOO_LARGE',
  EBUSY: 'BUSY',
  ETXTBSY: 'BUSY',
  ERR_ENCODING_INVALID_ENCODED_DATA: 'NOT_TEXT',
}

const errnoOf = (error: unknown): number | null =>
  error instanceof Error && 'errno' in error && typeof error.errno === 'number' ? error.errno : null

/** The code Node gave an error, or an empty text. */
export const errorCode = (error: unknown): string =>
  error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : ''

// Node has no name for some of the system's errors, a used-up quota among them, but leaves their number.
function nameOf(error: unknown): string {
  const code = errorCode(error)
  const errno = errnoOf(error)
  if (errno === null || getSystemErrorMap().has(errno)) return code
  return Object.entries(constants.errno).find(([, number]) => number === -errno)?.[0] ?? code
}

// Node's own message names the path, which the page is not to know.
function detailOf(error: unknown): string {
  const errno = errnoOf(error)
  if (errno !== null) return [nameOf(error), getSystemErrorMap().get(errno)?.[1]].filter(Boolean).join(': ')
  return error instanceof Error ? error.message : String(error)
}

export const fileFailure = (code: FileProblemCode, detail: string): FileFailure => ({ ok: false, problem: { code, detail } })

/** Turns what a file operation threw into an answer for the page. */
export const failureOf = (error: unknown): FileFailure => fileFailure(CODES[nameOf(error)] ?? 'OTHER', detailOf(error))
