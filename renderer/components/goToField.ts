import type { FieldPath } from '#core'

/**
 * Brings the field among the questions into sight, out of whatever is folded over it, and puts the focus in it; false
 * where it is not asked.
 */
export function goToField(path: FieldPath): boolean {
  const field = document.querySelector<HTMLElement>(`[data-field='${path}']`)
  const input = field?.querySelector<HTMLElement>('input:checked') ?? field?.querySelector<HTMLElement>('input, select')
  if (!field || !input) return false
  for (let fold = field.closest('details'); fold !== null; fold = fold.parentElement?.closest('details') ?? null) fold.open = true
  field.scrollIntoView({ block: 'center' })
  input.focus()
  return true
}
