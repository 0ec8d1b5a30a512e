import type { LinkCode } from '../check/linkResult'
import { LINK_NAMES } from './names'

/** A pot among several one under another. */
export const tierName = (tier: number): string => (tier === 1 ? 'first pot' : tier === 2 ? 'second pot' : 'third pot')

/**
 * Name of a part, with the lower pot it belongs to.
 * @example linkName('leg', 2) // 'Legs, second pot'
 */
export const linkName = (link: LinkCode, tier: number): string => (tier > 1 ? `${LINK_NAMES[link]}, ${tierName(tier)}` : LINK_NAMES[link])
