import { defineStore } from 'pinia'
import { computed, shallowRef, watch } from 'vue'
import { partKey, type CaseCode, type PartKey } from '#core'
import type { ViewChoice } from '../drawing/views'
import { useDocument } from './document'
import { useResult } from './result'

/** Situations that concern some hangers only. */
const FURTHER: readonly CaseCode[] = ['gust', 'tug', 'lowerOut', 'neighbourDown']

/** What the maker looks at: the part chosen, else the one that decides; the situation drawn; from where. */
export const useView = defineStore('view', () => {
  const source = useDocument()
  const result = useResult()
  const chosen = shallowRef<PartKey | null>(null)
  const situation = shallowRef<CaseCode>('watered')
  watch(() => source.opened, () => { chosen.value = null })

  const deciding = computed(() => {
    const governing = result.check?.governing ?? null
    return governing === null ? null : partKey(governing.link, governing.tier)
  })

  /** Counts choices, so that the card can be brought into sight at each. */
  const choices = shallowRef(0)
  function select(link: PartKey): void {
    chosen.value = link
    choices.value += 1
  }
  /** Stays with a part that is looked at already, whatever decides from now on. */
  const keep = (link: PartKey): void => { chosen.value = link }
  const show = (code: CaseCode): void => { situation.value = code }
  const choice = shallowRef<ViewChoice>('together')
  const look = (from: ViewChoice): void => { choice.value = from }

  return {
    selected: computed<PartKey | null>(() => chosen.value ?? deciding.value),
    choices: computed(() => choices.value),
    /** One that no longer concerns the hanger gives way to the usual one. */
    situation: computed<CaseCode>(() => (FURTHER.includes(situation.value) && result.check?.solved.wholeCases.includes(situation.value) === false ? 'watered' : situation.value)),
    /** The views laid on the sheet. */
    choice: computed(() => choice.value),
    select, keep, show, look,
  }
})
