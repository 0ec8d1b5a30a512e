import type { PotTaken } from '../advice/hangersForPot'
import type { ChartCell, ChartRow } from '../advice/sizeChart'
import type { PotMaterialKind } from '../catalogue/potMaterials'
import { formatInches } from '../quantity/formatInches'
import { metres } from '../quantity/si'
import { massLimitText, massText } from './amounts'
import { POT_NAMES, sheetName } from './sheetCustomer'
import { LINK_NAMES } from './names'
import { withMark } from './writing'

export const CHART_TITLE = 'Which hanger takes which pot'
export const CHART_COLUMN = 'Width at the rim'
export const CHART_LEGEND = '+ yes: it holds. ± just: it just holds. – no: it fails, does not fit, or is heavier than what the hanger is sold for. ?: not enough is known to say. Ceiling or wall are left aside: each place needs its own fixing.'
export const CHART_NOTE = 'Round pots of usual shape, each reckoned in the hanger’s own mix with a plant of its size, just watered and standing in water. Weigh what you hang: the heaviest weight counts.'
export const LISTING_TITLE = 'For tags and listings'
export const NO_ROWS_TEXT = 'No hanger could be read.'

export const chartTableTitle = (material: PotMaterialKind): string => `${POT_NAMES[material]} pots`

/**
 * A width in cm and in inches over a column: each in one piece, so that they stand one under the other.
 * @example chartRimText(0.2) // '20\u00a0cm 7\u00a07/8\u00a0in'
 */
export const chartRimText = (rim: number): string => [`${withMark(String(Math.round(rim * 1000) / 10))} cm`, formatInches(metres(rim), 8)].map((text) => text.replaceAll(' ', '\u00a0')).join(' ')

/**
 * How a hanger takes a pot, in a word with its mark.
 * @example chartCellText({ verdict: 'just holds', overLimit: false }) // '± just'
 */
export function chartCellText({ verdict, overLimit }: Pick<ChartCell, 'verdict' | 'overLimit'>): string {
  if (overLimit || verdict === 'fails') return '– no'
  return verdict === 'holds' ? '+ yes' : verdict === 'just holds' ? '± just' : '?'
}

/** A hanger by its name, else its file, with its tag code. */
export function chartHangerName({ file, document }: Pick<ChartRow, 'file' | 'document'>): string {
  const code = document.typed['make.code']?.trim() ?? ''
  return `${document.name.trim() === '' ? file : sheetName(document.name)}${code === '' ? '' : ` (${code})`}`
}

/** Letters that a name may have beside a column for each size; in the list under them it stands in full. */
const SHORT = 48
/**
 * The same, short enough for a table with many columns.
 * @example shortened('Fern (A7)') // 'Fern (A7)'
 */
export function shortened(name: string): string {
  const letters = [...name]
  const [, code = ''] = / (\([^()]*\))$/.exec(name) ?? []
  return letters.length <= SHORT ? name : `${letters.slice(0, Math.max(0, SHORT - [...code].length - 2)).join('').trimEnd()}… ${code}`.trimEnd()
}

/** Over the columns of what may be written on tags and in listings. */
export const LISTING_COLUMNS = ['Hanger', 'Heaviest pot when watered'] as const
/** The heaviest watered pot of a hanger, kg, or that none may be told. */
export const listingWeightText = (heaviest: number | null): string => (heaviest === null ? 'not to be told yet: see its check' : massLimitText(heaviest))

export const POT_TAKEN_TITLE = 'Which hanger takes this pot'
export const POT_TAKEN_COLUMNS = ['Hanger', 'This pot', 'Why', 'Heaviest pot when watered'] as const
export const POT_TAKEN_NOTE = 'Each hanger was checked anew with this pot in it, in the pot’s own mix and with its own plant. Ceiling or wall are left aside: each place needs its own fixing. Weigh the pot watered before you hang it: the heaviest weight counts.'
/** The document asked about tells no pot. */
export const NO_POT_TO_ASK_TEXT = 'It tells no pot to ask about: its width at the rim, or what it weighs.'
/** Of more hangers than stand in the table. */
export const potTakenRestText = (rest: number): string => `${rest} more ${rest === 1 ? 'was' : 'were'} tried and would stand below these.`

/** How a hanger takes the pot asked about, in a sentence. */
export function potTakenText({ verdict, overLimit, watered, heaviest, isTold, decides, takes }: Pick<PotTaken, 'verdict' | 'overLimit' | 'watered' | 'heaviest' | 'isTold' | 'decides' | 'takes'>): string {
  const weight = watered === null ? '' : ` The pot weighs up to ${massText(watered)} just watered.`
  if (takes) return `${verdict === 'holds' ? 'It takes this pot.' : 'It just takes this pot.'}${weight}`
  if (overLimit && heaviest !== null) return `${isTold ? `Too heavy: this hanger is for pots up to ${massLimitText(heaviest)} watered.` : 'Too heavy for this hanger.'}${weight}`
  const part = decides === null ? '' : ` ${LINK_NAMES[decides]} ${verdict === 'fails' ? 'would fail' : 'cannot be said to hold'}.`
  return `${verdict === 'fails' ? 'It does not take this pot.' : 'Not enough is known to say.'}${part}${weight}`
}
