import { CHART_MATERIALS, parseDocument, potTaken, problemText, resolveDocument, SHEET_KINDS, sheetFacts, sizeChart, USUAL_RIMS, writeBy, type HangerDocument, type InputProblem, type SheetFacts } from '#core'
import type { ChartQuestion, PotOutcome, PotQuestion, RowOutcome, SheetOutcome, SheetQuestion, SheetReply } from './messages'

type FactsOutcome = { readonly ok: true, readonly facts: SheetFacts } | { readonly ok: false, readonly problem: string }

/** Of a file full of nonsense the first few say enough. */
const MOST_PROBLEMS = 2
const unread = (problems: readonly InputProblem[]): { readonly ok: false, readonly problem: string } => ({ ok: false, problem: problems.slice(0, MOST_PROBLEMS).map(problemText).join(' ') })

function factsOf(document: HangerDocument): FactsOutcome {
  const outcome = sheetFacts(document)
  return outcome.ok ? outcome : unread(outcome.problems)
}

function factsOfText(text: string): FactsOutcome {
  const parsed = parseDocument(text)
  return parsed.ok ? factsOf(parsed.document) : unread(parsed.problems)
}

function rowOf({ text, file }: ChartQuestion): RowOutcome {
  const parsed = parseDocument(text)
  if (!parsed.ok) return unread(parsed.problems)
  const { document } = parsed
  const job = sizeChart([{ file, document }], { rims: USUAL_RIMS, materials: CHART_MATERIALS })
  let step = job.next()
  while (step.done !== true) step = job.next()
  const [row] = step.value.rows
  return row === undefined ? { ok: false, problem: '' } : { ok: true, row }
}

function potOf({ text, file, pot }: PotQuestion): PotOutcome {
  const parsed = parseDocument(text)
  if (!parsed.ok) return unread(parsed.problems)
  const resolved = resolveDocument(parsed.document)
  return resolved.ok ? { ok: true, taken: potTaken({ file, document: parsed.document }, pot) } : unread(resolved.problems)
}

/** The worker's side of the talk. Whoever asks sends one question after the other, so to stop is to ask no more. */
export function serveSheets(reply: (message: SheetReply) => void): (question: SheetQuestion | ChartQuestion | PotQuestion) => void {
  let known: { readonly edition: number, readonly facts: FactsOutcome } | null = null

  function factsFor(source: SheetQuestion['source']): FactsOutcome {
    if ('text' in source) return factsOfText(source.text)
    if (known?.edition !== source.edition) known = { edition: source.edition, facts: factsOf(source.document) }
    return known.facts
  }

  function outcomeOf({ source, sheet, options }: SheetQuestion): SheetOutcome {
    const found = factsFor(source)
    return found.ok ? { ok: true, sheet: SHEET_KINDS[sheet](found.facts, options), isOnlyDraft: found.facts.limit === null } : found
  }

  return (question) => {
    const { revision, habits } = question
    try {
      writeBy(habits)
      if (question.kind === 'chartRow') reply({ kind: 'chartRow', revision, outcome: rowOf(question) })
      else if (question.kind === 'potTaken') reply({ kind: 'potTaken', revision, outcome: potOf(question) })
      else reply({ kind: 'sheet', revision, outcome: outcomeOf(question) })
    } catch (error) {
      reply({ kind: 'sheetFailed', revision, detail: error instanceof Error ? error.message : String(error) })
    }
  }
}
