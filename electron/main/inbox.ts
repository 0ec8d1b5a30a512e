import { resolve } from 'node:path'
import { HANGER_EXTENSION } from '../contract'

/** Files the user opened from outside, kept until the page is there to take them. */
export interface Inbox {
  readonly give: (path: string) => void
  /** The page listens: hands over what waits, and from now on at once. */
  readonly open: () => void
  /** The page is gone. */
  readonly close: () => void
}

export function createInbox(deliver: (path: string) => void): Inbox {
  let isOpen = false
  let waiting: string[] = []
  return {
    give: (path) => {
      if (isOpen) deliver(path)
      else waiting.push(path)
    },
    open: () => {
      isOpen = true
      const paths = waiting
      waiting = []
      paths.forEach(deliver)
    },
    close: () => { isOpen = false },
  }
}

/**
 * The hanger files named on a command line. Switches and the app's own folder stand there too, so only
 * what has the ending counts.
 *
 * @param cwd folder the names are meant from
 */
export const hangerFilesIn = (args: readonly string[], cwd: string): string[] =>
  args.filter((arg) => !arg.startsWith('-') && arg.toLowerCase().endsWith(`.${HANGER_EXTENSION}`)).map((arg) => resolve(cwd, arg))
