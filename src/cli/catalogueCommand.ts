import { catalogueEntries } from '../catalogue/entries'
import { catalogueFigure } from '../words/catalogueFigure'
import { nameEntry, type NamedEntry } from '../words/catalogueNames'
import { searchCatalogue } from '../words/searchCatalogue'
import { columns } from './columns'
import type { Output } from './output'

/** One entry as JSON: SI, unrounded, every key always there; an x of null in a curve has no end. */
function entryJson({ id, subject, name, figure, unit, basis, source }: NamedEntry): Readonly<Record<string, unknown>> {
  const none = { value: null, low: null, likely: null, high: null, points: null }
  const { kind, ...numbers } = figure
  return { id, subject, name, kind, ...none, ...numbers, unit, basis, source }
}

/** `catalogue [WORD] [--json]`: exit 0, or 1 if nothing is found, 2 for an option it does not know. */
export function catalogueCommand(args: readonly string[]): Output {
  const words = args.filter((a) => a !== '--json')
  const odd = words.find((a) => a.startsWith('-'))
  if (odd !== undefined) return { out: '', err: `catalogue does not know the option ${odd}; it knows --json.\n`, exit: 2 }
  const word = words.join(' ')
  const found = searchCatalogue(catalogueEntries().map(nameEntry), word)
  if (found.length === 0) return { out: '', err: `The catalogue has nothing under “${word}”.\n`, exit: 1 }
  if (args.includes('--json')) return { out: found.map((e) => `${JSON.stringify(entryJson(e))}\n`).join(''), err: '', exit: 0 }
  const rows = found.map((e) => [e.subjectName, e.name, catalogueFigure(e), e.basis, e.source])
  return { out: `${columns([['subject', 'name', 'value', 'basis', 'source'], ...rows])}\n`, err: '', exit: 0 }
}
