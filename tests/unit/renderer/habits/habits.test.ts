import { mount } from '@vue/test-utils'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { computed, effectScope, nextTick } from 'vue'
import { massText, USUAL_HABITS, writeBy } from '#core'
import HabitsDialog from '../../../../renderer/habits/HabitsDialog.vue'
import { AS_THE_SYSTEM, keptChoices } from '../../../../renderer/habits/choices'
import { createHabits, useHabits } from '../../../../renderer/stores/habits'
import { startPage } from '../page'

const closed = (): Storage => { throw new Error('the browser keeps nothing for this page') }
const scope = effectScope()
const start = (locale: string, storageOf = () => localStorage) => effectScope().run(() => createHabits(locale, storageOf)) as ReturnType<typeof createHabits>

beforeEach(() => { localStorage.clear() })
// The tests share the core's modules.
afterEach(() => { writeBy(USUAL_HABITS) })

describe('choices', () => {
  test('hold at once wherever a number is shown, and for the next start', () => {
    const habits = start('en-GB')
    const page = document.createElement('html')
    habits.apply(page)
    const shown = scope.run(() => computed(() => massText(5.5)))
    expect(shown?.value).toBe('5.5 kg (12.1 lb)')
    habits.choose('units', 'metric')
    habits.choose('decimalMark', ',')
    expect(shown?.value).toBe('5,5 kg')
    expect(start('en-GB').choices.value).toEqual({ ...AS_THE_SYSTEM, units: 'metric', decimalMark: ',' })
    habits.choose('units', 'system')
    expect(shown?.value).toBe('5,5 kg (12,1 lb)')
  })

  test('of the appearance stand on the page, and go with the system’s', () => {
    const habits = start('en-GB')
    const page = document.createElement('html')
    habits.apply(page)
    expect(page.dataset['appearance']).toBeUndefined()
    habits.choose('appearance', 'dark')
    expect(page.dataset['appearance']).toBe('dark')
    habits.choose('appearance', 'system')
    expect(page.dataset['appearance']).toBeUndefined()
  })

  test('hold until the window closes where nothing can be kept', () => {
    const habits = start('en-US', closed)
    habits.choose('units', 'both')
    expect(habits.choices.value.units).toBe('both')
  })

  test.each(['{', '[]', 'null', '"metric"', '{"units":"stones","decimalMark":7}'])('what was kept and is none is left aside: %s', (text) => {
    expect(keptChoices(() => ({ getItem: () => text }))).toEqual(AS_THE_SYSTEM)
  })

  test('one that is known is kept beside one that is not', () => {
    expect(keptChoices(() => ({ getItem: () => '{"units":"imperial","appearance":"neon","further":1}' }))).toEqual({ ...AS_THE_SYSTEM, units: 'imperial' })
  })
})

describe('the dialog', () => {
  test('offers every choice, what the system’s comes to, and shows what is chosen', async () => {
    startPage()
    const habits = useHabits()
    const page = mount(HabitsDialog)
    await (page.vm as unknown as { open: () => Promise<void> }).open()
    const radios = page.findAll('input[type=radio]')
    expect(radios).toHaveLength(4 + 3 + 4 + 3)
    expect(page.findAll('input:checked').map((radio) => radio.attributes('value'))).toEqual(['system', 'system', 'system', 'system'])
    await page.get('input[name="habit-units"][value="imperial"]').setValue()
    await nextTick()
    expect(habits.choices.units).toBe('imperial')
    expect(page.text()).toContain('as this computer has it (')
    page.unmount()
  })
})
