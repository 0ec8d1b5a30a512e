import type { PotMaterialKind } from '../catalogue/potMaterials'
import { governingOf, type CheckResult } from '../check/checkHanger'
import type { LinkCode } from '../check/linkResult'
import { isWorse, worse, type Verdict } from '../check/verdict'
import { EMPTY_DOCUMENT, type HangerDocument } from '../hanger/document'
import type { FieldPath } from '../hanger/fields'
import { shownOf } from './answer'
import { checkPatched } from './evaluate'
import { ownVerdict } from './ownVerdict'
import { potPatch, withoutPot } from './potsThatFit'

/** A hanger among several, with whatever it is kept under. */
export interface ChartHanger {
  readonly file: string
  readonly document: HangerDocument
}

/** Sizes, m, and materials of the pots that are tried. */
export interface ChartOptions {
  readonly rims: readonly number[]
  readonly materials: readonly PotMaterialKind[]
}

/** How one hanger takes one pot. */
export interface ChartCell {
  readonly material: PotMaterialKind
  readonly rim: number
  /** Of the hanger itself, ring to seat; not enough known where the pot cannot be read with the rest. */
  readonly verdict: Verdict
  /** Potted plant just watered, at most, of several one under another the first, kg; null where it could not be read. */
  readonly watered: number | null
  /** It is heavier than the heaviest pot that may be promised of this hanger. */
  readonly overLimit: boolean
  /** The part that decides; null where nothing was checked. */
  readonly decides: LinkCode | null
}

/** A hanger with every pot tried; no heaviest where none may be promised. */
export interface ChartRow {
  readonly file: string
  /** Its name, maker and tag code: of thousands of hangers no more is kept. */
  readonly document: HangerDocument
  /** Heaviest watered pot, kg. */
  readonly heaviest: number | null
  /** Whether that weight may be told: with its own pot in it, if it has one, the hanger holds or just holds, as a sheet for the customer asks. */
  readonly isTold: boolean
  readonly cells: readonly ChartCell[]
}

export interface SizeChart extends ChartOptions {
  readonly rows: readonly ChartRow[]
}

/** A finished row, and how many pots were tried of all. */
export interface ChartProgress {
  readonly done: number
  readonly of: number
  readonly row: ChartRow | null
}

/** Materials that pots are usually of: clay, plastic and glazed ceramic. */
export const CHART_MATERIALS: readonly PotMaterialKind[] = ['terracotta', 'plastic', 'stoneware']

/** Whether a hanger may be said to take a pot. */
export const takes = ({ verdict, overLimit }: Pick<ChartCell, 'verdict' | 'overLimit'>): boolean => (verdict === 'holds' || verdict === 'just holds') && !overLimit

const NAMEPLATE: readonly FieldPath[] = ['make.maker', 'make.code']

/** A hanger's name, its maker and its tag code, without the rest of it. */
export const nameplateOf = ({ name, typed }: HangerDocument): HangerDocument =>
  ({ ...EMPTY_DOCUMENT, name, typed: Object.fromEntries(NAMEPLATE.flatMap((path) => (typed[path] === undefined ? [] : [[path, typed[path]]]))) })

/** The heaviest watered pot of a hanger, kg, and whether a sheet for the customer would tell it. */
export function promisedOf(document: HangerDocument): Pick<ChartRow, 'heaviest' | 'isTold'> {
  const shown = shownOf(document)
  const heaviest = shown.ok ? shown.shown.heaviest : null
  return { heaviest, isTold: heaviest !== null && shown.ok && !isWorse(ownVerdict(shown.shown.check), 'just holds') }
}

/** How a hanger without its own pot takes one, by the whole check with that pot in it; what may be promised of the hanger is never exceeded. */
export function tryPot(check: CheckResult | null, heaviest: number | null): Omit<ChartCell, 'material' | 'rim'> {
  if (check === null) return { verdict: 'not enough known', watered: null, overLimit: false, decides: null }
  const decides = governingOf(check.links.filter(({ side }) => side === 'hanger'))
  const verdict = decides?.verdict ?? 'not enough known'
  const watered = check.solved.potted.watered.mass.high
  return {
    verdict: heaviest === null ? worse(verdict, 'not enough known') : verdict,
    watered,
    overLimit: heaviest !== null && watered > heaviest,
    decides: decides?.link ?? null,
  }
}

/**
 * Hangers against usual pots, each cell by the real check of that hanger with that pot in it, in its own mix and with a
 * plant of the pot's size; the place is left aside. A generator, so that a worker can show each row as it comes, and stop.
 */
export function* sizeChart(hangers: readonly ChartHanger[], { rims, materials }: ChartOptions): Generator<ChartProgress, SizeChart> {
  const of = hangers.length * rims.length * materials.length
  const rows: ChartRow[] = []
  let done = 0
  for (const { file, document } of hangers) {
    const bare = withoutPot(document)
    const { heaviest, isTold } = promisedOf(document)
    const cells: ChartCell[] = []
    for (const material of materials) {
      for (const rim of rims) {
        cells.push({ material, rim, ...tryPot(bare === null ? null : checkPatched(bare, potPatch(rim, material)), heaviest) })
        done += 1
      }
      if (cells.length < rims.length * materials.length) yield { done, of, row: null }
    }
    const row: ChartRow = { file, document: nameplateOf(document), heaviest, isTold, cells }
    rows.push(row)
    yield { done, of, row }
  }
  return { rims, materials, rows }
}
