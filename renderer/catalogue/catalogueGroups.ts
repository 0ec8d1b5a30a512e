import { catalogueFigure, type Basis, type CatalogueSubject, type NamedEntry } from '#core'

/** One value as it is written: what it is, its figure with its unit, how it is known. */
export interface CatalogueRow {
  readonly id: string
  readonly label: string
  readonly figure: string
  readonly basis: Basis
}

/** Values of one thing that follow each other and come from one source. */
export interface SourcedRows {
  readonly source: string
  readonly rows: readonly CatalogueRow[]
}

/** What several values are of ("yellow birch"); one that has a single value here needs no name over it. */
export interface CatalogueThing {
  readonly key: string
  readonly name: string | null
  readonly sourced: readonly SourcedRows[]
}

export interface CatalogueGroup {
  readonly subject: CatalogueSubject
  readonly name: string
  readonly count: number
  readonly things: readonly CatalogueThing[]
}

/** The list cut into those of each key, in the order in which the keys first come. */
function cutBy<Item, Key>(items: readonly Item[], keyOf: (item: Item) => Key): ReadonlyMap<Key, readonly Item[]> {
  const parts = new Map<Key, Item[]>()
  for (const item of items) {
    const part = parts.get(keyOf(item))
    if (part === undefined) parts.set(keyOf(item), [item])
    else part.push(item)
  }
  return parts
}

const SPLIT = ': '
const thingOf = ({ id, name }: NamedEntry): string => (name.includes(SPLIT) ? name.slice(0, name.indexOf(SPLIT)) : id)

function sourcedRows(entries: readonly NamedEntry[], labelOf: (entry: NamedEntry) => string): readonly SourcedRows[] {
  const sourced: { source: string, rows: CatalogueRow[] }[] = []
  for (const entry of entries) {
    const row: CatalogueRow = { id: entry.id, label: labelOf(entry), figure: catalogueFigure(entry), basis: entry.basis }
    const last = sourced.at(-1)
    if (last?.source === entry.source) last.rows.push(row)
    else sourced.push({ source: entry.source, rows: [row] })
  }
  return sourced
}

function thing(key: string, entries: readonly NamedEntry[]): CatalogueThing {
  return entries.length > 1
    ? { key, name: key, sourced: sourcedRows(entries, ({ name }) => name.slice(key.length + SPLIT.length)) }
    : { key, name: null, sourced: sourcedRows(entries, ({ name }) => name) }
}

/** Entries by subject, and within it by what they are of, each source once for the values it gives. */
export function catalogueGroups(entries: readonly NamedEntry[]): readonly CatalogueGroup[] {
  return [...cutBy(entries, ({ subject }) => subject)].map(([subject, ofSubject]) => ({
    subject,
    name: ofSubject[0]?.subjectName ?? subject,
    count: ofSubject.length,
    things: [...cutBy(ofSubject, thingOf)].map(([key, ofThing]) => thing(key, ofThing)),
  }))
}
