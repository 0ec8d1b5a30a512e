import { stringify } from 'csv-stringify/sync'
import { COLUMN_NAMES, readColumns } from '../../batch/columns'
import type { BatchResult } from '../../batch/result'
import { isWorse } from '../../check/verdict'
import { EMPTY_DOCUMENT, type HangerDocument } from '../../hanger/document'
import { parseDocument } from '../../hanger/parse'
import { BATCH_COLUMNS, batchCells, batchProblemText } from '../../words/batch'
import { problemText } from '../../words/problems'
import type { ListFolder } from '../listFolder'
import type { ReadFile } from '../readFile'
import { batchArguments, type BatchRequest } from './arguments'
import { csvRows, type CsvRows } from './csvRows'
import { decoded } from './decode'
import { batchJson } from './json'
import { checkedInOrder, type BatchWorker } from './pool'
import type { BatchSetting, BatchTask } from './work'

/** What `batch` needs of the world. */
export interface BatchWorld {
  readonly readFile: ReadFile
  readonly listFolder: ListFolder
  /** The bytes of a file, piece by piece, or why there are none. */
  readonly openFile: (path: string) => { readonly ok: true; readonly pieces: AsyncIterable<Uint8Array> } | { readonly ok: false; readonly why: string }
  readonly cores: number
  readonly startWorker: (setting: BatchSetting) => BatchWorker
  /** Writes to stdout, and waits where nobody takes it. */
  readonly write: (text: string) => Promise<void>
  readonly complain: (text: string) => void
}

type Exit = 0 | 1 | 2
/** Fewer hangers than this are checked sooner than workers start. */
const WORTH_WORKERS = 64

// A cell that begins like a formula would be one to a spreadsheet: an apostrophe before it keeps it a text.
const csvLines = (rows: readonly (readonly string[])[]): string => stringify(rows.map((row) => [...row]), { escape_formulas: true })

function baseOf(path: string | null, readFile: ReadFile): { readonly ok: true; readonly base: HangerDocument } | { readonly ok: false; readonly sentences: readonly string[] } {
  if (path === null) return { ok: true, base: EMPTY_DOCUMENT }
  const read = readFile(path)
  if (!read.ok) return { ok: false, sentences: [`${path}: ${read.why}`] }
  const parsed = parseDocument(read.text)
  return parsed.ok ? { ok: true, base: parsed.document } : { ok: false, sentences: parsed.problems.map((problem) => `${path}: ${problemText(problem)}`) }
}

async function* filesOf(paths: readonly string[], world: BatchWorld): AsyncGenerator<readonly BatchTask[], void, void> {
  for (const [i, path] of paths.entries()) {
    const read = world.readFile(path)
    yield [read.ok ? { line: i + 1, file: path, text: read.text } : { line: i + 1, file: path, unread: read.why }]
  }
}

/** Tasks of one kind or the other, with what they have in common; null where it was told that there are none. */
interface Source {
  readonly setting: BatchSetting
  readonly tasks: AsyncIterable<readonly BatchTask[]>
}

async function tableSource(path: string, request: BatchRequest, base: HangerDocument, world: BatchWorld): Promise<Source | null> {
  const opened = world.openFile(path)
  if (!opened.ok) {
    world.complain(`${path}: ${opened.why}\n`)
    return null
  }
  const groups = csvRows(decoded(opened.pieces))
  const first = await nextWithRows(groups)
  const [header, ...rest] = first?.rows ?? []
  const columns = header === undefined ? readColumns([]) : 'problem' in header ? { ok: false as const, problems: [header.problem] } : readColumns(header.cells)
  if (!columns.ok || first === null) {
    for (const problem of columns.ok ? [] : columns.problems) world.complain(`${path}, line ${header?.line ?? 1}: ${batchProblemText(problem, COLUMN_NAMES)}\n`)
    await groups.return()
    return null
  }
  async function* tasks(): AsyncGenerator<readonly BatchTask[], void, void> {
    let found = rest.length
    yield rest
    for await (const { rows } of groups) {
      found += rows.length
      yield rows
    }
    if (found === 0) world.complain(`${path}: ${batchProblemText({ code: 'NO_ROWS' }, COLUMN_NAMES)}\n`)
  }
  return { setting: { columns: columns.columns, separator: first.separator, base, heaviest: request.heaviest }, tasks: tasks() }
}

async function nextWithRows(groups: ReturnType<typeof csvRows>): Promise<CsvRows | null> {
  for (;;) {
    const step = await groups.next()
    if (step.done === true) return null
    if (step.value.rows.length > 0) return step.value
  }
}

/**
 * `batch TABLE|FOLDER [--json] [--heaviest] [--base FILE] [--jobs N]`: checks the hanger of every row or file, in their order, as a
 * stream. Exit 0 if all hold or just hold, 1 if one fails or is not enough known, 2 if one could not be read.
 */
export async function batchCommand(args: readonly string[], world: BatchWorld): Promise<Exit> {
  const asked = batchArguments(args)
  if (!asked.ok) {
    world.complain(`${asked.why}\n`)
    return 2
  }
  const { request } = asked
  const based = baseOf(request.base, world.readFile)
  if (!based.ok) {
    world.complain(based.sentences.map((sentence) => `${sentence}\n`).join(''))
    return 2
  }
  let exit: Exit = 0
  const worst = (than: Exit): void => { if (than > exit) exit = than }
  const files = world.listFolder(request.path)
  if (files?.length === 0) world.complain(`${request.path}: no hanger file is in this folder.\n`)
  const source = files === null
    ? await tableSource(request.path, request, based.base, world)
    : { setting: { columns: [], separator: ',' as const, base: EMPTY_DOCUMENT, heaviest: request.heaviest }, tasks: filesOf(files, world) }
  if (source === null || files?.length === 0) return 2
  const wanted = request.jobs ?? world.cores
  const isWorth = wanted > 1 && (files === null || files.length >= WORTH_WORKERS)
  // Before the workers: where nothing can be written they would wait for ever.
  if (!request.json) await world.write(csvLines([BATCH_COLUMNS]))
  const workers = isWorth ? Array.from({ length: wanted }, () => world.startWorker(source.setting)) : []
  for await (const results of checkedInOrder(source.tasks, source.setting, workers)) {
    await world.write(request.json ? results.map((result) => `${JSON.stringify(batchJson(result))}\n`).join('') : csvLines(results.map((result) => batchCells(result, COLUMN_NAMES))))
    for (const result of results) worst(exitOf(result))
    tellProblems(results, request.path, world)
  }
  return exit
}

const exitOf = ({ facts }: BatchResult): Exit => (facts === null ? 2 : isWorse(facts.verdict, 'just holds') ? 1 : 0)

function tellProblems(results: readonly BatchResult[], path: string, world: BatchWorld): void {
  const sentences = results.flatMap(({ line, file, problems }) => problems.map((problem) => `${file ?? `${path}, line ${line}`}: ${batchProblemText(problem, COLUMN_NAMES)}\n`))
  if (sentences.length > 0) world.complain(sentences.join(''))
}
