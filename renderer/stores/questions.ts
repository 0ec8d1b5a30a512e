import { defineStore } from 'pinia'
import { computed, shallowRef } from 'vue'

/** What the maker must decide before a file is touched, and the answers to choose from. */
export const QUESTIONS = {
  /** Another hanger would take the place of one with changes not saved. */
  unsaved: ['save', 'discard', 'cancel'],
  /** The file was changed by somebody else since it was read. */
  overwrite: ['overwrite', 'saveAs', 'cancel'],
} as const

export type QuestionCode = keyof typeof QUESTIONS
export type AnswerTo<Q extends QuestionCode> = (typeof QUESTIONS)[Q][number]

interface Asked {
  readonly code: QuestionCode
  readonly answer: (answer: string) => void
}

/** At most one question at a time; a new one calls the earlier one off. */
export const useQuestions = defineStore('questions', () => {
  const asked = shallowRef<Asked | null>(null)

  function ask<Q extends QuestionCode>(code: Q): Promise<AnswerTo<Q>> {
    asked.value?.answer('cancel')
    return new Promise((done) => { asked.value = { code, answer: (answer) => done(answer as AnswerTo<Q>) } })
  }

  function answer(text: string): void {
    const { value } = asked
    asked.value = null
    value?.answer(text)
  }

  return { open: computed(() => asked.value?.code ?? null), ask, answer }
})
