import { nextTick } from 'vue'
import type { FieldPath } from '#core'

/**
 * Brings the field of an answer into sight, out of whatever is folded over it, and puts the focus in it; false
 * where it is not asked there.
 */
export async function goToField(path: FieldPath, within: ParentNode): Promise<boolean> {
  const find = (): HTMLElement | null => within.querySelector<HTMLElement>(`[data-field='${path}']`)
  if (find() === null) {
    within.querySelector(`details[data-holds~='${path}']`)?.dispatchEvent(new Event('unfold'))
    await nextTick()
  }
  const field = find()
  const input = field?.querySelector<HTMLElement>('input:checked') ?? field?.querySelector<HTMLElement>('input, select')
  if (!field || !input) return false
  for (let fold = field.closest('details'); fold !== null; fold = fold.parentElement?.closest('details') ?? null) fold.open = true
  field.scrollIntoView({ block: 'center' })
  input.focus()
  return true
}
