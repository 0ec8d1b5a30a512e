import type { CheckResult } from './checkHanger'
import { isLower, LINKS, type LinkCode, type LinkResult } from './linkResult'

/** One part of the load path, with its results in every case. */
export interface CheckedPart {
  readonly link: LinkCode
  /** Which of several pots one under another it belongs to, from the top. */
  readonly tier: number
  readonly results: readonly LinkResult[]
}

/** Parts from the building down: those of the first pot with all above it, then those of each pot under it; what is said of the load last. */
export function parts({ links }: Pick<CheckResult, 'links'>): readonly CheckedPart[] {
  const tiers = [...new Set(links.map(({ tier }) => tier))].sort((a, b) => a - b)
  const found = tiers.flatMap((tier) => LINKS.map((link): CheckedPart => ({ link, tier, results: links.filter((l) => l.link === link && l.tier === tier) })))
  const told = found.filter(({ results }) => results.length > 0)
  return [...told.filter(({ link }) => link !== 'load'), ...told.filter(({ link }) => link === 'load')]
}

/** Name of a part in the drawing and on the ladder: its link, of a lower pot with the number of its pot. */
export type PartKey = LinkCode | `${LinkCode}@${2 | 3}`

/** @example partKey('leg', 2) // 'leg@2' */
export const partKey = (link: LinkCode, tier: number): PartKey => (isLower(tier) ? `${link}@${tier === 2 ? 2 : 3}` : link)

/**
 * The link and the pot that a part's key names.
 * @example partOf('leg@2') // { link: 'leg', tier: 2 }
 */
export function partOf(key: PartKey): { readonly link: LinkCode; readonly tier: number } {
  const [link, tier] = key.split('@')
  return { link: link as LinkCode, tier: Number(tier ?? 1) }
}
