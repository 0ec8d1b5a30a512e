import { expect, it } from 'vitest'
import { writeDocument } from '#core'
import { runCommand } from '../../../src/cli/commands'
import type { ReadFile } from '../../../src/cli/readFile'
import { documentOf, ORDINARY } from '../hanger/hangerOf'

const FILES: Readonly<Record<string, string>> = {
  'stall/larder.strandwise': writeDocument({ ...documentOf({ ...ORDINARY, 'make.code': 'L-4', 'make.maker': 'Marit Holm' }), name: 'Larder window' }),
  'stall/broken.strandwise': '{',
  'fern.strandwise': writeDocument({ ...documentOf({ 'pot.rim': '16 cm', 'weighed.mass': '2.2 kg', 'weighed.state': 'watered' }), name: 'Fern' }),
  'bare.strandwise': writeDocument(documentOf({ 'make.legs': '4' })),
}
const read: ReadFile = (file) => (FILES[file] === undefined ? { ok: false, why: 'there is no such file.' } : { ok: true, text: FILES[file] })
const run = (...argv: string[]) => runCommand(['sheet', ...argv, '--kind', 'chart'], read, '2026-11-26', (path) => (path === 'stall' ? Object.keys(FILES).filter((file) => file.startsWith('stall')) : path === 'bare' ? [] : null))

it('prints the hangers of a folder against usual pots, and tells those that cannot be read', () => {
  const { out, err, exit } = run('stall', '--size', 'letter')
  expect(exit).toBe(2)
  expect(err).toMatch(/^stall\/broken\.strandwise: This is not a hanger file.*\n$/)
  for (const part of ['class="sheet letter chart"', 'Larder window (L-4)', 'Clay pots', 'Glazed stoneware pots', '+ yes', '± just', '– no', 'Marit Holm', '26 November 2026']) expect(out).toContain(part)
})

it.each([[['bare'], 'bare: no hanger file is in this folder.\n'], [['nowhere'], 'nowhere: there is no such file.\n'], [[], 'sheet needs a folder or hanger files.\n']])('%j is refused in a sentence', (argv, sentence) => {
  expect(run(...argv)).toEqual({ out: '', err: sentence, exit: 2 })
})

it('prints which of them take the pot of another file, and why', () => {
  const { out, exit } = run('stall/larder.strandwise', '--pot', 'fern.strandwise')
  expect(exit).toBe(0)
  const said = out.slice(out.indexOf('</style>')).replaceAll('\u00a0', ' ')
  for (const part of ['Which hanger takes this pot', 'Larder window (L-4)', 'takes this pot. The pot weighs up to 2.2 kg', 'Heaviest pot when watered']) expect(said).toContain(part)
})

it.each([
  [['stall/larder.strandwise', '--pot', 'bare.strandwise'], 'bare.strandwise: It tells no pot to ask about: its width at the rim, or what it weighs.\n'],
  [['stall/larder.strandwise', '--pot', 'gone.strandwise'], 'gone.strandwise: there is no such file.\n'],
])('a pot that is not told is refused in a sentence: %j', (argv, sentence) => {
  expect(run(...argv)).toEqual({ out: '', err: sentence, exit: 2 })
})
