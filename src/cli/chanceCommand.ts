import { chanceReport } from '../chance/report'
import { sampleHangers, type ChanceOutcome } from '../chance/sampleHangers'
import type { ChanceAsked } from '../chance/asked'
import { parseDocument } from '../hanger/parse'
import { chanceProblemText } from '../words/chanceProblems'
import { problemText } from '../words/problems'
import { chanceArguments } from './chanceArguments'
import { chanceJson } from './chanceJson'
import { chanceTable } from './chanceTable'
import type { Output } from './output'
import type { ReadFile } from './readFile'

function allOf(asked: ChanceAsked): ChanceOutcome {
  const steps = sampleHangers({ ...asked, worker: 0, workers: 1 })
  let step = steps.next()
  while (step.done !== true) step = steps.next()
  return step.value
}

/** `chance FILE [--samples N] [--seed S] [--json]`: exit 0 with figures, 1 where too little is known for any, 2 for an input that could not be read. */
export function chanceCommand(args: readonly string[], readFile: ReadFile): Output {
  const say = (sentences: readonly string[], exit: 1 | 2): Output => ({ out: '', err: sentences.map((sentence) => `${sentence}\n`).join(''), exit })
  const given = chanceArguments(args)
  if (!given.ok) return say(given.sentences, 2)
  const { file, samples, seed, json } = given
  const read = readFile(file)
  if (!read.ok) return say([`${file}: ${read.why}`], 2)
  const parsed = parseDocument(read.text)
  if (!parsed.ok) return say(parsed.problems.map((p) => `${file}: ${problemText(p)}`), 2)
  const outcome = allOf({ document: parsed.document, samples, seed })
  if (!outcome.ok) {
    const unread = outcome.problems.some((p) => p.code === 'UNREADABLE')
    const sentences = outcome.problems.flatMap((p) => (p.code === 'UNREADABLE' ? p.problems.map(problemText) : [chanceProblemText(p)]))
    return say(sentences.map((sentence) => `${file}: ${sentence}`), unread ? 2 : 1)
  }
  const report = chanceReport(outcome.tally)
  if (report === null) return say([`${file}: no hanger was drawn.`], 1)
  return { out: json ? `${JSON.stringify(chanceJson(file, parsed.document, report))}\n` : chanceTable(file, parsed.document, report), err: '', exit: 0 }
}
