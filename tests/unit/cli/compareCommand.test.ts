import { expect, test } from 'vitest'
import { runCommand } from '../../../src/cli/commands'
import { COMPARE_ANSWER } from '../../../src/cli/compareSchema'
import type { ReadFile } from '../../../src/cli/readFile'
import type { Patch } from '../../../src/hanger/document'
import { writeDocument } from '../../../src/hanger/parse'
import { documentOf, ORDINARY } from '../hanger/hangerOf'

/** As long as the legs are not told no heaviest pot is looked for, which would take many checks. */
const HANGER: Patch = Object.fromEntries(Object.entries(ORDINARY).filter(([path]) => path !== 'make.legs'))
const FILES: Readonly<Record<string, string>> = {
  'four.strandwise': writeDocument({ ...documentOf(HANGER), name: 'Four strands' }),
  'six.strandwise': writeDocument(documentOf({ ...HANGER, 'make.strands': '6', 'pot.rim': '21 cm' })),
  'bad.strandwise': writeDocument(documentOf({ 'pot.rim': '3 kg' })),
}
const readFile: ReadFile = (file) => {
  const text = FILES[file]
  return text === undefined ? { ok: false, why: 'there is no such file.' } : { ok: true, text }
}
const run = (...argv: string[]) => runCommand(['compare', ...argv], readFile, '2026-11-26', () => null)

test('two files side by side: what differs, which part is better, and both contracts kept', () => {
  const table = run('four.strandwise', 'six.strandwise')
  expect([table.exit, table.err]).toEqual([0, ''])
  expect(table.out).toMatch(/^A: Four strands \(four\.strandwise\)\nB: six\.strandwise\n/)
  expect(table.out).toMatch(/Strands in each leg +4 +6\n/)
  expect(table.out).toMatch(/Legs .* B is better\n/)
  const { out } = run('--json', 'four.strandwise', 'six.strandwise')
  const answer = COMPARE_ANSWER.parse(JSON.parse(out))
  expect(answer.differences.map(({ path }) => path)).toEqual(['make.strands'])
  expect(answer.parts.find(({ link }) => link === 'leg')?.better).toBe('second')
})

test('a sentence for each thing that is wrong', () => {
  expect(run('four.strandwise')).toEqual({ out: '', err: 'compare needs exactly two hanger files.\n', exit: 2 })
  expect(run('four.strandwise', 'six.strandwise', '--csv').err).toContain('--csv')
  const both = run('bad.strandwise', 'none.strandwise')
  expect(both.err.split('\n')).toHaveLength(3)
  expect(both.exit).toBe(2)
})
