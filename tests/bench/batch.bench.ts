import { spawn } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { availableParallelism, tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { bench, describe } from 'vitest'
import type { BatchColumn } from '../../src/batch/columns'
import { workOn } from '../../src/cli/batch/work'
import { EMPTY_DOCUMENT } from '../../src/hanger/document'

const CLI = resolve(import.meta.dirname, '../../out/main/cli.js')
/** Tells the most memory that the whole process held, its workers among it, KiB. */
const WATCH = 'data:text/javascript,process.on("exit",()=>{process.stderr.write(`held ${process.resourceUsage().maxRSS}\\n`)})'

const HEADER = 'name;pot.rim;weighed.mass;weighed.state;make.legs;make.strands;cord.fibre;cord.diameter;place.beneath'
const rowOf = (i: number): string => `Hanger ${i};${14 + (i % 9)} cm;${2 + (i % 40) / 10} kg;watered;${3 + (i % 4)};4;cotton;${3 + (i % 3)} mm;furniture`

interface Run { readonly seconds: number; readonly held: number; readonly lines: number }

function run(table: string, jobs: number): Promise<Run> {
  const from = performance.now()
  const child = spawn(process.execPath, ['--import', WATCH, CLI, 'batch', table, '--jobs', String(jobs)])
  let [lines, said] = [0, '']
  child.stdout.on('data', (piece: Buffer) => { for (const byte of piece) if (byte === 10) lines += 1 })
  child.stderr.on('data', (piece: Buffer) => { said += piece.toString() })
  return new Promise((done) => {
    child.on('close', () => {
      const held = Math.max(...[...said.matchAll(/held (\d+)/g)].map(([, kib]) => Number(kib)))
      done({ seconds: (performance.now() - from) / 1000, held, lines: lines - 1 })
    })
  })
}

const folder = mkdtempSync(join(tmpdir(), 'strandwise-batch-'))
const cores = availableParallelism()
const told: string[] = []
const peaks: number[] = []
for (const [rows, jobs] of [[1000, 1], [1000, cores], [10_000, cores], [100_000, cores]] as const) {
  const table = join(folder, `${rows}.csv`)
  writeFileSync(table, `${[HEADER, ...Array.from({ length: rows }, (_, i) => rowOf(i))].join('\n')}\n`)
  const { seconds, held, lines } = await run(table, jobs)
  if (lines !== rows) throw new Error(`${rows} rows, ${lines} answers`)
  peaks.push(held)
  told.push(`${String(rows).padStart(7)} rows, ${jobs} at work: ${Math.round(rows / seconds)} rows/s with starting up, at most ${Math.round(held / 1024)} MiB`)
}
rmSync(folder, { recursive: true })
console.log(`${told.join('\n')}\n100,000 rows hold ${((peaks[3] ?? NaN) / (peaks[1] ?? NaN)).toFixed(2)} times the memory of 1000, ${((peaks[3] ?? NaN) / (peaks[2] ?? NaN)).toFixed(2)} times that of 10,000`)

describe('batch', () => {
  const setting = { columns: HEADER.split(';') as BatchColumn[], separator: ';', base: EMPTY_DOCUMENT, heaviest: false } as const
  bench('one row, read and checked', () => { workOn({ line: 2, cells: rowOf(1).split(';') }, setting) }, { time: 1000 })
})
