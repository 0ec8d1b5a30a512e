import { finish } from '../advice/edge'
import { chooseSizes } from '../choosing/chooseSizes'
import type { OwnCord } from '../choosing/cordChoices'
import type { HangerDocument } from '../hanger/document'
import { parseDocument } from '../hanger/parse'
import type { InputProblem } from '../hanger/problem'
import { resolveDocument } from '../hanger/resolve'
import { putOnHanger } from '../shelf/onHanger'
import { readShelf } from '../shelf/readShelf'
import { problemText } from '../words/problems'
import { refusedEntryText, shelfFileText } from '../words/shelf'
import { chooseArguments } from './chooseArguments'
import { chooseJson } from './chooseJson'
import { chooseTable } from './chooseTable'
import type { Output } from './output'
import type { ReadFile } from './readFile'

type Cords = { readonly ok: true; readonly cords: readonly OwnCord[] } | { readonly ok: false; readonly sentences: readonly string[] }

/** The cords of a shelf file, each put on the hanger. */
function cordsOf(file: string | null, document: HangerDocument, readFile: ReadFile): Cords {
  if (file === null) return { ok: true, cords: [] }
  const read = readFile(file)
  if (!read.ok) return { ok: false, sentences: [read.why] }
  const outcome = readShelf(read.text)
  if (!outcome.ok) return { ok: false, sentences: [shelfFileText(outcome.problem)] }
  if (outcome.refused.length > 0) return { ok: false, sentences: outcome.refused.map(refusedEntryText) }
  return { ok: true, cords: outcome.shelf.entries.filter(({ kind }) => kind === 'cord').map((entry) => ({ name: entry.name, document: putOnHanger(document, entry) })) }
}

/**
 * `choose FILE [QUESTION…] [--material M] [--mix M] [--shelf FILE] [--json]`: exit 0 if an answer was found to some question,
 * 1 if to none, 2 if an input could not be read.
 */
export function chooseCommand(args: readonly string[], readFile: ReadFile): Output {
  const read = chooseArguments(args)
  if (!read.ok) return { out: '', err: `${read.why}\n`, exit: 2 }
  const { file, choices, material, mix, shelf, json } = read.asked
  const refuse = (of: string, sentences: readonly string[]): Output => ({ out: '', err: sentences.map((sentence) => `${of}: ${sentence}\n`).join(''), exit: 2 })
  const say = (problems: readonly InputProblem[]): Output => refuse(file, problems.map(problemText))
  const text = readFile(file)
  if (!text.ok) return refuse(file, [text.why])
  const parsed = parseDocument(text.text)
  if (!parsed.ok) return say(parsed.problems)
  const { document } = parsed
  const resolved = resolveDocument(document)
  if (!resolved.ok) return say(resolved.problems)
  const own = cordsOf(shelf, document, readFile)
  if (!own.ok) return refuse(shelf ?? '', own.sentences)
  const found = finish(chooseSizes({ document, choices, own: own.cords, material, mix }))
  return {
    out: json ? `${JSON.stringify(chooseJson(file, document, found))}\n` : chooseTable(file, document, found),
    err: '',
    exit: found.some((choice) => choice.found) ? 0 : 1,
  }
}
