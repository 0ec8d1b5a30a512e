import { describe, expect, test } from 'vitest'
import { EMPTY_DOCUMENT, editField, FIELD_PATHS, FIELD_WORDS, fieldOf, problemText, readField, resolveDocument } from '#core'

const WRONG_UNIT = { length: '3 kg', mass: '3 N', force: '3 lb', linearDensity: '3 mm', time: '3 mm', count: '3 mm' } as const

/** What must be refused in each field. */
function badTexts(path: (typeof FIELD_PATHS)[number]): readonly string[] {
  const field = fieldOf(path)
  if (field.type === 'choice') return ['', '  ', 'nonsense', 'Yes please', '7', '<b>']
  const absurd = field.kind === 'count' ? '1000000' : `1000000000 ${{ length: 'm', mass: 'kg', force: 'kN', linearDensity: 'kg/m', time: 'years' }[field.kind]}`
  const negative = field.kind === 'count' ? '-4' : `-4 ${{ length: 'mm', mass: 'kg', force: 'N', linearDensity: 'g/m', time: 'days' }[field.kind]}`
  return ['', '  ', 'abc', '4..5', '1/0', WRONG_UNIT[field.kind], absurd, negative, ...(field.kind === 'count' ? ['2.5'] : ['12'])]
}

describe.each(FIELD_PATHS)('%s', (path) => {
  const field = fieldOf(path)
  test.each(badTexts(path))('refuses %j with a sentence naming the field, what was given and what is allowed', (text) => {
    const read = readField(path, text)
    expect(read.ok).toBe(false)
    if (read.ok) return
    const sentence = problemText(read.problem)
    expect(sentence).toContain(FIELD_WORDS[path].label)
    expect(sentence).toContain(text)
    if (field.type === 'choice') for (const choice of field.choices) expect(sentence).toContain(choice)
    else expect(sentence).toMatch(/[Aa]llowed.* to /)
  })

  test('a field emptied on the page is an answer taken back', () => {
    expect(editField(editField(EMPTY_DOCUMENT, path, 'x'), path, '  ').typed).toEqual({})
  })

  test('what was typed stays in the document even where it cannot be read', () => {
    const document = editField(EMPTY_DOCUMENT, path, 'rubbish')
    expect(document.typed[path]).toBe('rubbish')
    const outcome = resolveDocument(document)
    expect(outcome.ok ? [] : outcome.problems.map((p) => p.path)).toContain(path)
  })

  test('has a name, a help line and words for each choice', () => {
    expect(FIELD_WORDS[path].label.length).toBeGreaterThan(2)
    expect(FIELD_WORDS[path].help.length).toBeGreaterThan(2)
    expect(Object.keys(FIELD_WORDS[path].choices).sort()).toEqual(field.type === 'choice' ? [...field.choices].sort() : [])
  })

  if (field.type === 'quantity') {
    test('its default lies in its own range and reads back', () => {
      const outcome = resolveDocument(EMPTY_DOCUMENT)
      expect(outcome.ok).toBe(true)
      if (!outcome.ok) return
      const assumed = outcome.hanger.assumed.find((a) => a.path === path)
      expect(assumed).toBeDefined()
      const read = readField(path, assumed?.text ?? '')
      expect(read.ok && read.value).toBeCloseTo(outcome.hanger.answers[path] as number, 9)
    })
  }
  if (field.type !== 'choice') {
    test('the ends of its range are allowed, a hair beyond is not', () => {
      const at = (value: number) => readField(path, field.kind === 'count' ? String(value) : `${value} ${{ length: 'm', mass: 'kg', force: 'N', linearDensity: 'kg/m', time: 's' }[field.kind]}`)
      expect([at(field.min).ok, at(field.max).ok]).toEqual([true, true])
      expect(at(field.kind === 'count' ? field.max + 1 : field.max * 1.001).ok).toBe(false)
    })
  }
})
