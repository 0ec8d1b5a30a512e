import type { Answers, FieldPath } from '../../hanger/fields'

/** Answers with others in their place, numbers in SI. */
export const patched = (answers: Answers, patch: Readonly<Partial<Record<FieldPath, number | string | null>>>): Answers => ({ ...answers, ...patch }) as Answers
