import type { CheckResult } from '../check/checkHanger'
import type { FieldPath } from '../hanger/fields'

/** Whether something drawn from these answers is drawn in pencil: one of them was assumed, or is not known. */
export type Pencil = (...paths: readonly FieldPath[]) => boolean

export function pencilOf(check: CheckResult): Pencil {
  const assumed = new Set(check.assumed.map((a) => a.path))
  const { answers } = check.solved.hanger
  return (...paths) => paths.some((path) => assumed.has(path) || answers[path] === null)
}
