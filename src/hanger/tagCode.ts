import type { HangerDocument } from './document'

/** A tag code as it is compared: capitals or not, spaces and dashes left aside, for a tag is read aloud and typed anew. */
const plain = (code: string): string => code.toLowerCase().replace(/[\s\-–—_./]/g, '')

/**
 * Whether two tag codes are the same one; none is the same as none.
 * @example sameTag(' fern-07', 'FERN 07') // true
 */
export const sameTag = (a: string, b: string): boolean => plain(a) !== '' && plain(a) === plain(b)

/** The hangers that bear a tag code, in their order. */
export const foundByTag = <Kept extends { readonly document: HangerDocument }>(kept: readonly Kept[], code: string): readonly Kept[] =>
  kept.filter(({ document }) => sameTag(document.typed['make.code'] ?? '', code))
