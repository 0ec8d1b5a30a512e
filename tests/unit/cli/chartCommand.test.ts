import { expect, it } from 'vitest'
import { writeDocument } from '#core'
import { runCommand } from '../../../src/cli/commands'
import type { ReadFile } from '../../../src/cli/readFile'
import { documentOf, ORDINARY } from '../hanger/hangerOf'

const FILES: Readonly<Record<string, string>> = {
  'stall/larder.strandwise': writeDocument({ ...documentOf({ ...ORDINARY, 'make.code': 'L-4', 'make.maker': 'Marit Holm' }), name: 'Larder window' }),
  'stall/broken.strandwise': '{',
}
const read: ReadFile = (file) => (FILES[file] === undefined ? { ok: false, why: 'there is no such file.' } : { ok: true, text: FILES[file] })
const run = (...argv: string[]) => runCommand(['sheet', ...argv, '--kind', 'chart'], read, '2026-11-26', (path) => (path === 'stall' ? Object.keys(FILES) : path === 'bare' ? [] : null))

it('prints the hangers of a folder against usual pots, and tells those that cannot be read', () => {
  const { out, err, exit } = run('stall', '--size', 'letter')
  expect(exit).toBe(2)
  expect(err).toMatch(/^stall\/broken\.strandwise: This is not a hanger file.*\n$/)
  for (const part of ['class="sheet letter chart"', 'Larder window (L-4)', 'Clay pots', 'Glazed stoneware pots', '+ yes', '± just', '– no', 'Marit Holm', '26 November 2026']) expect(out).toContain(part)
})

it.each([[['bare'], 'bare: no hanger file is in this folder.\n'], [['nowhere'], 'nowhere: there is no such file.\n'], [[], 'sheet needs a folder or hanger files.\n']])('%j is refused in a sentence', (argv, sentence) => {
  expect(run(...argv)).toEqual({ out: '', err: sentence, exit: 2 })
})
