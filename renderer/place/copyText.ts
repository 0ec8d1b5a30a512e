/**
 * Puts a text on the clipboard. Where the page may not, the box that shows it is selected instead, for
 * the keys that copy.
 */
export async function copyText(text: string, box: HTMLTextAreaElement): Promise<'copied' | 'selected'> {
  try {
    await navigator.clipboard.writeText(text)
    return 'copied'
  } catch {
    box.focus()
    box.select()
    return 'selected'
  }
}
