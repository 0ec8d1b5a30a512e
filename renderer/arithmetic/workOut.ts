import { markedText, readSum, sumExpression, sumText, type QuantityKind } from '#core'

/** All that may reach the library: digits, signs and brackets. */
const ALLOWED = /^[\d.e+\-*/()]+$/

/**
 * What a typed sum comes to, as text of the kind asked, or null where it is none. The library that works it out is
 * loaded when the first sum is typed, and gets numbers and signs only.
 */
export async function workOut(text: string, kind: QuantityKind): Promise<string | null> {
  const pieces = readSum(text, kind)
  if (pieces === null) return null
  const expressions = [1, 2].map((scale) => sumExpression(pieces, scale))
  if (!expressions.every((expression) => ALLOWED.test(expression))) return null
  const { evaluate } = await import('./evaluate')
  try {
    const [once, twice] = expressions.map((expression): unknown => evaluate(expression))
    const text = typeof once === 'number' && typeof twice === 'number' ? sumText(pieces, kind, once, twice) : null
    return text === null ? null : markedText(text, kind)
  } catch {
    return null // signs in an order that no sum has
  }
}
