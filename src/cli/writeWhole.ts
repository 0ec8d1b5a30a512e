import { fstatSync, writeSync } from 'node:fs'
import { isatty } from 'node:tty'

/** Writes a piece of the bytes from an offset, and answers how many it took. */
type WritePiece = (bytes: Uint8Array, offset: number) => number

/**
 * Writes every byte: on a disk that fills, a file takes a part of what it is given and says so only when asked for the rest.
 * @throws errors of the system; then a part may be written
 */
export function writeBytes(text: string, writePiece: WritePiece): void {
  const bytes = new TextEncoder().encode(text)
  for (let offset = 0; offset < bytes.length;) offset += writePiece(bytes, offset)
}

function isFile(fd: number): boolean {
  const about = fstatSync(fd)
  return about.isFile() || (about.isCharacterDevice() && !isatty(fd))
}

/**
 * Writes a text to one of the process's own streams, whatever it leads to: a file, a terminal or another program.
 * @throws errors of the system; then a part may be written
 */
export async function writeWhole(stream: NodeJS.WriteStream & { readonly fd: number }, text: string): Promise<void> {
  if (isFile(stream.fd)) return writeBytes(text, (bytes, offset) => writeSync(stream.fd, bytes, offset))
  await new Promise<void>((done, failed) => { stream.write(text, (error) => { if (error) failed(error); else done() }) })
}
