import { fieldOf, otherwiseMeant, type FieldPath } from '#core'
import { texts } from '../texts/texts'

/** How a typed number is read, where somebody who writes a decimal comma may have meant another; else null. */
export function readingText(path: FieldPath, typed: string): string | null {
  const field = fieldOf(path)
  const meant = 'kind' in field ? otherwiseMeant(typed, field.kind) : null
  return meant === null ? null : texts.habits.readAs(meant)
}
