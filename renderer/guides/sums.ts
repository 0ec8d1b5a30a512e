import type { Answers } from '#core'
import { likeOf, type MeasuredPath } from './families'

/** A simple measurement and what it is divided by. */
export const SUMS = {
  tenTurns: { divisor: '10' },
  tapeRound: { divisor: '3.1416' },
} as const
export type SumOf = keyof typeof SUMS

const SUM_AT: Readonly<Partial<Record<MeasuredPath, SumOf>>> = {
  'cord.diameter': 'tenTurns',
  'pot.rim': 'tapeRound',
  'pot.base': 'tapeRound',
  'pot.belly': 'tapeRound',
  'stick.diameter': 'tapeRound',
}

/** Shapes that a tape goes round in a circle. */
const ROUND: ReadonlySet<Answers['pot.shape']> = new Set(['taperedRound', 'cylinder', 'bowl', 'bellied'])

/** The sum by which a field may be measured too: a tape goes round what is round, so not round a square pot. */
export function sumAt(path: MeasuredPath, shape: Answers['pot.shape'] | null): SumOf | null {
  const like = likeOf(path)
  return like.startsWith('pot.') && (shape === null || !ROUND.has(shape)) ? null : SUM_AT[like] ?? null
}

/**
 * The sum as a field takes it, what was typed in it.
 * @example dividedText('32 mm', '10') // '32 mm / 10'
 */
export function dividedText(typed: string, divisor: string): string {
  const text = typed.trim()
  return /[-+*×·÷:()]/.test(text) ? `(${text}) / ${divisor}` : `${text} / ${divisor}`
}
