import { defineStore } from 'pinia'
import { computed, reactive, shallowRef, watch } from 'vue'
import { writeBy } from '#core'
import { chosenHabits, keepChoices, keptChoices, type Habit, type HabitChoices } from '../habits/choices'
import { regionalHabits } from '../habits/regionalHabits'

/**
 * How the reader likes numbers, days and the window. `apply` hands the habits to the core as an object that Vue
 * watches: whatever shows a number is drawn anew when it changes, and nothing else is touched.
 * @param storageOf may throw, where nothing is kept for anyone
 */
export function createHabits(locale: string, storageOf: () => Storage) {
  const system = regionalHabits(locale)
  const choices = shallowRef(keptChoices(storageOf))
  const written = computed(() => chosenHabits(choices.value, system))

  function choose<H extends Habit>(habit: H, choice: HabitChoices[H]): void {
    choices.value = { ...choices.value, [habit]: choice }
    keepChoices(storageOf, choices.value)
  }

  /** Makes them hold, in words and on the page, now and at each change. */
  function apply(page: HTMLElement): void {
    const habits = reactive({ ...written.value })
    writeBy(habits)
    watch(written, (next) => { Object.assign(habits, next) }, { flush: 'sync' })
    watch(() => choices.value.appearance, (appearance) => {
      if (appearance === 'system') delete page.dataset['appearance']
      else page.dataset['appearance'] = appearance
    }, { immediate: true, flush: 'sync' })
  }

  return { choices: computed(() => choices.value), system, choose, apply }
}

export const useHabits = defineStore('habits', () => createHabits(navigator.language, () => localStorage))
