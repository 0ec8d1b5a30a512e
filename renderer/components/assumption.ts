import type { Assumed, CheckResult, FieldPath } from '#core'

/** What a check took for a field that was not answered, or null. */
export const assumptionOf = (check: CheckResult | null, path: FieldPath): Assumed | null =>
  check?.solved.hanger.assumed.find((assumed) => assumed.path === path) ?? null
