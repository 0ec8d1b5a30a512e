import { FIELD_WORDS, fieldOf, type FieldPath, type Patch } from '#core'

/** A text of a field in words: a choice by its name, a quantity as typed. */
export function answerText(path: FieldPath, text: string): string {
  return fieldOf(path).type === 'choice' ? FIELD_WORDS[path].choices[text] ?? text : text
}

/** What a patch would write, line by line; a question keeps its mark and takes no colon. */
export const patchLines = (patch: Patch): readonly string[] =>
  (Object.entries(patch) as [FieldPath, string][]).map(([path, text]) => {
    const { label } = FIELD_WORDS[path]
    return `${label.endsWith('?') ? label : `${label}:`} ${answerText(path, text)}`
  })
