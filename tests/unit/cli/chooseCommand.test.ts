import { describe, expect, test } from 'vitest'
import { CHOOSE_ANSWER, chooseSchema } from '../../../src/cli/chooseSchema'
import { runCommand, USAGE } from '../../../src/cli/commands'
import type { ReadFile } from '../../../src/cli/readFile'
import { DEMOS } from '../../../src/hanger/demos'
import { writeDocument } from '../../../src/hanger/parse'
import { writeShelf } from '../../../src/shelf/writeShelf'
import { documentOf, ORDINARY } from '../hanger/hangerOf'
import { faultsOf } from '../words/cleanSentence'

const FILES: Readonly<Record<string, string>> = {
  ...Object.fromEntries(DEMOS.map((d) => [d.file, d.text])),
  'ordinary.strandwise': writeDocument(documentOf(ORDINARY)),
  'no-pot.strandwise': writeDocument(documentOf({ 'pot.have': 'no' })),
  'bad.strandwise': writeDocument(documentOf({ 'pot.rim': '3 kg' })),
  'shelf.json': writeShelf({ entries: [{ kind: 'cord', name: 'Barn rope', date: '', note: '', typed: { 'cord.fibre': 'cotton', 'cord.make': 'braided', 'cord.rated': '200 kgf' }, pullTests: [], extra: {} }], extra: {} }),
}
const read: ReadFile = (file) => {
  const text = FILES[file]
  return text === undefined ? { ok: false, why: 'there is no such file.' } : { ok: true, text }
}
const run = (...argv: string[]) => runCommand(['choose', ...argv], read, '2026-11-26', () => null)
const IVY = 'ivy-on-a-bracket-in-a-stairwell.strandwise'

describe('choose', () => {
  test('the JSON answer is one line that keeps the contract, with and without an answer', () => {
    const { out, err, exit } = run(IVY, 'stick', 'legs', '--json')
    expect({ err, exit, lines: out.split('\n').length }).toEqual({ err: '', exit: 0, lines: 2 })
    const { answers } = CHOOSE_ANSWER.parse(JSON.parse(out))
    expect(answers.map(({ question, monotone }) => [question, monotone])).toEqual([['legs', false], ['stick', true]])
    expect(answers[1]).toMatchObject({ value: 0.012, now: 0.016, close: 0, limit: { link: 'stick', verdict: 'fails' }, changes: { 'stick.diameter': '12 mm' } })
    const fern = CHOOSE_ANSWER.parse(JSON.parse(run('fern-over-the-sideboard.strandwise', 'fixing', 'stick', '--json').out))
    expect(fern.answers.map(({ of, found, reason }) => [of?.kind, found, reason?.code])).toEqual([...Array.from({ length: 3 }, () => ['fixing', true, undefined]), [undefined, false, 'notConcerned']])
  })

  test('the table tells what is known of each answer, in words a maker reads', () => {
    const { out, exit } = run('fern-over-the-sideboard.strandwise', 'wraps', 'stick')
    expect(exit).toBe(0)
    expect(out).toMatch(/Fewest wraps[\s\S]*3, now 8 \(13 checks\)[\s\S]*Beyond it, with 2: Grip/)
    expect(out).toContain('There is no stick on this hanger.')
    expect(out.split('\n').map((line) => line.trim()).flatMap(faultsOf)).toEqual([])
  })

  test.each([
    [['no-pot.strandwise', 'strands'], 1, '', 'There is no pot yet.'],
    [['bad.strandwise'], 2, 'bad.strandwise: Width of the pot at the rim', ''],
    [['missing.strandwise'], 2, 'missing.strandwise: there is no such file', ''],
    [[], 2, 'choose needs a hanger file', ''],
    [['ordinary.strandwise', 'colour'], 2, 'no question “colour”; it knows strands', ''],
    [['ordinary.strandwise', '--material', 'gold'], 2, 'There is no pot of “gold”; --material knows terracotta', ''],
    [['ordinary.strandwise', '--mix', 'mud'], 2, 'There is no mix “mud”; --mix knows soilless', ''],
    [['ordinary.strandwise', '--mix'], 2, '--mix needs a value', ''],
    [['ordinary.strandwise', '--yaml'], 2, 'does not know the option --yaml', ''],
    [['ordinary.strandwise', 'cord', '--shelf', 'none.json'], 2, 'none.json: there is no such file', ''],
    [['ordinary.strandwise', 'cord', '--shelf', 'ordinary.strandwise'], 2, 'ordinary.strandwise: ', ''],
  ])('%j ends with %i and says why', (argv, exit, err, out) => {
    const said = run(...argv)
    expect(said.exit).toBe(exit)
    expect(said.err).toContain(err)
    if (err !== '') expect(said.out).toBe('')
    expect(said.out).toContain(out)
  })

  test('cords of a shelf are tried too', () => {
    const { out } = run('ordinary.strandwise', 'cord', '--shelf', 'shelf.json')
    expect(out).toMatch(/\n {2}Barn rope: (holds as it is|Not enough known\. [A-Z])/)
    expect(out).not.toContain('with 0 mm')
  })

  test('has its line in the usage and its schema', () => {
    expect(USAGE).toContain('choose FILE [QUESTION…]')
    expect(JSON.parse(runCommand(['schema', 'choose'], read, '2026-11-26', () => null).out)).toEqual(JSON.parse(JSON.stringify(chooseSchema())))
  })
})
