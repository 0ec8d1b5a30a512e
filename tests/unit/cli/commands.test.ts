import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { CHECK_ANSWER, checkSchema } from '../../../src/cli/checkSchema'
import { runCommand } from '../../../src/cli/commands'
import type { ReadFile } from '../../../src/cli/readFile'
import { DEMOS } from '../../../src/hanger/demos'
import { EMPTY_DOCUMENT, patchDocument } from '../../../src/hanger/document'
import { writeDocument } from '../../../src/hanger/parse'
import { ORDINARY } from '../hanger/ordinaryPatch'

const FILES: Readonly<Record<string, string>> = {
  ...Object.fromEntries(DEMOS.map((d) => [d.file, d.text])),
  'ordinary.strandwise': writeDocument(patchDocument({ ...EMPTY_DOCUMENT, name: 'Ordinary' }, ORDINARY)),
  'no-pot.strandwise': writeDocument(patchDocument(EMPTY_DOCUMENT, { ...ORDINARY, 'pot.have': 'no' })),
  'no-hanger.strandwise': writeDocument(patchDocument(EMPTY_DOCUMENT, { 'make.have': 'no', 'pot.rim': '18 cm', 'pot.material': 'plastic', 'pot.drainage': 'hole', 'place.beneath': 'furniture' })),
  'own-reserve.strandwise': writeDocument(patchDocument(EMPTY_DOCUMENT, { ...ORDINARY, 'make.date': '2028-02-29', 'place.life': '1 year', 'reserve.own': '2.6', 'reserve.reason': 'the shop asks for it' })),
  'in-the-sun.strandwise': writeDocument(patchDocument(EMPTY_DOCUMENT, { ...ORDINARY, 'cord.fibre': 'polypropylene', 'place.exposure': 'outdoors', 'make.date': '2028-02-29' })),
  'empty.strandwise': writeDocument(EMPTY_DOCUMENT),
  'bad-unit.strandwise': writeDocument(patchDocument(EMPTY_DOCUMENT, { 'cord.rated': '40 mm', 'pot.rim': '-3 cm' })),
  'newer.strandwise': '{"format":"strandwise-hanger","version":2}',
  'other.json': '{"format":"something else"}',
  'extra.strandwise': '{"format":"strandwise-hanger","version":1,"mood":"calm","pot":{"colour":"blue","rim":"18 cm"}}',
  'broken.strandwise': '{',
  'bare.strandwise': '{"format":"strandwise-hanger","version":1,"pot":{"rim":18,"height":""}}',
}
const read: ReadFile = (file) => {
  const text = FILES[file]
  return text === undefined ? { ok: false, why: 'there is no such file.' } : { ok: true, text }
}
const run = (...argv: string[]) => runCommand(argv, read, '2026-11-26', () => null)
const answers = (...argv: string[]) => run(...argv).out.trimEnd().split('\n').map((line) => JSON.parse(line) as Record<string, unknown>)

describe('check', () => {
  test.each(['ordinary.strandwise', 'no-pot.strandwise', 'no-hanger.strandwise', 'own-reserve.strandwise', 'in-the-sun.strandwise', 'empty.strandwise', 'extra.strandwise', ...DEMOS.map((d) => d.file)])('%s: the JSON answer is one line that keeps the contract', (file) => {
    const { out } = run('check', file, '--json')
    expect(out.match(/\n/g)).toHaveLength(1)
    const read = CHECK_ANSWER.safeParse(JSON.parse(out))
    expect(read.error?.issues ?? []).toEqual([])
  })

  test('every key of the contract is always there', () => {
    const keys = Object.keys(answers('check', 'ordinary.strandwise', '--json')[0] ?? {})
    for (const file of ['empty.strandwise', 'no-pot.strandwise']) expect(Object.keys(answers('check', file, '--json')[0] ?? {})).toEqual(keys)
    expect(keys).toEqual([
      'format', 'version', 'file', 'name', 'verdict', 'verdicts', 'governing', 'weights', 'tiers', 'geometry', 'sling', 'panel', 'tipPush', 'gathering', 'links', 'remedies', 'heaviest', 'care', 'cautions', 'assumed', 'findings',
    ])
  })

  test('situations that do not concern a hanger are null', () => {
    const empty = (file: string): readonly string[] => Object.entries(answers('check', file, '--json')[0]?.['sling'] ?? {}).flatMap(([code, sling]) => (sling === null ? [code] : []))
    expect(empty('ordinary.strandwise')).toEqual(['gust', 'tug', 'lowerOut', 'neighbourDown'])
    expect(empty('in-the-sun.strandwise')).toEqual(['tug', 'lowerOut', 'neighbourDown'])
    expect(empty('glazed-pot-by-the-reading-chair.strandwise')).not.toContain('tug')
  })

  test('ends with 0, 1 and 2 as the verdicts and inputs ask', () => {
    expect(run('check', 'ordinary.strandwise').exit).toBe(0)
    expect(run('check', 'fern-over-the-sideboard.strandwise').exit).toBe(0)
    expect(run('check', 'glazed-pot-by-the-reading-chair.strandwise').exit).toBe(1)
    expect(run('check', 'order-for-a-rented-flat.strandwise').exit).toBe(1)
    expect(run('check', 'ordinary.strandwise', 'broken.strandwise')).toMatchObject({ exit: 2, err: expect.stringContaining('broken.strandwise: This is not a hanger file') as string })
  })

  test('several files give several lines, in their order', () => {
    expect(answers('check', 'ordinary.strandwise', 'fern-over-the-sideboard.strandwise', '--json').map((a) => a['file'])).toEqual(['ordinary.strandwise', 'fern-over-the-sideboard.strandwise'])
  })

  test.each([
    ['missing.strandwise', 'there is no such file'],
    ['newer.strandwise', 'version 2'],
    ['other.json', '"strandwise-hanger"'],
    ['bad-unit.strandwise', 'Breaking force of the cord: given “40 mm”'],
    ['bare.strandwise', 'Width of the pot at the rim: given “18”, but the unit is missing'],
    ['bare.strandwise', 'Height of the pot: given “”, but nothing was given. Allowed: 30 mm to 1000 mm.'],
    ['bad-unit.strandwise', 'Width of the pot at the rim: given “-3 cm”'],
  ])('%s is refused with a sentence that says %s, on stderr only', (file, words) => {
    const { out, err, exit } = run('check', file, '--json')
    expect({ out, exit }).toEqual({ out: '', exit: 2 })
    expect(err).toContain(words)
    expect(err.trimEnd().split('\n').every((line) => line.startsWith(file) && line.endsWith('.'))).toBe(true)
  })

  test('keys it does not know are named', () => {
    const [answer] = answers('check', 'extra.strandwise', '--json')
    expect(answer?.['findings']).toContainEqual(expect.objectContaining({ code: 'UNKNOWN_KEYS', names: ['mood', 'pot.colour'] }))
  })

  test('care is told with its day, its reasons and when to look, in codes and in words', () => {
    const [dated, sunny] = answers('check', 'own-reserve.strandwise', 'in-the-sun.strandwise', '--json')
    expect(dated?.['care']).toMatchObject({
      life: 31_557_600, replaceAfter: 31_557_600, replaceBy: '2029-02-28', inspect: { first: 1, every: 6, reasons: ['indoors'] },
      reasons: expect.arrayContaining([{ code: 'SERVICE_LIFE', life: 31_557_600, chosen: true, text: expect.stringContaining('1 year') as string }]) as unknown,
      texts: { replace: 'Replace it by 28 February 2029, 1 year after it was made.' },
    })
    expect(sunny?.['care']).toMatchObject({ replaceAfter: null, replaceBy: null, inspect: { every: 1 } })
    expect(run('check', 'own-reserve.strandwise').out).toMatch(/\nCare\n {2}Replace it by 28 February 2029/)
  })

  test('a reserve of one’s own goes with the answer, reason and all', () => {
    const [answer] = answers('check', 'own-reserve.strandwise', '--json')
    expect(answer?.['findings']).toContainEqual({ code: 'RESERVE_CHANGED', own: 2.6, usual: 2, reason: 'the shop asks for it', text: expect.stringContaining('“the shop asks for it”') as string })
    expect(run('check', 'own-reserve.strandwise').out).toContain('“the shop asks for it”')
  })

  test('the overall factor stands beside what guidance asks', () => {
    expect(run('check', 'ordinary.strandwise').out).toContain('guidance for fibre rope 5 to 12, for life lines 12 to 15')
  })

  test('with no pot yet it tells the heaviest, and the check shown reaches no further than that', () => {
    const [answer] = answers('check', 'no-pot.strandwise', '--json')
    expect(answer).toMatchObject({ verdict: 'not enough known', heaviest: { watered: expect.any(Number) as number } })
    const heaviest = (answer?.['heaviest'] as { watered: number }).watered
    expect(answer?.['weights']).toMatchObject({ watered: { likely: heaviest } })
  })

  test('with no hanger yet it tells the smallest cord', () => {
    const [answer] = answers('check', 'no-hanger.strandwise', '--json')
    expect(answer).toMatchObject({ verdict: 'not enough known', remedies: [{ code: 'smallestCord', patch: { 'cord.diameter': expect.stringMatching(/mm$/) as string } }] })
  })

  test('the readable table names the verdicts, the weakest part, what is assumed and the cautions', () => {
    const { out } = run('check', 'order-for-a-rented-flat.strandwise')
    for (const words of ['Not enough is known of the place.', 'Weakest:', 'Assumed, ', 'What would mend it', 'aid to judgement']) expect(out).toContain(words)
    expect(out).not.toMatch(/undefined|NaN|\[object/)
  })

  test('an unknown option, and no file at all, are told in a sentence', () => {
    expect(run('check', '--fast', 'ordinary.strandwise')).toMatchObject({ exit: 2, out: '', err: expect.stringContaining('--fast') as string })
    expect(run('check')).toMatchObject({ exit: 2, out: '' })
  })
})

describe('sling', () => {
  const input = { A: [[0, 0, 1], [0, 0, 1], [0, 0, 1]], B: [[0.1, 0, 0.17], [-0.05, 0.0866, 0.17], [-0.05, -0.0866, 0.17]], L0: [0.7, 0.7, 0.7], EA: [2900, 2900, 2900], mass: 5, cg: [0, 0, 0.085], ell: 0.1 }
  const sling = (text: string) => runCommand(['sling', 's.json'], () => ({ ok: true, text }), '2026-11-26', () => null)

  test('answers with every key, 0 for a rest', () => {
    const { out, exit } = sling(JSON.stringify(input))
    expect(exit).toBe(0)
    const answer = JSON.parse(out) as Record<string, unknown>
    expect(Object.keys(answer).sort()).toEqual(['T', 'cg', 'eig_min_nonzero', 'error', 'negative', 'residual_rel', 'slack', 'stable', 'status', 'tilt_deg', 'upright', 'wall_N', 'zero_is_symmetry'])
    expect(answer).toMatchObject({ status: 'OK_NEUTRAL_TWIST', stable: true, zero_is_symmetry: true })
  })

  test.each([
    ['a missing number', { ...input, mass: null }, 'NOT_FINITE'],
    ['lists of unequal length', { ...input, L0: [0.7, 0.7] }, 'NOT_FINITE'],
    ['a negative mass', { ...input, mass: -5 }, 'BAD_MASS'],
    ['two legs', { ...input, A: input.A.slice(1), B: input.B.slice(1), L0: [0.7, 0.7], EA: [2900, 2900] }, 'TOO_FEW_LEGS'],
    ['nothing', {}, 'TOO_FEW_LEGS'],
  ])('%s is an error with the answer printed and exit 2', (_, bad, error) => {
    const { out, exit } = sling(JSON.stringify(bad))
    expect({ exit, ...(JSON.parse(out) as object) }).toMatchObject({ exit: 2, status: 'ERROR', error })
  })

  test('a text that is no sling is told on stderr', () => {
    expect(sling('[1,2]')).toMatchObject({ exit: 2, out: '', err: expect.stringContaining('JSON object') as string })
    expect(sling('{')).toMatchObject({ exit: 2, out: '' })
  })
})

describe('schema and the rest', () => {
  test('schema prints JSON Schemas', () => {
    expect(JSON.parse(run('schema').out)).toMatchObject({ $schema: 'https://json-schema.org/draft/2020-12/schema', properties: { pot: { properties: { rim: { type: 'string' } } } } })
    expect(JSON.parse(run('schema', 'check').out)).toEqual(JSON.parse(JSON.stringify(checkSchema())))
    expect(JSON.parse(run('schema', 'shelf').out)).toMatchObject({ $id: 'strandwise-shelf-1', properties: { entries: { type: 'array' } } })
    expect(run('schema', 'rope').exit).toBe(2)
  })

  test('an unknown verb is told with the usage', () => {
    expect(run('hang')).toMatchObject({ exit: 2, out: '', err: expect.stringContaining('There is no verb “hang”') as string })
    expect(run('--help')).toMatchObject({ exit: 0, err: '' })
  })
})

test('the demos on disk are the demos bundled', () => {
  for (const demo of DEMOS) expect(readFileSync(`src/hanger/demos/${demo.file}`, 'utf8')).toBe(demo.text)
})
