import type { CheckResult } from '../check/checkHanger'
import type { FieldPath } from '../hanger/fields'

/** Whether something drawn from these answers is drawn in pencil: one of them was assumed, or is not known. */
export type Pencil = (...paths: readonly FieldPath[]) => boolean

export function pencilOf(check: CheckResult): Pencil {
  const { answers, assumed: defaults } = check.solved.hanger
  // Those too that do not count here, for they are drawn all the same.
  const assumed = new Set(defaults.filter(({ tacit }) => !tacit).map((a) => a.path))
  return (...paths) => paths.some((path) => assumed.has(path) || answers[path] === null)
}
