import { answerDocument, type Answer } from '../advice/answer'
import { hangerFileSchema } from '../hanger/schema'
import { parseDocument } from '../hanger/parse'
import { shelfFileSchema } from '../shelf/shelfSchema'
import type { HangerDocument } from '../hanger/document'
import type { InputProblem } from '../hanger/problem'
import { problemText } from '../words/problems'
import { isWorse } from '../check/verdict'
import { batchSchema } from './batch/json'
import { catalogueCommand } from './catalogueCommand'
import { chanceCommand } from './chanceCommand'
import { chanceSchema } from './chanceSchema'
import { checkJson } from './checkJson'
import { checkSchema } from './checkSchema'
import { checkTable } from './checkTable'
import { chooseCommand } from './chooseCommand'
import { chooseSchema } from './chooseSchema'
import { compareCommand } from './compareCommand'
import { compareSchema } from './compareSchema'
import type { ListFolder } from './listFolder'
import type { Output } from './output'
import { placeCommand } from './placeCommand'
import { placeSchema } from './placeSchema'
import type { ReadFile } from './readFile'
import { readSlingInput } from './readSlingInput'
import { sheetCommand } from './sheetCommand'
import { slingJson } from './slingJson'
import { solveSling } from '../statics/sling/solveSling'

export const USAGE = `Usage: npm run --silent strandwise -- <verb> …
  check FILE… [--json]       check hanger files; --json gives one line of JSON for each
  place FILE [--json]        say what fixing the hanger needs in each usual wall and ceiling, and what to ask the customer
  chance FILE [--samples N] [--seed S] [--json]
                             draw N hangers made like this one by chance (10000 by default), and say how many would be overloaded
  choose FILE [QUESTION…] [--material MATERIAL] [--mix MIX] [--shelf FILE] [--json]
                             find the smallest or largest that holds: QUESTION is strands, legs, shortestLeg, longestLeg, stick, wraps, fixing,
                             heaviestPot, largestRim (in a pot of MATERIAL with MIX) or cord (of the usual kinds, and those of a shelf file); all of them unless said
  compare FILE FILE [--json] set two hangers side by side: verdicts, every part, weights, cord, and the answers that differ
  sheet FILE --kind KIND [--size SIZE] [--draft]
                             print a sheet as HTML: KIND is customer, tag, workshop or record; SIZE is a4 (the default), letter, a5 or half-letter
  sheet FOLDER|FILE… --kind chart [--pot FILE] [--size SIZE]
                             print which of several hangers takes which pot, or takes the pot of a FILE, as HTML; of a folder every hanger file in it
  batch TABLE|FOLDER [--json] [--heaviest] [--base FILE] [--jobs N]
                             check the hanger of every row of a CSV table (columns by the paths of fields, such as pot.rim) or of every file in a folder, as CSV, or with --json a line each; --base gives the answers all rows share
  sling FILE                 solve one sling (JSON) and print its answer
  schema [WHAT]              print the JSON Schema of WHAT: hanger, the file (the default); check, of check --json; place, of place --json; chance, of chance --json; choose, of choose --json; compare, of compare --json; batch, of batch --json; shelf, the file
  catalogue [WORD] [--json]  list the catalogue's values, or those found under a word, with basis and source
`

type Checked = { readonly file: string; readonly document: HangerDocument; readonly answer: Answer }
type CheckOutcome = { readonly ok: true; readonly checked: Checked } | { readonly ok: false; readonly sentences: readonly string[] }

function checkFile(file: string, readFile: ReadFile): CheckOutcome {
  const say = (problems: readonly InputProblem[]): CheckOutcome => ({ ok: false, sentences: problems.map((p) => `${file}: ${problemText(p)}`) })
  const read = readFile(file)
  if (!read.ok) return { ok: false, sentences: [`${file}: ${read.why}`] }
  const parsed = parseDocument(read.text)
  if (!parsed.ok) return say(parsed.problems)
  const outcome = answerDocument(parsed.document)
  return outcome.ok ? { ok: true, checked: { file, document: parsed.document, answer: outcome.answer } } : say(outcome.problems)
}

/** `check FILE… [--json]`: exit 0 if all hold or just hold, 1 if one fails or is not enough known, 2 if an input could not be read. */
export function checkCommand(args: readonly string[], readFile: ReadFile): Output {
  const json = args.includes('--json')
  const files = args.filter((a) => a !== '--json')
  const odd = files.find((f) => f.startsWith('-'))
  if (odd !== undefined) return { out: '', err: `check does not know the option ${odd}; it knows --json.\n`, exit: 2 }
  if (files.length === 0) return { out: '', err: 'check needs at least one hanger file.\n', exit: 2 }
  const outcomes = files.map((file) => checkFile(file, readFile))
  const checked = outcomes.flatMap((o) => (o.ok ? [o.checked] : []))
  const bad = checked.some(({ answer }) => isWorse(answer.check.verdict, 'just holds'))
  const text = ({ file, document, answer }: Checked): string => (json ? `${JSON.stringify(checkJson(file, document, answer))}\n` : checkTable(file, document, answer))
  return {
    out: checked.map(text).join(json ? '' : '\n'),
    err: outcomes.flatMap((o) => (o.ok ? [] : o.sentences.map((s) => `${s}\n`))).join(''),
    exit: checked.length < files.length ? 2 : bad ? 1 : 0,
  }
}

/** `sling FILE`: exit 0 for a stable sling, 1 for one that lost its support or is unstable, 2 for an input that is no sling or no answer. */
export function slingCommand(args: readonly string[], readFile: ReadFile): Output {
  const [file, ...rest] = args
  if (file === undefined || rest.length > 0) return { out: '', err: 'sling needs exactly one file.\n', exit: 2 }
  const read = readFile(file)
  if (!read.ok) return { out: '', err: `${file}: ${read.why}\n`, exit: 2 }
  const input = readSlingInput(read.text)
  if (!input.ok) return { out: '', err: `${file}: ${input.why}\n`, exit: 2 }
  const result = solveSling(input.input)
  const exit = result.status === 'ERROR' || result.status === 'NOT_CONVERGED' ? 2 : result.status === 'UNSTABLE' || result.status === 'LOST_SUPPORT' ? 1 : 0
  return { out: `${JSON.stringify(slingJson(result))}\n`, err: '', exit }
}

const SCHEMAS: Readonly<Record<string, () => object>> = { hanger: hangerFileSchema, check: checkSchema, place: placeSchema, chance: chanceSchema, choose: chooseSchema, compare: compareSchema, batch: batchSchema, shelf: shelfFileSchema }

/** `schema [hanger|check|place|chance|choose|compare|batch|shelf]`. */
export function schemaCommand(args: readonly string[]): Output {
  const [what = 'hanger', ...rest] = args
  const schema = Object.hasOwn(SCHEMAS, what) ? SCHEMAS[what] : undefined
  if (rest.length > 0 || schema === undefined) return { out: '', err: `schema knows hanger, check, place, chance, choose, compare, batch and shelf, not ${args.join(' ')}.\n`, exit: 2 }
  return { out: `${JSON.stringify(schema(), null, 2)}\n`, err: '', exit: 0 }
}

/** The whole command line: a verb and its arguments; `today`: YYYY-MM-DD. */
export function runCommand(argv: readonly string[], readFile: ReadFile, today: string, listFolder: ListFolder): Output {
  const [verb, ...args] = argv
  switch (verb) {
    case 'check': return checkCommand(args, readFile)
    case 'place': return placeCommand(args, readFile)
    case 'chance': return chanceCommand(args, readFile)
    case 'choose': return chooseCommand(args, readFile)
    case 'compare': return compareCommand(args, readFile)
    case 'sheet': return sheetCommand(args, readFile, today, listFolder)
    case 'sling': return slingCommand(args, readFile)
    case 'schema': return schemaCommand(args)
    case 'catalogue': return catalogueCommand(args)
    case 'help': case '--help': case '-h': return { out: USAGE, err: '', exit: 0 }
    case undefined: return { out: '', err: USAGE, exit: 2 }
    default: return { out: '', err: `There is no verb “${verb}”.\n${USAGE}`, exit: 2 }
  }
}
