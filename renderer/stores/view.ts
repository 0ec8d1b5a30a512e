import { defineStore } from 'pinia'
import { computed, shallowRef, watch } from 'vue'
import type { CaseCode, LinkCode } from '#core'
import { useDocument } from './document'
import { useResult } from './result'

/** What the maker looks at: the part chosen, else the one that decides; the situation drawn. */
export const useView = defineStore('view', () => {
  const source = useDocument()
  const result = useResult()
  const chosen = shallowRef<LinkCode | null>(null)
  const situation = shallowRef<CaseCode>('watered')
  watch(() => source.opened, () => { chosen.value = null })

  /** Counts choices, so that the card can be brought into sight at each. */
  const choices = shallowRef(0)
  function select(link: LinkCode): void {
    chosen.value = link
    choices.value += 1
  }
  /** Stays with a part that is looked at already, whatever decides from now on. */
  const keep = (link: LinkCode): void => { chosen.value = link }
  const show = (code: CaseCode): void => { situation.value = code }

  return {
    selected: computed<LinkCode | null>(() => chosen.value ?? result.check?.governing?.link ?? null),
    choices: computed(() => choices.value),
    situation: computed(() => situation.value),
    select, keep, show,
  }
})
