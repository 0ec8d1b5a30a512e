import { TextDecoder } from 'node:util'

const MARKS: readonly (readonly [encoding: string, bytes: readonly number[]])[] = [
  ['utf-8', [0xef, 0xbb, 0xbf]],
  ['utf-16le', [0xff, 0xfe]],
  ['utf-16be', [0xfe, 0xff]],
]

const encodingOf = (first: Uint8Array): string => MARKS.find(([, bytes]) => bytes.every((byte, i) => first[i] === byte))?.[0] ?? 'utf-8'

/** Bytes as text, piece by piece: UTF-8, or UTF-16 that says so by its mark. What is neither becomes U+FFFD. */
export async function* decoded(pieces: AsyncIterable<Uint8Array>): AsyncGenerator<string, void, void> {
  let decoder: TextDecoder | null = null
  // A mark may be cut in two.
  let head: Uint8Array = new Uint8Array(0)
  for await (const piece of pieces) {
    if (decoder !== null) {
      yield decoder.decode(piece, { stream: true })
      continue
    }
    head = head.length === 0 ? piece : Uint8Array.of(...head, ...piece)
    if (head.length < 3) continue
    decoder = new TextDecoder(encodingOf(head))
    yield decoder.decode(head, { stream: true })
  }
  yield decoder === null ? new TextDecoder(encodingOf(head)).decode(head) : decoder.decode()
}
