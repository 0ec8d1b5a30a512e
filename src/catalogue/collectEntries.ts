import type { Basis } from './basis'

/** What an entry says: one value, a range, or a curve as [x, y] points (an x of Infinity: without end). */
export type Figure =
  | { readonly kind: 'single'; readonly value: number }
  | { readonly kind: 'range'; readonly low: number; readonly likely: number; readonly high: number }
  | { readonly kind: 'curve'; readonly points: readonly (readonly [number, number])[] }

/** A value of the catalogue as it is listed: where it stands, what it is, how it is known. */
export interface CatalogueEntry<Subject extends string = string> {
  /** The path joined by dots; unique. */
  readonly id: string
  /** The module it stands in. */
  readonly subject: Subject
  /** From the module's export down to the value; a row of a table is named by its own id. */
  readonly path: readonly string[]
  readonly figure: Figure
  /** SI; '1' is a plain ratio. Of a curve, the unit of y. */
  readonly unit: string
  readonly basis: Basis
  readonly source: string
}

type Fields = Readonly<Record<string, unknown>>
type Step = readonly [key: string, value: unknown]

const isObject = (x: unknown): x is Fields => typeof x === 'object' && x !== null
const isCertified = (x: Fields): x is Fields & { readonly basis: Basis; readonly source: string } => typeof x['basis'] === 'string' && typeof x['source'] === 'string'
const isPoints = (x: unknown): x is readonly (readonly [number, number])[] => Array.isArray(x) && x.every((p) => Array.isArray(p) && p.length === 2 && p.every((n) => typeof n === 'number'))

/** The figure of a value or range, null of anything else that has a basis. */
function figureOf({ value, low, likely, high }: Fields): Figure | null {
  if (typeof value === 'number') return { kind: 'single', value }
  return typeof low === 'number' && typeof likely === 'number' && typeof high === 'number' ? { kind: 'range', low, likely, high } : null
}

/** Parts of a formula or curve whose numbers share one basis, each with what it says. */
function partsOf(certified: Fields): readonly (readonly [key: string, figure: Figure])[] {
  return Object.entries(certified).flatMap(([key, x]): (readonly [string, Figure])[] => {
    if (typeof x === 'number') return [[key, { kind: 'single', value: x }]]
    return isPoints(x) ? [[key, { kind: 'curve', points: x }]] : []
  })
}

const stepsOf = (x: Fields): readonly Step[] =>
  Array.isArray(x) ? x.map((row: unknown, i): Step => [isObject(row) && typeof row['id'] === 'string' ? row['id'] : String(i), row]) : Object.entries(x)

/**
 * Every value, range and curve with a basis that is found in a module's exports, at any depth. What
 * has no basis (lists of codes, conversions, the diameter a row is for) is passed over.
 */
export function collectEntries<Subject extends string>(subject: Subject, exports: Fields): readonly CatalogueEntry<Subject>[] {
  const walk = (path: readonly string[], x: unknown): readonly CatalogueEntry<Subject>[] => {
    if (!isObject(x)) return []
    if (!isCertified(x)) return stepsOf(x).flatMap(([key, inner]) => walk([...path, key], inner))
    const { basis, source } = x
    const unit = typeof x['unit'] === 'string' ? x['unit'] : '1'
    const entry = (at: readonly string[], figure: Figure): CatalogueEntry<Subject> => ({ id: [subject, ...at].join('.'), subject, path: at, figure, unit, basis, source })
    const figure = figureOf(x)
    return figure === null ? partsOf(x).map(([key, part]) => entry([...path, key], part)) : [entry(path, figure)]
  }
  // Sorted, because the order of a module's exports is the bundler's affair.
  return Object.keys(exports).sort().flatMap((name) => walk([name], exports[name]))
}
