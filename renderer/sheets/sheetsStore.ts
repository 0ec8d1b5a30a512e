import { defineStore } from 'pinia'
import { computed, shallowRef, watch } from 'vue'
import type { HangerDocument, PageFormat, SheetKind } from '#core'
import { heard } from '../faults/heard'
import { todayText } from '../shelf/todayText'
import { useDocument } from '../stores/document'
import { askSheets, type SheetsAsker, type SheetsWorker } from './askSheets'
import { keepSheets, keptSheets, type KeptSheets } from './keptSheets'
import type { SheetOutcome } from './messages'

/** What the page has to do with the world. */
export interface SheetsHome {
  readonly storageOf: () => Storage
  readonly locale: string
  /** YYYY-MM-DD */
  readonly today: () => string
}

/**
 * The sheet of the hanger at hand: made in a worker while it is looked at, and anew at each change. One question
 * is asked at a time, so that typing does not fill a queue; what is shown stays until the new sheet comes.
 */
export function createSheets(document: () => HangerDocument, ask: SheetsAsker, { storageOf, locale, today }: SheetsHome) {
  const kept = shallowRef<KeptSheets>(keptSheets(storageOf, locale))
  const draft = shallowRef(false)
  const outcome = shallowRef<SheetOutcome | null>(null)
  const state = shallowRef<'idle' | 'asking' | 'done' | 'failed'>('idle')
  const looked = shallowRef(false)
  let edition = 0
  let numbered: HangerDocument | null = null
  let isBusy = false
  /** Whether something has changed since the last question. */
  let isLate = false

  const keep = (changes: Partial<KeptSheets>): void => {
    kept.value = { ...kept.value, ...changes }
    keepSheets(storageOf, kept.value)
  }

  const isWanted = (): boolean => isLate && looked.value

  async function make(): Promise<void> {
    isLate = true
    if (isBusy) return
    isBusy = true
    while (isWanted()) {
      isLate = false
      state.value = 'asking'
      const asked = document()
      if (asked !== numbered) edition += 1
      numbered = asked
      const { kind, format } = kept.value
      const made = await ask.sheet({ source: { document: asked, edition }, sheet: kind, options: { format, today: today(), draft: draft.value } })
      if (made !== null) outcome.value = made
      state.value = made === null ? 'failed' : 'done'
    }
    isBusy = false
  }
  watch([document, () => kept.value.kind, () => kept.value.format, draft], () => { void make() })

  /** Who makes hangers is kept for the next one. */
  watch([() => document().typed['make.maker'] ?? '', () => document().typed['make.contact'] ?? ''], ([maker, contact]) => {
    if (looked.value && maker.trim() !== '') keep({ maker, contact })
  })

  return {
    kind: computed(() => kept.value.kind),
    format: computed(() => kept.value.format),
    maker: computed(() => ({ maker: kept.value.maker, contact: kept.value.contact })),
    draft: computed(() => draft.value),
    outcome: computed(() => outcome.value),
    state: computed(() => state.value),
    chooseKind: (kind: SheetKind) => keep({ kind }),
    chooseFormat: (format: PageFormat) => keep({ format }),
    asDraft: (as: boolean) => { draft.value = as },
    look: () => {
      looked.value = true
      draft.value = false
      void make()
    },
    leave: () => { looked.value = false },
    /** Another hanger is looked at: the sheet of the last is not shown for it. */
    forget: () => { outcome.value = null },
  }
}

/** One worker for sheets: a hanger’s own and those of a folder. */
export const askWorker: SheetsAsker = askSheets((): SheetsWorker => heard(new Worker(new URL('../workers/advice.worker.ts', import.meta.url), { type: 'module' })))

export const useSheets = defineStore('sheets', () => {
  const source = useDocument()
  const sheets = createSheets(() => source.document, askWorker, { storageOf: () => localStorage, locale: navigator.language, today: () => todayText(new Date()) })
  watch(() => source.opened, sheets.forget)
  return sheets
})
