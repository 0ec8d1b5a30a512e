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
export const MAP_NOTES: Readonly<Record<MapCode, string>> = {
  cordByPot: 'Pots are round ones of usual shape and the hanger’s own material, in its mix, with a plant of their size. The cord is the same one, thicker or thinner; pull tests of it are left aside, for they say nothing of another.',
  lengthByPot: 'Pots are round ones of usual shape and the hanger’s own material, in its mix, with a plant of their size. The length is that of a leg or of the whole, as it was given.',
  strandsByWeight: 'The pot keeps its size; its weight is taken as if it had been weighed just watered. Filler cords that were counted keep their share.',
}

export const NO_MAP_TEXTS: Readonly<Record<NoMap, string>> = {
  unread: 'There is no map until the marked answers can be read.',
  noHanger: 'There is no hanger yet to draw a map of: say what it is made of first.',
  notConcerned: 'This hanger has no such measure: of a cord neither its diameter nor its weight decides where it is rated or not known, and a panel has no legs.',
}

/** A value of an axis in the reader’s units. */
export function axisValueText({ unit }: Pick<Axis, 'unit'>, value: number): string {
  return unit === 'm' ? lengthText(value) : unit === 'kg' ? massText(value) : numberText(value)
}

/**
 * How a hanger stands at one point of a map, in a sentence.
 * @example mapCellText({ utilisation: 0.62, verdict: 'holds', link: 'leg' }) // 'holds, at 62 %. Legs: what decides.'
 */
export function mapCellText(cell: MapCell | null): string {
  if (cell === null) return 'cannot be had: these answers do not go together.'
  const use = cell.utilisation === null ? '' : `, at ${percentText(cell.utilisation)}`
  return `${cell.verdict}${use}.${cell.link === null ? '' : ` ${LINK_NAMES[cell.link]}: what decides.`}`
}

/** Parts of a point with their use, for the table behind the lines. */
export const linesCellText = ({ links }: LinesPoint, link: string): string => {
  const one = links?.find((each) => each.link === link)
  return one === undefined ? '–' : one.utilisation === null ? one.verdict : `${percentText(one.utilisation)}, ${one.verdict}`
}
