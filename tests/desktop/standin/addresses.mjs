// Chromium would not treat an unknown scheme as a place with an origin, so it is told another name.
const OWN = /^([a-z][a-z0-9+.-]*):\/\/([^/]*)(\/.*)?$/i
const SHOWN = /^https:\/\/([^/]*)\.([a-z0-9+-]+)\.standin(?=\/|$)/i

/** The name under which Chromium knows an address of a scheme the app handles; any other address as it is. */
export function shownAddress(address, isHandled) {
  const [, scheme, host, rest] = OWN.exec(address) ?? []
  return scheme && isHandled(scheme) ? `https://${host}.${scheme}.standin${rest ?? '/'}` : address
}

/** What the app calls an address. */
export const ownAddress = (address) => address.replace(SHOWN, '$2://$1')

/** As the app would hear it: scheme and host, or `null` for a page without a place. */
export function originOf(address) {
  const [, scheme, host] = OWN.exec(address) ?? []
  return scheme && scheme !== 'data' ? `${scheme}://${host}` : 'null'
}
