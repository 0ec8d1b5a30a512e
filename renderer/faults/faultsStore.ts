import { defineStore } from 'pinia'
import { computed, shallowRef } from 'vue'
import { useDocument } from '../stores/document'
import { useFile } from '../stores/file'
import { reportText, type Fault } from './report'

/** Faults that are kept: the first says most, what follows is often its echo. */
const MOST = 10

const asError = (thing: unknown): Error => (thing instanceof Error ? thing : new Error(String(thing)))

/** What went wrong in the app itself since it was opened. */
export const useFaults = defineStore('faults', () => {
  const faults = shallowRef<readonly Fault[]>([])
  const isSeen = shallowRef(true)
  const source = useDocument()
  const file = useFile()

  function note(thing: unknown, where: string): void {
    const { message, stack } = asError(thing)
    if (faults.value.length < MOST) faults.value = [...faults.value, { message, stack: stack ?? '', where }]
    isSeen.value = false
  }

  const secrets = (): readonly string[] => [source.document.name, file.name ?? '', ...Object.values(source.document.typed)]
  return {
    isTold: computed(() => !isSeen.value),
    report: computed(() => reportText(faults.value, navigator.userAgent, secrets())),
    note,
    hush: () => { isSeen.value = true },
  }
})
