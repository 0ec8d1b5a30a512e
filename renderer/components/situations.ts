import type { CaseCode, CheckResult } from '#core'
import { texts } from '../texts/texts'

const t = texts.situations
/** The situations that can be drawn, in the order of the bar. */
const SITUATIONS = ['dry', 'watered', 'flooded', 'strandParted', 'legParted', 'bump', 'gust', 'tug', 'lowerOut'] as const satisfies readonly CaseCode[]

/** A situation with its short name for the bar. */
export interface Situation {
  readonly code: (typeof SITUATIONS)[number]
  readonly short: string
}

/** Those that concern some hangers only. */
const FURTHER: readonly CaseCode[] = ['gust', 'tug', 'lowerOut']
const PARTED: readonly CaseCode[] = ['strandParted', 'legParted']

/** Those that concern a hanger; all but the further ones while none is checked yet. */
export const situationsOf = (check: CheckResult | null): readonly Situation[] =>
  SITUATIONS
    .filter((code) => PARTED.includes(code) || (check === null ? !FURTHER.includes(code) : check.solved.wholeCases.includes(code)))
    .map((code) => ({ code, short: t.short[code] }))
