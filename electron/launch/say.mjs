/**
 * Tells the user something. Standard output belongs to the answer of a command, so the launcher
 * speaks on standard error only.
 * @param {string} sentence
 */
export function say(sentence) {
  process.stderr.write(`${sentence}\n`)
}
