/** The app's own pages live under a scheme of their own: unlike a file, such a page has an origin to check. */
export const SCHEME = 'strandwise-app'

const HOST = 'app'

/** Origin of the app's own pages; no other page gets an answer. */
export const ORIGIN = `${SCHEME}://${HOST}`

export const START_ADDRESS = `${ORIGIN}/index.html`

/** Whether an address is one of the app's own; compared part by part, for a prefix would let `…://app.elsewhere` in. */
export function isOwnAddress(address: string): boolean {
  if (!URL.canParse(address)) return false
  const { protocol, host } = new URL(address)
  return protocol === `${SCHEME}:` && host === HOST
}
