import { FIELD_WORDS, fieldOf, preferredText, type FieldPath, type Patch } from '#core'
import { texts } from '../texts/texts'

/** A text of a field that nobody typed, in words: a choice by its name, a quantity in the reader’s units. */
export function answerText(path: FieldPath, text: string): string {
  const field = fieldOf(path)
  if (field.type === 'choice') return FIELD_WORDS[path].choices[text] ?? text
  return 'kind' in field ? preferredText(text, field.kind) : text
}

/** The same with what would be written, where that is in other units. */
function writtenText(path: FieldPath, text: string): string {
  const said = answerText(path, text)
  return said === text || fieldOf(path).type === 'choice' || said.replace(',', '.') === text ? said : texts.card.asWritten(said, text)
}

/** What a patch would write, line by line; a question keeps its mark and takes no colon. */
export const patchLines = (patch: Patch): readonly string[] =>
  (Object.entries(patch) as [FieldPath, string][]).map(([path, text]) => texts.card.patched(FIELD_WORDS[path].label, writtenText(path, text)))
