import type { CaseCode, CheckResult } from '#core'

/** The situations that can be drawn, with short names for the bar. */
const SITUATIONS: readonly { readonly code: CaseCode, readonly short: string }[] = [
  { code: 'dry', short: 'dry' },
  { code: 'watered', short: 'just watered' },
  { code: 'flooded', short: 'standing in water' },
  { code: 'strandParted', short: 'one strand gone' },
  { code: 'legParted', short: 'one leg gone' },
  { code: 'bump', short: 'bumped' },
  { code: 'gust', short: 'in a gust' },
  { code: 'tug', short: 'tugged at' },
  { code: 'lowerOut', short: 'lower pot out' },
]

/** Those that concern some hangers only. */
const FURTHER: readonly CaseCode[] = ['gust', 'tug', 'lowerOut']
const PARTED: readonly CaseCode[] = ['strandParted', 'legParted']

/** Those that concern a hanger; all but the further ones while none is checked yet. */
export const situationsOf = (check: CheckResult | null): readonly (typeof SITUATIONS)[number][] =>
  SITUATIONS.filter(({ code }) => PARTED.includes(code) || (check === null ? !FURTHER.includes(code) : check.solved.wholeCases.includes(code)))
