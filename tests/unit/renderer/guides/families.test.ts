import { disableAutoUnmount, enableAutoUnmount, mount } from '@vue/test-utils'
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { computed, nextTick, shallowRef } from 'vue'
import { FIELD_PATHS, fieldOf, type FieldPath } from '#core'
import { FAMILIES, familyOf, likeOf, measuredWith, NOT_MEASURED, type MeasuredPath } from '../../../../renderer/guides/families'
import { FAMILY_DRAWINGS } from '../../../../renderer/guides/familyDrawings'
import { MARKED } from '../../../../renderer/guides/inGuide'
import { texts } from '../../../../renderer/texts/texts'
import { startPage } from '../page'

enableAutoUnmount(afterEach)
afterAll(disableAutoUnmount)
beforeEach(startPage)
afterEach(() => { vi.unstubAllGlobals() })

const MEASURED = Object.values(FAMILIES).flat() as readonly MeasuredPath[]
const isLength = (path: FieldPath): boolean => {
  const field = fieldOf(path)
  return 'kind' in field && (field.kind === 'length' || field.kind === 'linearDensity')
}

describe('the table of what is measured', () => {
  it('tells of every length whether and where a tape is laid, or why none is', () => {
    const told = (path: FieldPath): number => Number(familyOf(path) !== null) + Number(NOT_MEASURED[path] !== undefined)
    expect(FIELD_PATHS.filter((path) => isLength(path) && told(path) !== 1)).toEqual([])
  })

  it('gives a reason for nothing that is no length, and lists no field twice', () => {
    expect((Object.keys(NOT_MEASURED) as FieldPath[]).filter((path) => !isLength(path))).toEqual([])
    expect(new Set(MEASURED).size).toBe(MEASURED.length)
  })

  it('has words for every field, those of a lower pot being the first pot’s', () => {
    const how: Readonly<Record<string, string>> = texts.guides.how
    expect(MEASURED.filter((path) => (how[likeOf(path)] ?? '') === '')).toEqual([])
    expect([likeOf('third.base'), likeOf('third.strand'), likeOf('second.first')]).toEqual(['pot.base', 'second.strand', 'cradle.first'])
  })

  it('asks beside a field only what bears on the hanger, and always the field itself', () => {
    expect(measuredWith('pot.belly', null)).toEqual(FAMILIES.pot)
    const answers = { 'pot.shape': 'cylinder' } as Parameters<typeof measuredWith>[1]
    expect(measuredWith('pot.rim', answers)).toEqual(['pot.rim', 'pot.height'])
    expect(measuredWith('pot.base', answers)).toContain('pot.base')
  })
})

describe('a drawing', () => {
  it('marks each field of its family by its number once, and lays the tape at no other than the one looked at', async () => {
    for (const [family, fields] of Object.entries(FAMILIES) as [keyof typeof FAMILIES, readonly MeasuredPath[]][]) {
      const numbers = new Map(fields.map((path, i) => [likeOf(path), i + 1]))
      const at = shallowRef('')
      const drawing = mount(FAMILY_DRAWINGS[family], { global: { provide: { [MARKED as symbol]: computed(() => ({ numbers, at: at.value })) } } })
      for (const path of fields) {
        at.value = likeOf(path)
        await nextTick()
        expect(drawing.findAll('.number-spot').map((spot) => spot.text()).sort(), family).toEqual(fields.map((_, i) => String(i + 1)).sort())
        expect(drawing.findAll('.number-spot.chosen').map((spot) => spot.text()), path).toEqual([String(numbers.get(likeOf(path)))])
      }
    }
  })

  it('shows nothing of a field that is not asked', () => {
    const numbers = new Map([['pot.rim', 1]])
    const drawing = mount(FAMILY_DRAWINGS.pot, { global: { provide: { [MARKED as symbol]: computed(() => ({ numbers, at: 'pot.rim' })) } } })
    expect(drawing.findAll('.number-spot')).toHaveLength(1)
  })
})
