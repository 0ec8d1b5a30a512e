import { compareVariants } from '../compare/comparison'
import { variantOf } from '../compare/variant'
import { parseDocument } from '../hanger/parse'
import type { InputProblem } from '../hanger/problem'
import { problemText } from '../words/problems'
import { compareJson, type ComparedFile } from './compareJson'
import { compareTable } from './compareTable'
import type { Output } from './output'
import type { ReadFile } from './readFile'

type Read = { readonly ok: true; readonly compared: ComparedFile } | { readonly ok: false; readonly sentences: readonly string[] }

function read(file: string, readFile: ReadFile): Read {
  const say = (problems: readonly InputProblem[]): Read => ({ ok: false, sentences: problems.map((p) => `${file}: ${problemText(p)}`) })
  const text = readFile(file)
  if (!text.ok) return { ok: false, sentences: [`${file}: ${text.why}`] }
  const parsed = parseDocument(text.text)
  if (!parsed.ok) return say(parsed.problems)
  const outcome = variantOf(parsed.document)
  return outcome.ok ? { ok: true, compared: { file, variant: outcome.variant } } : say(outcome.problems)
}

/** `compare FILE FILE [--json]`: exit 0 when both could be checked, whatever came of it, 2 for an input that could not be read. */
export function compareCommand(args: readonly string[], readFile: ReadFile): Output {
  const say = (...sentences: readonly string[]): Output => ({ out: '', err: sentences.map((sentence) => `${sentence}\n`).join(''), exit: 2 })
  const odd = args.find((a) => a.startsWith('-') && a !== '--json')
  if (odd !== undefined) return say(`compare does not know the option ${odd}; it knows --json.`)
  const [one, other, ...rest] = args.filter((a) => a !== '--json')
  if (one === undefined || other === undefined || rest.length > 0) return say('compare needs exactly two hanger files.')
  const [first, second] = [read(one, readFile), read(other, readFile)]
  if (!first.ok || !second.ok) return say(...[first, second].flatMap((file) => (file.ok ? [] : file.sentences)))
  const comparison = compareVariants(first.compared.variant, second.compared.variant)
  return {
    out: args.includes('--json') ? `${JSON.stringify(compareJson(first.compared, second.compared, comparison))}\n` : compareTable(first.compared, second.compared, comparison),
    err: '',
    exit: 0,
  }
}
