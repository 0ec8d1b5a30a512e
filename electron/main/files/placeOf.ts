import { dirname, relative, isAbsolute, join } from 'node:path'

/**
 * The folder of a file as a person would write it, `~` standing for the home folder; to be shown, never read.
 *
 * @example placeOf('/home/ada/Hangers/fern.strandwise', '/home/ada') // '~/Hangers'
 */
export function placeOf(path: string, home: string): string {
  const folder = dirname(path)
  const within = relative(home, folder)
  return within.startsWith('..') || isAbsolute(within) ? folder : join('~', within)
}
