import type { Solved } from './solved'

/**
 * Whether a pot that somebody turns stays so, as under one hook where nothing but friction resists, or is turned back
 * by legs that hang apart. Null where the sling found no rest, or leaves some other move free.
 */
export function turnsFreely({ slings }: Pick<Solved, 'slings'>): boolean | null {
  const drawn = slings?.watered.drawn
  if (drawn === undefined || !('T' in drawn) || !drawn.stable) return null
  return drawn.zeroIsSymmetry
}
