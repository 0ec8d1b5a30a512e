import { troubleText } from '../words/fileTroubles'

// What the terminal is asked for is named, not looked at: what stands there is told in other words than in the window.
const WHY: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file.',
  ENOTDIR: 'there is no such file.',
  EISDIR: 'this is a folder, not a file.',
  EACCES: 'it is not allowed.',
  EPERM: 'it is not allowed.',
  EROFS: troubleText('READ_ONLY', ''),
  ENOSPC: 'no room is left on that disk.',
  EDQUOT: 'no room is left on that disk.',
  EFBIG: 'the file would be larger than is allowed.',
  ENAMETOOLONG: troubleText('TOO_LONG', ''),
  ELOOP: 'it is a link that leads nowhere.',
  EIO: troubleText('DISK_FAULT', ''),
  ENXIO: 'it is a device or a socket, not a file.',
  ENODEV: 'it is a device or a socket, not a file.',
  ERR_ENCODING_INVALID_ENCODED_DATA: 'the file is not UTF-8 text.',
}

/** The end of a sentence: why the system did not do it. */
export function whyOf(error: unknown): string {
  if (!(error instanceof Error)) return `${String(error)}.`
  return 'code' in error ? WHY[String(error.code)] ?? `the system said: ${String(error.code)}.` : error.message
}
