import type { Grade } from '../catalogue/basis'
import { HOLDS_LIMIT } from '../catalogue/reserves'

/** Verdicts in rising order of concern. */
export const VERDICTS = ['holds', 'just holds', 'not enough known', 'fails'] as const
export type Verdict = (typeof VERDICTS)[number]

const rank = (verdict: Verdict): number => VERDICTS.indexOf(verdict)

/** Whether a is of more concern than b. */
export const isWorse = (a: Verdict, b: Verdict): boolean => rank(a) > rank(b)
/**
 * The one of more concern.
 * @example worse('just holds', 'not enough known') // 'not enough known'
 */
export const worse = (a: Verdict, b: Verdict): Verdict => (isWorse(b, a) ? b : a)

/**
 * A whole has the worst verdict of its links; an empty whole is not enough known.
 * @example worstOf(['holds', 'fails', 'just holds']) // 'fails'
 */
export const worstOf = (verdicts: readonly Verdict[]): Verdict =>
  verdicts.length === 0 ? 'not enough known' : verdicts.reduce(worse)

/**
 * Verdict from a utilisation and the weakest grade behind it: up to the grade's limit "holds"; up to
 * 1 "just holds", or "not enough known" where strength is guessed from a diameter; above 1 "fails".
 * A pure model without any published test is at best "just holds", above 1 "not enough known".
 * @example verdictFor(0.7, 'weighed') // 'just holds'
 */
export function verdictFor(utilisation: number, grade: Grade): Verdict {
  if (grade === 'model') return utilisation <= 1 ? 'just holds' : 'not enough known'
  if (utilisation <= HOLDS_LIMIT[grade].value) return 'holds'
  if (utilisation > 1) return 'fails'
  return grade === 'diameter' ? 'not enough known' : 'just holds'
}

const GRADES: readonly Grade[] = ['fit', 'tested', 'rated', 'weighed', 'table', 'diameter', 'model']
/**
 * The weaker of two grades.
 * @example weakerGrade('diameter', 'rated') // 'diameter'
 */
export const weakerGrade = (a: Grade, b: Grade): Grade => (GRADES.indexOf(a) > GRADES.indexOf(b) ? a : b)
