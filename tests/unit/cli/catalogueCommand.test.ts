import { describe, expect, test } from 'vitest'
import { catalogueEntries } from '../../../src/catalogue/entries'
import { runCommand, USAGE } from '../../../src/cli/commands'

const run = (...args: string[]) => runCommand(['catalogue', ...args], () => ({ ok: false, why: 'the catalogue reads no file.' }), '2026-11-26', () => null)
const lines = (text: string): readonly string[] => text.trimEnd().split('\n')

describe('catalogue', () => {
  test('lists every value, one to a line under a heading', () => {
    const { out, err, exit } = run()
    expect({ err, exit }).toEqual({ err: '', exit: 0 })
    expect(lines(out)).toHaveLength(catalogueEntries().length + 1)
    expect(lines(out)[0]).toMatch(/^ {2}subject +name +value +basis +source$/)
  })

  test('a word narrows it, and a line holds subject, name, value, basis and source', () => {
    const { out } = run('wrap')
    expect(lines(out).find((l) => l.includes('hand-pulled'))).toMatch(/^ {2}Knots +tension of a hand-pulled wrap of a new gathering knot +3\.06 kg \(6\.74 lb\) +common practice +pulled tight by hand$/)
    expect(out).not.toContain('yield stress')
  })

  test('several words are one phrase, quoted or not', () => {
    expect(run('gathering', 'knot').out).toBe(run('gathering knot').out)
  })

  test('“from memory” is said on every line that is', () => {
    const memory = catalogueEntries().filter((e) => e.basis === 'from memory')
    const { out } = run()
    expect(lines(out).filter((l) => / {2}from memory {2}/.test(l))).toHaveLength(memory.length)
  })

  test('JSON gives one line each with every key, SI and unrounded', () => {
    const { out, exit } = run('--json')
    expect(exit).toBe(0)
    const entries = lines(out).map((line) => JSON.parse(line) as Record<string, unknown>)
    expect(entries.map((e) => e['id'])).toEqual(catalogueEntries().map((e) => e.id))
    for (const entry of entries) expect(Object.keys(entry)).toEqual(['id', 'subject', 'name', 'kind', 'value', 'low', 'likely', 'high', 'points', 'unit', 'basis', 'source'])
    expect(entries.find((e) => e['id'] === 'ropeTables.NYLON_ROPE.6 mm.breaking')).toMatchObject({ kind: 'single', value: expect.closeTo(1490 * 4.4482216152605, 8) as number, low: null, points: null, unit: 'N', basis: 'published' })
    expect(entries.find((e) => e['id'] === 'pottingMixes.POTTING_MIXES.peat.dry')).toMatchObject({ kind: 'range', value: null, low: 90, likely: 130, high: 160, unit: 'kg/m3' })
    expect(entries.find((e) => e['id'] === 'timber.ALLOWABLE_DURATION.steps')).toMatchObject({ kind: 'curve', points: expect.arrayContaining([[600, 1.6], [null, 0.9]]) as unknown })
  })

  test('nothing found is a sentence on stderr and exit 1', () => {
    expect(run('zeppelin')).toEqual({ out: '', err: 'The catalogue has nothing under “zeppelin”.\n', exit: 1 })
    expect(run('zeppelin', '--json')).toMatchObject({ out: '', exit: 1 })
  })

  test('an unknown option is a sentence and exit 2', () => {
    expect(run('--yaml')).toMatchObject({ out: '', err: expect.stringContaining('--yaml') as string, exit: 2 })
  })

  test('the usage names it', () => {
    expect(USAGE).toContain('catalogue [WORD] [--json]')
  })
})
