import { value, type Value } from './basis'
import { MONTH } from './duration'

const months = (count: number, source: string): Value => value(count * MONTH, 's', 'common practice', source)

/** First look at a hung hanger, s. */
export const FIRST_LOOK: Value = months(1, 'knots settle and wraps slacken most in the first weeks under load')

/** Why a hanger is to be looked at as often as it is. */
export const LOOK_REASONS = ['indoors', 'steamy', 'alwaysWet', 'peopleBeneath', 'outdoors', 'juteDamp'] as const
export type LookReason = (typeof LOOK_REASONS)[number]

/** Time between looks by what asks for them, s; the shortest that applies counts. */
export const LOOK_AGAIN: Readonly<Record<LookReason, Value>> = {
  indoors: months(6, 'twice a year, dry under a roof'),
  steamy: months(3, 'damp air: mildew and rust'),
  alwaysWet: months(3, 'it never hangs lighter than just watered'),
  peopleBeneath: months(3, 'people or the public beneath'),
  outdoors: months(1, 'sun, rain and wind'),
  juteDamp: months(1, 'jute rots where it stays damp, unseen inside the knot'),
}
