import { describe, expect, test } from 'vitest'
import { runCommand, USAGE } from '../../../src/cli/commands'
import { PLACE_ANSWER, placeSchema } from '../../../src/cli/placeSchema'
import type { ReadFile } from '../../../src/cli/readFile'
import { DEMOS } from '../../../src/hanger/demos'
import { writeDocument } from '../../../src/hanger/parse'
import { documentOf, ORDINARY } from '../hanger/hangerOf'
import { faultsOf } from '../words/cleanSentence'

const FILES: Readonly<Record<string, string>> = {
  ...Object.fromEntries(DEMOS.map((d) => [d.file, d.text])),
  'ordinary.strandwise': writeDocument({ ...documentOf(ORDINARY), name: 'Ordinary' }),
  'no-pot.strandwise': writeDocument(documentOf({ ...ORDINARY, 'pot.have': 'no' })),
  'nothing.strandwise': writeDocument(documentOf({ 'pot.have': 'no' })),
  'bad.strandwise': writeDocument(documentOf({ 'pot.rim': '3 kg' })),
}
const read: ReadFile = (file) => {
  const text = FILES[file]
  return text === undefined ? { ok: false, why: 'there is no such file.' } : { ok: true, text }
}
const run = (...argv: string[]) => runCommand(['place', ...argv], read, '2026-11-26', () => null)
const answer = (file: string) => PLACE_ANSWER.parse(JSON.parse(run(file, '--json').out))

describe('place', () => {
  test.each(['ordinary.strandwise', 'no-pot.strandwise', ...DEMOS.map((d) => d.file)])('%s: the JSON answer is one line that keeps the contract', (file) => {
    const { out, err, exit } = run(file, '--json')
    expect({ err, exit, lines: out.split('\n').length }).toEqual({ err: '', exit: 0, lines: 2 })
    expect(PLACE_ANSWER.safeParse(JSON.parse(out)).error?.issues ?? []).toEqual([])
  })

  test('its keys, in their order', () => {
    expect(Object.keys(JSON.parse(run('ordinary.strandwise', '--json').out) as object)).toEqual(['format', 'version', 'file', 'name', 'pot', 'hangs', 'places', 'beneath', 'askCustomer'])
  })

  test('tells the pot it reckoned with', () => {
    expect([answer('ordinary.strandwise').pot, answer('no-pot.strandwise').pot]).toEqual(['own', 'heaviest'])
  })

  test('the table tells every place, in words a maker reads', () => {
    const { out, exit } = run('ordinary.strandwise')
    expect(exit).toBe(0)
    for (const { name } of answer('ordinary.strandwise').places) expect(out).toContain(name)
    expect(out.split('\n').map((line) => line.trim()).flatMap(faultsOf)).toEqual([])
  })

  test.each([
    [['nothing.strandwise'], 1, 'There is no pot yet'],
    [['bad.strandwise'], 2, 'bad.strandwise: Width of the pot at the rim'],
    [['missing.strandwise'], 2, 'there is no such file'],
    [[], 2, 'needs exactly one hanger file'],
    [['ordinary.strandwise', 'no-pot.strandwise'], 2, 'needs exactly one hanger file'],
    [['ordinary.strandwise', '--yaml'], 2, '--yaml'],
  ])('%j ends with %i and says %s', (argv, exit, words) => {
    const said = run(...argv)
    expect({ out: said.out, exit: said.exit }).toEqual({ out: '', exit })
    expect(said.err).toContain(words)
  })

  test('has its line in the usage and its schema', () => {
    expect(USAGE).toContain('place FILE [--json]')
    expect(JSON.parse(runCommand(['schema', 'place'], read, '2026-11-26', () => null).out)).toEqual(JSON.parse(JSON.stringify(placeSchema())))
  })
})
