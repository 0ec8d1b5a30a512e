import { potTaken, tellsPot, type PotTaken } from '../advice/hangersForPot'
import { CHART_MATERIALS, sizeChart, type ChartHanger, type ChartRow } from '../advice/sizeChart'
import { USUAL_RIMS } from '../advice/potsThatFit'
import { parseDocument } from '../hanger/parse'
import { resolveDocument } from '../hanger/resolve'
import { potTakenSheet } from '../sheet/potTakenSheet'
import type { PageFormat, Sheet } from '../sheet/sheet'
import { sheetHtml } from '../sheet/sheetHtml'
import { sizeChartSheet } from '../sheet/sizeChartSheet'
import { problemText } from '../words/problems'
import { NO_POT_TO_ASK_TEXT } from '../words/sizeChart'
import type { ListFolder } from './listFolder'
import type { Output } from './output'
import type { ReadFile } from './readFile'

const USUAL = { rims: USUAL_RIMS, materials: CHART_MATERIALS }

type Found = { readonly hanger: ChartHanger } | { readonly sentences: readonly string[] }

function read(path: string, readFile: ReadFile): Found {
  const text = readFile(path)
  if (!text.ok) return { sentences: [`${path}: ${text.why}`] }
  const parsed = parseDocument(text.text)
  if (!parsed.ok) return { sentences: parsed.problems.map((p) => `${path}: ${problemText(p)}`) }
  const resolved = resolveDocument(parsed.document)
  if (!resolved.ok) return { sentences: resolved.problems.map((p) => `${path}: ${problemText(p)}`) }
  return { hanger: { file: path, document: parsed.document } }
}

/** The usual pots tried in one hanger. */
function rowOf(hanger: ChartHanger): ChartRow | undefined {
  const steps = sizeChart([hanger], USUAL)
  let step = steps.next()
  while (step.done !== true) step = steps.next()
  return step.value.rows[0]
}

/**
 * `sheet FOLDER|FILE… --kind chart [--pot FILE] [--size SIZE]`: the size chart of all hangers named, or which of them take the
 * pot of one file; a folder standing for the hanger files in it. One file is read at a time and left once it was tried. Those
 * that cannot be read are told on stderr and left out. Exit 0; 2 if any could not be read, or there is none.
 */
export function chartCommand(paths: readonly string[], pot: string | null, format: PageFormat, today: string, readFile: ReadFile, listFolder: ListFolder): Output {
  const asked = pot === null ? null : read(pot, readFile)
  if (asked !== null && !('hanger' in asked)) return { out: '', err: asked.sentences.map((sentence) => `${sentence}\n`).join(''), exit: 2 }
  if (asked !== null && !tellsPot(asked.hanger.document)) return { out: '', err: `${asked.hanger.file}: ${NO_POT_TO_ASK_TEXT}\n`, exit: 2 }
  const listed = paths.map((path) => ({ path, inside: listFolder(path) }))
  const sentences = listed.filter(({ inside }) => inside?.length === 0).map(({ path }) => `${path}: no hanger file is in this folder.`)
  const rows: ChartRow[] = []
  const tried: PotTaken[] = []
  for (const path of listed.flatMap(({ path, inside }) => inside ?? [path])) {
    const found = read(path, readFile)
    if (!('hanger' in found)) sentences.push(...found.sentences)
    else if (asked !== null) tried.push(potTaken(found.hanger, asked.hanger.document))
    else rows.push(...[rowOf(found.hanger)].filter((row) => row !== undefined))
  }
  const isEmpty = rows.length + tried.length === 0
  const sheet = (): Sheet => (asked === null ? sizeChartSheet({ ...USUAL, rows }, { format, today }) : potTakenSheet(tried, asked.hanger.document, { format, today }))
  return {
    out: isEmpty ? '' : sheetHtml(sheet()),
    err: sentences.map((sentence) => `${sentence}\n`).join(''),
    exit: sentences.length > 0 ? 2 : 0,
  }
}
