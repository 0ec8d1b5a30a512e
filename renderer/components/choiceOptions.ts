import { FIELD_WORDS, fieldOf, type FieldPath } from '#core'
import { texts } from '../texts/texts'

const t = texts.form

/** One answer to choose; value '' takes the answer back. */
export interface ChoiceOption {
  readonly value: string
  readonly label: string
}

/**
 * The answers to a question, with one that means no answer: "don’t know" where the field has no such
 * choice of its own, else "not said", or the field's own where that is what is assumed anyway.
 */
export function choiceOptions(path: FieldPath): readonly ChoiceOption[] {
  const field = fieldOf(path)
  if (field.type !== 'choice') return []
  const options = field.choices.map((value) => ({ value, label: FIELD_WORDS[path].choices[value] ?? value }))
  if (!field.choices.includes('unknown')) return [...options, { value: '', label: t.dontKnow }]
  return field.default.choice === 'unknown'
    ? [...options.filter(({ value }) => value !== 'unknown'), { value: '', label: t.dontKnow }]
    : [...options, { value: '', label: t.notSaid }]
}
