import { temperInspected } from './inspected'
import { LINKS, type LinkCode } from './linkResult'
import { LOAD_PATH } from './loadPath'
import type { Solved } from './solved'
import { isWorse } from './verdict'

/** Links that the place answers for, and what is still open of the load. */
const NOT_OWN: ReadonlySet<LinkCode> = new Set(['fixing', 'bracket', 'pin', 'hook', 'hookShank', 'connector', 'load'])
/** Those that the hanger itself answers for. */
export const OWN_LINKS = LINKS.filter((link) => !NOT_OWN.has(link))

/**
 * Whether every part that the hanger itself answers for holds or just holds: what `assess` says of them, asked only up
 * to the first that does not, for searches that try many weights. What else tempers a verdict leaves open whether it
 * fails or is not known, and neither holds.
 */
export const ownHolds = (solved: Solved): boolean =>
  OWN_LINKS.every((link) => temperInspected(solved, LOAD_PATH[link](solved)).every(({ verdict }) => !isWorse(verdict, 'just holds')))
