import { describe, expect, test } from 'vitest'
import { EMPTY_DOCUMENT, editField, FIELD_PATHS, FIELD_WORDS, fieldOf, problemText, readField, resolveDocument } from '#core'

const WRONG_UNIT = { length: '3 kg', mass: '3 N', force: '3 mm', linearDensity: '3 mm', time: '3 mm', count: '3 mm', volume: '3 kg', density: '3 kg', ratio: '3 mm', number: '50 %' } as const
/** A unit to write a value in SI in, and for kinds that have none, none. */
const UNIT = { length: 'm', mass: 'kg', force: 'N', linearDensity: 'kg/m', time: 's', count: '', volume: 'm3', density: 'kg/m3', ratio: '', number: '' } as const

/** What must be refused in each field. */
function badTexts(path: (typeof FIELD_PATHS)[number]): readonly string[] {
  const field = fieldOf(path)
  if (field.type === 'choice') return ['', '  ', 'nonsense', 'Yes please', '7', '<b>']
  if (field.type === 'text') return ['x'.repeat(field.max + 1)]
  if (field.type === 'screw') return ['', '  ', 'a big one', '#99 x 2 in', '8 x 40', '4 x 40/50']
  if (field.type === 'date') return ['', '  ', 'yesterday', '21.3.2026', '2026-02-29', '2026-13-01', '2026-3-1', '2026-00-10']
  const absurd = `1000000000 ${UNIT[field.kind]}`.trim()
  const negative = `-4 ${UNIT[field.kind]}`.trim()
  const odd = field.kind === 'count' ? ['2.5'] : field.kind === 'ratio' || field.kind === 'number' ? [] : ['12']
  return ['', '  ', 'abc', '4..5', '1/0', WRONG_UNIT[field.kind], absurd, negative, ...odd]
}

describe.each(FIELD_PATHS)('%s', (path) => {
  const field = fieldOf(path)
  test.each(badTexts(path))('refuses %j with a sentence naming the field, what was given and what is allowed', (text) => {
    const read = readField(path, text)
    expect(read.ok).toBe(false)
    if (read.ok) return
    const sentence = problemText(read.problem)
    expect(sentence).toContain(FIELD_WORDS[path].label)
    expect(sentence).toContain(field.type === 'text' ? String(text.length) : text)
    if (field.type === 'text') expect(sentence).toContain(`up to ${field.max}`)
    else if (field.type === 'screw') expect(sentence.length).toBeGreaterThan(text.length + 30)
    else if (field.type === 'date') expect(sentence).toMatch(/Allowed: year-month-day/)
    else if (field.type === 'choice') for (const choice of field.choices) expect(sentence).toContain(choice)
    else expect(sentence).toMatch(/[Aa]llowed.* to /)
  })

  test('a field emptied on the page is an answer taken back', () => {
    expect(editField(editField(EMPTY_DOCUMENT, path, 'x'), path, '  ').typed).toEqual({})
  })

  test('what was typed stays in the document even where it cannot be read', () => {
    const rubbish = field.type === 'text' ? 'x'.repeat(field.max + 1) : 'rubbish'
    const document = editField(EMPTY_DOCUMENT, path, rubbish)
    expect(document.typed[path]).toBe(rubbish)
    const outcome = resolveDocument(document)
    expect(outcome.ok ? [] : outcome.problems.map((p) => ('path' in p ? p.path : null))).toContain(path)
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
  if (field.type === 'quantity' || field.type === 'open') {
    test('the ends of its range are allowed, a hair beyond is not', () => {
      const at = (value: number) => readField(path, `${value} ${UNIT[field.kind]}`.trim())
      expect([at(field.min).ok, at(field.max).ok]).toEqual([true, true])
      expect(at(field.kind === 'count' ? field.max + 1 : field.max * 1.001).ok).toBe(false)
    })
  }
})
