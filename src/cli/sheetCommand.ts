import { parseDocument } from '../hanger/parse'
import type { InputProblem } from '../hanger/problem'
import { sheetFacts } from '../sheet/facts'
import { sheetHtml } from '../sheet/sheetHtml'
import { SHEET_KINDS } from '../sheet/sheetKinds'
import { problemText } from '../words/problems'
import { sheetNoticeText } from '../words/sheetNotices'
import { chartCommand } from './chartCommand'
import type { ListFolder } from './listFolder'
import type { Output } from './output'
import type { ReadFile } from './readFile'
import { sheetArguments } from './sheetArguments'

/**
 * `sheet FILE --kind KIND [--size SIZE] [--draft]`: one HTML file on stdout; what the sheet lacks is told on stderr. Exit
 * 0; 1 where no weight may be told, so that what must change is printed instead, or a draft; 2 if the input could not be read.
 */
export function sheetCommand(args: readonly string[], readFile: ReadFile, today: string, listFolder: ListFolder): Output {
  const asked = sheetArguments(args)
  if (!asked.ok) return { out: '', err: `${asked.why}\n`, exit: 2 }
  const { files, kind, format, draft, pot } = asked.request
  if (kind === 'chart') return chartCommand(files, pot, format, today, readFile, listFolder)
  const [file] = files
  const say = (problems: readonly InputProblem[]): Output => ({ out: '', err: problems.map((p) => `${file}: ${problemText(p)}\n`).join(''), exit: 2 })
  const read = readFile(file)
  if (!read.ok) return { out: '', err: `${file}: ${read.why}\n`, exit: 2 }
  const parsed = parseDocument(read.text)
  if (!parsed.ok) return say(parsed.problems)
  const outcome = sheetFacts(parsed.document)
  if (!outcome.ok) return say(outcome.problems)
  const sheet = SHEET_KINDS[kind](outcome.facts, { format, today, draft })
  return { out: sheetHtml(sheet), err: sheet.notices.map((notice) => `${file}: ${sheetNoticeText(notice)}\n`).join(''), exit: outcome.facts.limit === null ? 1 : 0 }
}
