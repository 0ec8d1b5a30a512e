import type { Assumed, CheckResult, FieldPath } from '#core'
import { fieldOf, preferredText, readField } from '#core'

/** What a check took for a field that was not answered, or null. */
export const assumptionOf = (check: CheckResult | null, path: FieldPath): Assumed | null =>
  check?.solved.hanger.assumed.find((assumed) => assumed.path === path) ?? null

/**
 * Whether somebody can honestly say that it is as assumed: what they can look at, measure or know. "Don’t know" is no
 * answer, and a test that was not made is made, not confirmed.
 */
export const canConfirm = ({ path, text }: Pick<Assumed, 'path' | 'text'>): boolean => text !== 'unknown' && !path.startsWith('testHang.')

/** What is written where an assumption is confirmed: as it was shown, if it reads so. */
export function confirmedText({ path, text }: Pick<Assumed, 'path' | 'text'>): string {
  const field = fieldOf(path)
  const shown = 'kind' in field ? preferredText(text, field.kind) : text
  return readField(path, shown).ok ? shown : text
}
