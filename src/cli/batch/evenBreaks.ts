/** The same text with every line break as one line feed, so that lines are counted alike within quotes and without. */
export async function* evenBreaks(pieces: AsyncIterable<string>): AsyncGenerator<string, void, void> {
  // A break of two characters may be cut in two.
  let held = ''
  for await (const piece of pieces) {
    const text = held + piece
    held = text.endsWith('\r') ? '\r' : ''
    yield text.slice(0, text.length - held.length).replace(/\r\n?/g, '\n')
  }
  if (held !== '') yield '\n'
}
