import { dayText, isWorse, linkName, massLimitText, massText, percentText } from '#core'
import type { FolderFile } from '../../electron/contract'
import { texts } from '../texts/texts'
import type { HangerCard } from './hangerCard'

/** Columns of the table of a folder's hangers. */
export const TABLE_COLUMNS = ['name', 'verdict', 'hanger', 'place', 'decides', 'use', 'watered', 'flooded', 'heaviest', 'cord', 'date'] as const
export type TableColumn = (typeof TABLE_COLUMNS)[number]

export interface Sorting {
  readonly column: TableColumn
  readonly descending: boolean
}

/** A file with what is known of it by now. */
export interface TableHanger {
  readonly file: FolderFile
  readonly card: HangerCard | null
  /** As the store tells it: null where none may be told, undefined until it was looked for. */
  readonly heaviest: number | null | undefined
}

const t = texts.hangers
export const nameOf = ({ file, card }: TableHanger): string => card?.name || file.name.replace(/\.strandwise$/i, '')

/** The text of a cell. */
export function cellText(hanger: TableHanger, column: TableColumn): string {
  const { card, heaviest } = hanger
  if (column === 'name') return nameOf(hanger)
  if (card === null) return t.notYet
  if (column === 'cord') return card.cord ?? t.none
  if (column === 'date') return card.date === null ? t.none : /^\d{4}-\d{2}-\d{2}$/.test(card.date) ? dayText(card.date) : card.date
  if (card.facts === null) return t.none
  const { facts } = card
  switch (column) {
    case 'verdict': case 'hanger': case 'place': return facts[column]
    case 'decides': return facts.governing === null ? t.none : linkName(facts.governing.link, facts.governing.tier)
    case 'use': return facts.governing === null || facts.governing.utilisation === null ? t.none : percentText(facts.governing.utilisation)
    case 'watered': case 'flooded': return massText(facts.potted[column])
    case 'heaviest': return heaviest === undefined ? t.notYet : heaviest === null ? t.none : massLimitText(heaviest)
  }
}

/** What a cell is sorted by; null where nothing is known, which comes last whichever way it is sorted. */
function keyOf(hanger: TableHanger, column: TableColumn): string | number | null {
  const facts = hanger.card?.facts ?? null
  switch (column) {
    case 'name': return nameOf(hanger)
    case 'cord': return hanger.card?.cord ?? null
    case 'date': return hanger.card?.date ?? null
    case 'verdict': case 'hanger': case 'place': return facts === null ? null : VERDICTS.filter((one) => isWorse(facts[column], one)).length
    case 'decides': return facts?.governing ? cellText(hanger, column) : null
    case 'use': return facts?.governing?.utilisation ?? null
    case 'watered': case 'flooded': return facts?.potted[column] ?? null
    case 'heaviest': return hanger.heaviest ?? null
  }
}
const VERDICTS = ['holds', 'just holds', 'not enough known', 'fails'] as const

/** The hangers by one column, those of which it is not known last; equal ones by name. */
export function sorted(hangers: readonly TableHanger[], { column, descending }: Sorting, language: string): readonly TableHanger[] {
  const order = new Intl.Collator(language, { numeric: true, sensitivity: 'base' })
  const keyed = hangers.map((hanger) => ({ hanger, key: keyOf(hanger, column), name: nameOf(hanger) }))
  const compare = (a: string | number, b: string | number): number => (typeof a === 'number' && typeof b === 'number' ? a - b : order.compare(String(a), String(b)))
  return keyed.toSorted((a, b) => {
    if (a.key === null || b.key === null) return a.key === b.key ? order.compare(a.name, b.name) : a.key === null ? 1 : -1
    return (descending ? -compare(a.key, b.key) : compare(a.key, b.key)) || order.compare(a.name, b.name)
  }).map(({ hanger }) => hanger)
}
