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
  ELOOP: 'BROKEN_LINK',
  ENAMETOOLONG: 'TOO_LONG',
  EILSEQ: 'BAD_NAME',
  ERR_INVALID_ARG_VALUE: 'BAD_NAME',
  EFBIG: 'TOO_LARGE',
  EBUSY: 'BUSY',
  ETXTBSY: 'BUSY',
  EIO: 'DISK_FAULT',
  ENODEV: 'DISK_FAULT',
  ENXIO: 'DISK_FAULT',
  ESTALE: 'DISK_FAULT',
  EREMOTEIO: 'DISK_FAULT',
  ENOTCONN: 'DISK_FAULT',
  ETIMEDOUT: 'DISK_FAULT',
  EHOSTDOWN: 'DISK_FAULT',
  EHOSTUNREACH: 'DISK_FAULT',
  ENETUNREACH: 'DISK_FAULT',
  ERR_ENCODING_INVALID_ENCODED_DATA: 'NOT_TEXT',
}

/** Errors of disks that do not know what is asked of them: phones, shares, old sticks. */
export const UNABLE: ReadonlySet<string> = new Set(['EINVAL', 'ENOSYS', 'ENOTSUP', 'EOPNOTSUPP', 'EPERM'])

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
  if (errorCode(error) === 'ERR_INVALID_ARG_VALUE') return errorCode(error)
  if (errno !== null) return [nameOf(error), getSystemErrorMap().get(errno)?.[1]].filter(Boolean).join(': ')
  return error instanceof Error ? error.message : String(error)
}

/** A file that cannot be had, for a reason the system has no name for. */
export class FileError extends Error {
  override readonly name = 'FileError'
  readonly problem: FileProblemCode
  constructor(problem: FileProblemCode, message: string) {
    super(message)
    this.problem = problem
  }
}

// Disks that know no such name call it an invalid argument; so does much else.
const isBadName = (error: unknown): boolean =>
  errorCode(error) === 'EINVAL' && error instanceof Error && 'syscall' in error && (error.syscall === 'open' || error.syscall === 'rename')

function codeOf(error: unknown): FileProblemCode {
  if (error instanceof FileError) return error.problem
  return isBadName(error) ? 'BAD_NAME' : CODES[nameOf(error)] ?? 'OTHER'
}

export const fileFailure = (code: FileProblemCode, detail: string): FileFailure => ({ ok: false, problem: { code, detail } })

/** Turns what a file operation threw into an answer for the page. */
export const failureOf = (error: unknown): FileFailure => fileFailure(codeOf(error), detailOf(error))
