import { describe, expect, it } from 'vitest'
import { patchDocument, writeDocument } from '#core'
import { runCommand } from '../../../src/cli/commands'
import type { ReadFile } from '../../../src/cli/readFile'
import { documentOf, ORDINARY } from '../hanger/hangerOf'
import { FAILING } from '../sheet/factsOf'

const ordinary = { ...documentOf(ORDINARY), name: 'Larder window' }
const FILES: Readonly<Record<string, string>> = {
  'ordinary.strandwise': writeDocument(ordinary),
  'failing.strandwise': writeDocument(patchDocument(ordinary, FAILING)),
  'broken.strandwise': '{',
  'odd.strandwise': '{"format":"strandwise-hanger","version":1,"pot":{"rim":"wide"}}',
}
const read: ReadFile = (file) => (FILES[file] === undefined ? { ok: false, why: 'there is no such file.' } : { ok: true, text: FILES[file] })
const run = (...argv: string[]) => runCommand(['sheet', ...argv], read, '2026-11-26', () => null)

describe('sheet', () => {
  it('prints one HTML file, on the size asked for, of the day it is told', () => {
    const { out, err, exit } = run('ordinary.strandwise', '--kind', 'customer', '--size', 'half-letter')
    expect(exit).toBe(0)
    expect(out).toContain('class="sheet halfLetter customer"')
    expect(out).toContain('26 November 2026')
    expect(out).toContain('Larder window')
    expect(err).toContain('ordinary.strandwise: The sheet does not say who made the hanger')
  })

  it('prints a tag, on A4 where no size is said', () => {
    const { out, exit } = run('--kind', 'tag', 'ordinary.strandwise')
    expect(exit).toBe(0)
    expect(out).toContain('class="sheet a4 tag"')
    expect(out).toContain('Look at it twice a year')
  })

  it('prints what must change of a hanger that fails, or its draft, and exits with 1', () => {
    const sheet = run('failing.strandwise', '--kind', 'customer')
    expect([sheet.exit, sheet.out.includes('what must change'), sheet.out.includes('Heaviest pot')]).toEqual([1, true, false])
    const draft = run('failing.strandwise', '--kind', 'customer', '--draft')
    expect([draft.exit, draft.out.includes('DRAFT: the hanger fails.')]).toEqual([1, true])
  })

  it.each([
    [['--kind', 'customer'], 'sheet needs exactly one hanger file.'],
    [['a', 'b', '--kind', 'customer'], 'sheet needs exactly one hanger file.'],
    [['ordinary.strandwise'], 'sheet needs --kind: customer'],
    [['ordinary.strandwise', '--kind'], '--kind needs a word: customer'],
    [['ordinary.strandwise', '--kind', '--draft'], '--kind needs a word: customer'],
    [['ordinary.strandwise', '--kind', 'poster'], 'sheet does not know the kind poster; it knows customer'],
    [['ordinary.strandwise', '--kind', 'constructor'], 'sheet does not know the kind constructor'],
    [['ordinary.strandwise', '--kind', 'tag', '--size', 'a0'], 'sheet does not know the size a0; it knows a4, letter, a5 or half-letter.'],
    [['ordinary.strandwise', '--kind', 'tag', '--size', 'toString'], 'sheet does not know the size toString'],
    [['ordinary.strandwise', '--kind', 'tag', '--loud'], 'sheet does not know the option --loud; it knows --kind, --size, --pot and --draft.'],
    [['nowhere.strandwise', '--kind', 'tag'], 'nowhere.strandwise: there is no such file.'],
    [['broken.strandwise', '--kind', 'tag'], 'broken.strandwise: '],
    [['odd.strandwise', '--kind', 'tag'], 'odd.strandwise: '],
  ])('%j is refused in a sentence, with exit 2 and nothing printed', (argv, sentence) => {
    const { out, err, exit } = run(...argv)
    expect([out, exit]).toEqual(['', 2])
    expect(err).toContain(sentence)
    expect(err).toMatch(/\.\n$/)
  })
})
