import { version } from '../../package.json'

/** Something in the app that went wrong and should not have. */
export interface Fault {
  readonly message: string
  readonly stack: string
  /** What the app was at: a part of the window, a job. */
  readonly where: string
}

/** Texts shorter than this are words of the trade rather than somebody's own. */
const SHORTEST_PRIVATE = 4

/** Addresses and paths tell of the machine they are on: their last part is enough. */
const withoutPlaces = (text: string): string =>
  text.replace(/(?:[a-z-]+:\/\/|[A-Za-z]:\\|\/)[^\s()'"]*[/\\]([^\s()/\\'"]+)/g, '$1')

/** What the user typed stays with the user. */
const without = (text: string, secrets: readonly string[]): string =>
  secrets.filter((secret) => secret.trim().length >= SHORTEST_PRIVATE).toSorted((a, b) => b.length - a.length).reduce((now, secret) => now.replaceAll(secret, '…'), text)

/**
 * A report of faults for those who mend the app, to be sent by hand: versions and where it broke, nothing of the hanger
 * nor of the machine's folders.
 * @param engine what the browser says it is
 * @param secrets texts that must not be in it: the hanger's name, what was typed, file names
 */
export function reportText(faults: readonly Fault[], engine: string, secrets: readonly string[]): string {
  const clean = (text: string): string => without(withoutPlaces(text), secrets)
  const lines = faults.flatMap(({ message, stack, where }) => ['', `${where}: ${clean(message)}`, ...clean(stack).split('\n').filter((line) => line.trim() !== '' && (message === '' || !line.includes(clean(message)))).map((line) => `  ${line.trim()}`)])
  return [`Strandwise ${version}`, engine, ...lines].join('\n')
}
