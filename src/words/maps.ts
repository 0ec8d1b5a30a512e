import type { Axis, AxisCode } from '../maps/axis'
import type { MapCell } from '../maps/cell'
import type { LinesPoint } from '../maps/inputLines'
import type { MapCode, NoMap } from '../maps/utilisationMap'
import { lengthText, massText, numberText, percentText } from './amounts'
import { LINK_NAMES } from './names'

export const MAP_NAMES: Readonly<Record<MapCode, string>> = {
  cordByPot: 'Cord and pot size',
  lengthByPot: 'Length and pot size',
  strandsByWeight: 'Strands and weight',
}

export const AXIS_NAMES: Readonly<Record<AxisCode, string>> = {
  cordDiameter: 'Diameter of the cord',
  rim: 'Width of the pot at the rim',
  length: 'Length of the hanger',
  strands: 'Strands in each leg',
  watered: 'Weight when watered',
}

/** What a map takes besides its two measures. */
const POTS = 'Pots are round ones of usual shape with a plant of their size, of the hanger’s own material and in its mix; where neither is said, as the check assumes them.'
const AS_IT_IS = 'A recorded test hang is left aside, for it is no test of another hanger. Only the mark of the hanger as it is stands for its own check, with its own pot and tests; it may differ from the map about it.'
export const MAP_NOTES: Readonly<Record<MapCode, string>> = {
  cordByPot: `${POTS} The cord is the same one, thicker or thinner; pull tests of it are left aside too. ${AS_IT_IS}`,
  lengthByPot: `${POTS} The length is that of a leg or of the whole, as it was given. ${AS_IT_IS}`,
  strandsByWeight: `The pot keeps its size; its weight is taken as if it had been weighed just watered. Filler cords that were counted keep their share. ${AS_IT_IS}`,
}

/** What lines along one answer take besides it. */
export const LINES_NOTE = 'One answer changes and all others stay as they are; only the weight of a cord goes with its diameter, and counted filler cords with the strands. Where the answer is one of the hanger itself, a recorded test hang is left aside at every point, of a cord its pull tests too, and of hook, bracket and fixing the pull in place: they say nothing of another.'

export const NO_MAP_TEXTS: Readonly<Record<NoMap, string>> = {
  unread: 'There is no map until the marked answers can be read.',
  noHanger: 'There is no hanger yet to draw a map of: say what it is made of first.',
  notConcerned: 'This map does not concern this hanger. A cord is mapped where its diameter is known and no rating stands in for it; lengths and strands are mapped of legs, which a panel has not.',
}

/** A value of an axis in the reader’s units. */
export function axisValueText({ unit }: Pick<Axis, 'unit'>, value: number): string {
  return unit === 'm' ? lengthText(value) : unit === 'kg' ? massText(value) : numberText(value)
}

/** Beyond this many times what a part may carry, how many no longer matters. */
const CAP = 10

/** How far a part is used. */
const usedText = (utilisation: number): string => (utilisation > CAP ? `to more than ${CAP} times what it may` : `to ${percentText(utilisation)}`)

/**
 * How a hanger stands at one point of a map, in a sentence.
 * @example mapCellText({ utilisation: 0.62, verdict: 'holds', link: 'leg' }) // 'holds. What decides: Legs, used to 62 %.'
 */
export function mapCellText(cell: MapCell | null): string {
  if (cell === null) return 'cannot be had: these answers do not go together.'
  if (cell.link === null) return `${cell.verdict}.`
  return `${cell.verdict}. What decides: ${LINK_NAMES[cell.link]}, ${cell.utilisation === null ? 'of which it is not known how far it is used' : `used ${usedText(cell.utilisation)}`}.`
}

/** Parts of a point with their use, for the table behind the lines. */
export const linesCellText = ({ links }: LinesPoint, link: string): string => {
  const one = links?.find((each) => each.link === link)
  return one === undefined ? '–' : one.utilisation === null ? one.verdict : `${one.utilisation > CAP ? `over ${CAP} times` : percentText(one.utilisation)}, ${one.verdict}`
}
