import { beneathChoices } from '../advice/beneathChoices'
import { loadedFor } from '../advice/loadedHanger'
import { placeNeedsOf, searchPlaceNeeds } from '../advice/placeNeeds'
import { parseDocument } from '../hanger/parse'
import type { InputProblem } from '../hanger/problem'
import { NO_WEIGHT_TEXT } from '../words/placeNeeds'
import { problemText } from '../words/problems'
import type { Output } from './output'
import { placeJson } from './placeJson'
import { placeTable } from './placeTable'
import type { ReadFile } from './readFile'

/** `place FILE [--json]`: exit 0 if a fixing was found for some place, 1 if for none or nothing is known of the weight, 2 if the input could not be read. */
export function placeCommand(args: readonly string[], readFile: ReadFile): Output {
  const [file, ...rest] = args.filter((a) => a !== '--json')
  const odd = args.find((a) => a.startsWith('-') && a !== '--json')
  if (odd !== undefined) return { out: '', err: `place does not know the option ${odd}; it knows --json.\n`, exit: 2 }
  if (file === undefined || rest.length > 0) return { out: '', err: 'place needs exactly one hanger file.\n', exit: 2 }
  const say = (problems: readonly InputProblem[]): Output => ({ out: '', err: problems.map((p) => `${file}: ${problemText(p)}\n`).join(''), exit: 2 })
  const read = readFile(file)
  if (!read.ok) return { out: '', err: `${file}: ${read.why}\n`, exit: 2 }
  const parsed = parseDocument(read.text)
  if (!parsed.ok) return say(parsed.problems)
  const outcome = loadedFor(parsed.document)
  if (!outcome.ok) return outcome.reason === 'unread' ? say(outcome.problems) : { out: '', err: `${file}: ${NO_WEIGHT_TEXT}\n`, exit: 1 }
  const { loaded } = outcome
  const needs = placeNeedsOf(loaded, [...searchPlaceNeeds(loaded)])
  const beneath = beneathChoices(loaded)
  return {
    out: args.includes('--json') ? `${JSON.stringify(placeJson(file, parsed.document, needs, beneath))}\n` : placeTable(file, parsed.document, needs, beneath),
    err: '',
    exit: needs.needs.some(({ fixings }) => fixings.some(({ found }) => found)) ? 0 : 1,
  }
}
