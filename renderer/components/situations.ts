import type { CaseCode } from '#core'

/** The situations that can be drawn, with short names for the bar. */
export const SITUATIONS: readonly { readonly code: CaseCode, readonly short: string }[] = [
  { code: 'dry', short: 'dry' },
  { code: 'watered', short: 'just watered' },
  { code: 'flooded', short: 'standing in water' },
  { code: 'strandParted', short: 'one strand gone' },
  { code: 'legParted', short: 'one leg gone' },
  { code: 'bump', short: 'bumped' },
]
