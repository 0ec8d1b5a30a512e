import { isWorse } from '../check/verdict'
import { editField, type HangerDocument, type Patch } from '../hanger/document'
import { FIELD_PATHS } from '../hanger/fields'
import { checkPatched } from './evaluate'
import { groupOf, OF_ITS_POT, withoutPot } from './potsThatFit'
import { nameplateOf, promisedOf, takes, tryPot, type ChartCell, type ChartHanger } from './sizeChart'

/** How a hanger takes the pot asked about. */
export interface PotTaken extends Omit<ChartCell, 'material' | 'rim'> {
  readonly file: string
  /** Its name, maker and tag code. */
  readonly document: HangerDocument
  /** Heaviest watered pot of that hanger, kg; null where none may be promised. */
  readonly heaviest: number | null
  /** Whether that weight may be told, as a sheet for the customer asks. */
  readonly isTold: boolean
  readonly takes: boolean
}

/** What goes with a pot into another hanger: itself, its weight, what stands in and under it, its mix and its plant. */
const WITH_POT: readonly string[] = [...OF_ITS_POT, 'mix', 'layer', 'topping', 'plant', 'seat']

const TOLD_OF_POT = FIELD_PATHS.filter((path) => WITH_POT.includes(groupOf(path)))

/** The answers that tell a pot, as typed. */
export function potOf({ typed }: HangerDocument): Patch {
  return { ...Object.fromEntries(TOLD_OF_POT.flatMap((path) => (typed[path] === undefined ? [] : [[path, typed[path]]]))), 'pot.have': 'yes' }
}

/** Whether a document tells a pot that can be asked about: one that is there, by its rim or its weight. */
export const tellsPot = ({ typed }: HangerDocument): boolean =>
  typed['pot.have'] !== 'no' && (typed['pot.rim'] !== undefined || typed['weighed.mass'] !== undefined)

/** How one hanger takes the pot of a document: the whole check with that pot in it, the place left aside. */
export function potTaken({ file, document }: ChartHanger, pot: HangerDocument): PotTaken {
  const bare = withoutPot(document)
  const promised = promisedOf(document)
  // What is not said of the pot is assumed as anywhere, not taken from what else hung there.
  const empty = bare === null ? null : TOLD_OF_POT.reduce((left, path) => editField(left, path, null), bare)
  const found = tryPot(empty === null ? null : checkPatched(empty, potOf(pot)), promised.heaviest)
  return { ...found, file, document: nameplateOf(document), ...promised, takes: takes(found) }
}

/** Those that take the pot first, the best of them before the rest. */
export const bestFirst = <Tried extends PotTaken>(tried: readonly Tried[]): readonly Tried[] =>
  tried.toSorted((a, b) => Number(b.takes) - Number(a.takes) || (isWorse(a.verdict, b.verdict) ? 1 : isWorse(b.verdict, a.verdict) ? -1 : 0))
