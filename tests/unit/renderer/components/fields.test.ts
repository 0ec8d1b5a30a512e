import { describe, expect, it } from 'vitest'
import { fieldOf, FIELD_PATHS, LINKS } from '#core'
import { choiceOptions } from '../../../../renderer/components/choiceOptions'
import { FIELD_GROUPS, FOLLOW_UPS } from '../../../../renderer/components/fieldGroups'
import { emptyText } from '../../../../renderer/components/emptyText'
import { LINK_FIELDS, RARE_FIELDS } from '../../../../renderer/components/linkFields'

const onlyOneAnswer = (path: (typeof FIELD_PATHS)[number]): boolean => {
  const field = fieldOf(path)
  return field.type === 'choice' && field.choices.length === 1
}

describe('the form', () => {
  it('asks every field of the table once, but for the doors and those with only one answer', () => {
    const asked = FIELD_GROUPS.flatMap(({ first, later }) => [...first, ...later])
    const expected = FIELD_PATHS.filter((path) => !['pot.have', 'make.have', 'make.stage'].includes(path) && !onlyOneAnswer(path))
    expect([...asked].sort()).toEqual([...expected].sort())
  })

  it('asks the first questions first, each with what it calls for', () => {
    for (const { first, later } of FIELD_GROUPS) {
      expect(first.every((path) => fieldOf(path).first || FOLLOW_UPS.has(path))).toBe(true)
      expect(later.some((path) => fieldOf(path).first)).toBe(false)
    }
    const pot = FIELD_GROUPS[0]?.first ?? []
    expect(pot.indexOf('pot.length')).toBeGreaterThan(pot.indexOf('pot.rim'))
    expect(pot.slice(-3)).toEqual(['weighed.mass', 'weighed.state', 'weighed.tare'])
  })

  it('lets every choice be taken back exactly once', () => {
    const choices = FIELD_PATHS.filter((path) => fieldOf(path).type === 'choice')
    for (const path of choices) expect(choiceOptions(path).filter(({ value }) => value === ''), path).toHaveLength(1)
    expect(choiceOptions('cord.fibre').filter(({ label }) => label === 'don’t know')).toHaveLength(1)
    expect(choiceOptions('hook.metal').map(({ value }) => value)).toEqual(['steel', 'brass', 'unknown', ''])
  })

  it('names a field on a card once', () => {
    for (const link of LINKS) {
      const paths = [...LINK_FIELDS[link], ...RARE_FIELDS[link] ?? []]
      expect(new Set(paths).size, link).toBe(paths.length)
    }
  })

  it('tells what is not known from what may well not be there, and says how a day is written', () => {
    expect(emptyText('pot.wall')).toBe('not known')
    expect(emptyText('saucer.width')).toBe('none')
    expect(emptyText('cord.lot')).toBe('')
    expect(emptyText('make.date')).toBe('year-month-day')
  })
})
