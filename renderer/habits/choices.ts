import type { WritingHabits } from '#core'

/** What the reader may choose among, `system` first: as the computer has it. */
export const HABIT_CHOICES = {
  units: ['system', 'both', 'metric', 'imperial'],
  decimalMark: ['system', '.', ','],
  dayOrder: ['system', 'dayFirst', 'monthFirst', 'yearFirst'],
  appearance: ['system', 'light', 'dark'],
} as const

export type Habit = keyof typeof HABIT_CHOICES
export type HabitChoices = { readonly [H in Habit]: (typeof HABIT_CHOICES)[H][number] }

export const AS_THE_SYSTEM: HabitChoices = { units: 'system', decimalMark: 'system', dayOrder: 'system', appearance: 'system' }
export const HABITS = Object.keys(HABIT_CHOICES) as readonly Habit[]

const KEY = 'strandwise.habits'

/** What was kept, read like any text from outside: whatever is no choice counts as the system’s. `storageOf` may throw. */
export function keptChoices(storageOf: () => Pick<Storage, 'getItem'>): HabitChoices {
  let kept: unknown
  try {
    kept = JSON.parse(storageOf().getItem(KEY) ?? 'null')
  } catch {
    return AS_THE_SYSTEM // nothing is kept here for anyone, or it is no text of ours
  }
  if (typeof kept !== 'object' || kept === null) return AS_THE_SYSTEM
  const found: Readonly<Record<string, unknown>> = { ...kept }
  const known = HABITS.filter((habit) => (HABIT_CHOICES[habit] as readonly unknown[]).includes(found[habit]))
  return { ...AS_THE_SYSTEM, ...Object.fromEntries(known.map((habit) => [habit, found[habit]])) }
}

/** Keeps the choices for the next start; where nothing can be kept they hold until the window closes. */
export function keepChoices(storageOf: () => Pick<Storage, 'setItem'>, choices: HabitChoices): void {
  try {
    storageOf().setItem(KEY, JSON.stringify(choices))
  } catch {
    // They hold all the same.
  }
}

/** How numbers are written by the choices, where the rest is as the system has it. */
export const chosenHabits = ({ units, decimalMark, dayOrder }: HabitChoices, system: WritingHabits): WritingHabits => ({
  units: units === 'system' ? system.units : units,
  decimalMark: decimalMark === 'system' ? system.decimalMark : decimalMark,
  dayOrder: dayOrder === 'system' ? system.dayOrder : dayOrder,
})
