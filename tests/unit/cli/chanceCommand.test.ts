import { describe, expect, test } from 'vitest'
import { runCommand, USAGE } from '../../../src/cli/commands'
import { CHANCE_ANSWER, chanceSchema } from '../../../src/cli/chanceSchema'
import type { ReadFile } from '../../../src/cli/readFile'
import { writeDocument } from '../../../src/hanger/parse'
import { documentOf, ORDINARY } from '../hanger/hangerOf'
import { faultsOf, sentenceFaultsOf } from '../words/cleanSentence'

const FILES: Readonly<Record<string, string>> = {
  'ordinary.strandwise': writeDocument({ ...documentOf(ORDINARY), name: 'Ordinary' }),
  'no-pot.strandwise': writeDocument(documentOf({ ...ORDINARY, 'pot.have': 'no' })),
  'bad.strandwise': writeDocument(documentOf({ 'pot.rim': '3 kg' })),
}
const read: ReadFile = (file) => {
  const text = FILES[file]
  return text === undefined ? { ok: false, why: 'there is no such file.' } : { ok: true, text }
}
const run = (...argv: string[]) => runCommand(['chance', ...argv], read, '2026-11-26', () => null)

describe('chance', () => {
  test('the JSON answer is one line that keeps the contract, the same from the same seed', () => {
    const { out, err, exit } = run('ordinary.strandwise', '--json', '--samples', '300', '--seed', '7')
    expect({ err, exit, lines: out.split('\n').length }).toEqual({ err: '', exit: 0, lines: 2 })
    const answer = JSON.parse(out) as { samples: number, seed: number }
    expect(CHANCE_ANSWER.safeParse(answer).error?.issues ?? []).toEqual([])
    expect([answer.samples, answer.seed]).toEqual([300, 7])
    expect(run('--seed', '7', '--samples', '300', '--json', 'ordinary.strandwise').out).toBe(out)
  })

  test('the table, in words a maker reads', () => {
    const { out, exit } = run('ordinary.strandwise', '--samples', '250')
    expect(exit).toBe(0)
    const [title, first] = out.split('\n')
    expect(title).toBe('Ordinary (ordinary.strandwise)')
    expect(first).toMatch(/^Of 250 hangers made like this, .* would be overloaded hanging quietly, dry or wet: the chance is .*\.$/)
    for (const line of out.split('\n').map((l) => l.trim())) expect(line === '' ? [] : faultsOf(line)).toEqual([])
    for (const heading of ['Left out', 'What the figures rest on', 'What no figure covers']) expect(out).toContain(`\n${heading}\n`)
  })

  test.each<[readonly string[], number, string]>([
    [[], 2, 'chance needs exactly one hanger file.'],
    [['ordinary.strandwise', 'bad.strandwise'], 2, 'chance needs exactly one hanger file.'],
    [['ordinary.strandwise', '--fast'], 2, 'chance does not know the option --fast; it knows --samples N, --seed S and --json.'],
    [['ordinary.strandwise', '--samples', '0'], 2, 'The number of hangers must be a whole number from 1 to 200\u202f000; “0” was given.'],
    [['ordinary.strandwise', '--samples', '2.5'], 2, 'The number of hangers must be a whole number from 1 to 200\u202f000; “2.5” was given.'],
    [['ordinary.strandwise', '--samples'], 2, 'The number of hangers must be a whole number from 1 to 200\u202f000; nothing was given.'],
    [['ordinary.strandwise', '--seed', '-1'], 2, 'The seed must be a whole number from 0 to 2\u202f147\u202f483\u202f647; “-1” was given.'],
    [['ordinary.strandwise', '--seed', '1', '--seed', '2'], 2, '--seed was given twice.'],
    [['gone.strandwise'], 2, 'gone.strandwise: there is no such file.'],
    [['no-pot.strandwise'], 1, 'no-pot.strandwise: There is no pot yet: say what pot hangs in it, or what it weighs, and chance can be reckoned.'],
  ])('%j: exit %i and a sentence', (args, exit, sentence) => {
    expect(run(...args)).toEqual({ out: '', err: `${sentence}\n`, exit })
    expect(sentenceFaultsOf(sentence.replace(/^(\S+\.strandwise: |--seed|chance)/, 'A ').replace('A  ', 'A ')).filter((f) => !f.startsWith('blanks') && !f.startsWith('a minus'))).toEqual([])
  })

  test('a file that cannot be read tells each fault', () => {
    const { err, exit } = run('bad.strandwise')
    expect(exit).toBe(2)
    expect(err).toMatch(/^bad\.strandwise: .*\n$/)
  })

  test('its schema is printed, and the usage names it', () => {
    expect(JSON.parse(runCommand(['schema', 'chance'], read, '2026-11-26', () => null).out)).toEqual(JSON.parse(JSON.stringify(chanceSchema())))
    expect(USAGE).toContain('chance FILE [--samples N] [--seed S] [--json]')
  })
})
