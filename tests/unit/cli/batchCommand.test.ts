import { parse } from 'csv-parse/sync'
import { expect, test } from 'vitest'
import { batchCommand } from '../../../src/cli/batch/command'
import { BATCH_ANSWER } from '../../../src/cli/batch/json'
import { writeDocument } from '../../../src/hanger/parse'
import { documentOf, ORDINARY } from '../hanger/hangerOf'

const BASE = writeDocument(documentOf(ORDINARY))
const bytes = (text: string): Uint8Array => new TextEncoder().encode(text)

/** Pieces of a few bytes, so that letters, line breaks and quotes are cut in two. */
async function* piecesOf(whole: Uint8Array, size: number): AsyncGenerator<Uint8Array, void, void> {
  for (let i = 0; i < whole.length; i += size) yield whole.subarray(i, i + size)
}

async function run(table: Uint8Array | string, ...options: readonly string[]) {
  let [out, err] = ['', '']
  const exit = await batchCommand(['t.csv', '--base', 'base.strandwise', '--jobs', '1', ...options], {
    readFile: (file) => (file === 'base.strandwise' ? { ok: true, text: BASE } : { ok: false, why: 'there is no such file.' }),
    listFolder: () => null,
    openFile: () => ({ ok: true, pieces: piecesOf(typeof table === 'string' ? bytes(table) : table, typeof table === 'string' && table.length > 10_000 ? 4096 : 7) }),
    cores: 1,
    startWorker: () => { throw new Error('not asked for') },
    write: async (text) => { out += text },
    complain: (text) => { err += text },
  })
  return { out, err, exit }
}

test('a table with good and bad rows: each in its order, by its true line, and none stops the rest', async () => {
  const { out, err, exit } = await run([
    'name;pot.rim', 'Grün;17,5 cm', '"Two', 'lines";18 cm', '', '=1+1;17 cm', 'Wrong;3 kg', 'Short', 'Comma,17 cm', 'In "side";17 cm', 'Nul\0;17 cm', `Long;${'9'.repeat(501)}`, 'Last;', '',
  ].join('\r\n'))
  const rows = parse(out, { columns: true }) as readonly Record<string, string>[]
  expect(rows.map(({ line, name }) => `${line} ${name}`)).toEqual(['2 Grün', '3 Two\nlines', "6 '=1+1", '7 Wrong', '8 ', '9 ', '10 ', '11 ', '12 ', '13 Last'])
  expect(rows.filter(({ verdict }) => verdict !== '').map(({ line }) => line)).toEqual(['2', '3', '6', '13'])
  expect(Number(rows[0]?.['watered_kg'])).toBeGreaterThan(0)
  for (const [i, said] of [[3, '3 kg'], [4, '1 cell, and the header names 2'], [5, 'parted by commas, and the header by semicolons'], [6, 'quote'], [7, 'control character'], [8, '501 characters']] as const) {
    expect(rows[i]?.['problems']).toContain(said)
    expect(err).toContain(`t.csv, line ${rows[i]?.['line']}: `)
  }
  expect(exit).toBe(2)
})

test('lines of JSON keep their schema and say the same', async () => {
  const { out, exit } = await run('name,pot.rim\nA,17 cm\nB,17\n', '--json')
  const answers = out.trimEnd().split('\n').map((line) => BATCH_ANSWER.parse(JSON.parse(line)))
  expect(answers.map(({ line, name, verdict }) => [line, name, verdict !== null])).toEqual([[2, 'A', true], [3, 'B', false]])
  expect(exit).toBe(2)
})

test('encodings: with a mark UTF-8 and UTF-16, else a sentence with the line', async () => {
  const table = 'name\tpot.rim\nGrün\t17 cm\n'
  const utf16 = Uint8Array.of(0xff, 0xfe, ...new Uint8Array(Uint16Array.from(table, (letter) => letter.charCodeAt(0)).buffer))
  for (const whole of [bytes(`\uFEFF${table}`), utf16]) expect((await run(whole)).out).toContain('\n2,,Grün,')
  const latin = Uint8Array.from(table, (letter) => letter.charCodeAt(0))
  expect((await run(latin)).err).toMatch(/^t\.csv, line 2: .*UTF-8/)
})

test('a header that names no fields is told, and nothing is answered', async () => {
  const { out, err, exit } = await run('pot.rin,name,name,\n1,2,3,4\n')
  expect([out, exit]).toEqual(['', 2])
  expect(err).toMatch(/line 1: Column 1: given “pot\.rin”.*“pot\.rim”/)
  expect(err).toContain('Column 3: “name” is there already')
  expect(err).toContain('Column 4 has no name')
  expect((await run('')).err).toContain('There is no header')
  expect((await run('name\n')).err).toContain('There is no row')
})

test('where not even the header can be written it ends at once, with no worker left to wait', async () => {
  let started = 0
  await expect(batchCommand(['t.csv', '--jobs', '2'], {
    readFile: () => ({ ok: false, why: '' }),
    listFolder: () => null,
    openFile: () => ({ ok: true, pieces: piecesOf(bytes('name\nA\n'), 7) }),
    cores: 2,
    startWorker: () => {
      started += 1
      return { postMessage: () => undefined, on: () => undefined, terminate: async () => { started -= 1 } }
    },
    write: async () => { throw new Error('full') },
    complain: () => undefined,
  })).rejects.toThrow('full')
  expect(started).toBe(0)
})

test('a quote that is not closed ends within bounds, and what came before is answered', async () => {
  const { out, err, exit } = await run(`name,pot.rim\nA,17 cm\n"B,17 cm\n${'C,17 cm\n'.repeat(30_000)}`)
  expect(out).toContain('\n2,,A,')
  expect(err).toContain('perhaps a quote is not closed')
  expect(err.length).toBeLessThan(10_000)
  expect(exit).toBe(2)
})

test('every file of a folder has its row, one that cannot be read too, with the reason', async () => {
  const texts: Readonly<Record<string, string>> = { 'f/a.strandwise': BASE, 'f/c.strandwise': '{"format"' }
  let [out, err] = ['', '']
  const exit = await batchCommand(['f', '--jobs', '1'], {
    readFile: (file) => {
      const text = texts[file]
      return text === undefined ? { ok: false, why: 'the file has 3000000 bytes; at most 1048576 are read.' } : { ok: true, text }
    },
    listFolder: () => ['f/a.strandwise', 'f/b.strandwise', 'f/c.strandwise'],
    openFile: () => ({ ok: false, why: '' }),
    cores: 1,
    startWorker: () => { throw new Error('not asked for') },
    write: async (text) => { out += text },
    complain: (text) => { err += text },
  })
  const rows = parse(out, { columns: true }) as readonly Record<string, string>[]
  expect(rows.map(({ line, file }) => `${line} ${file}`)).toEqual(['1 f/a.strandwise', '2 f/b.strandwise', '3 f/c.strandwise'])
  expect(rows.map(({ problems }) => problems !== '')).toEqual([false, true, true])
  expect(rows[1]?.['problems']).toBe('The file has 3000000 bytes; at most 1048576 are read.')
  expect(err).toContain('f/b.strandwise: The file has 3000000 bytes')
  expect(exit).toBe(2)
})
