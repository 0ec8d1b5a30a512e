import { POUND, STANDARD_GRAVITY } from '../quantity/si'
import { range, value, type Range, type Value } from './basis'

const LBF = POUND * STANDARD_GRAVITY
/** Printed in pound-feet. */
const POUND_FOOT = LBF * 0.3048

/** Fixings in plasterboard as board makers list them, by the bolt or screw. */
export const BOARD_FIXING_KINDS = ['toggleEighth', 'toggleThreeSixteenths', 'toggleQuarter', 'sheetMetalScrew8'] as const
export type BoardFixingKind = (typeof BOARD_FIXING_KINDS)[number]
export const BOARD_BASES = ['board13', 'board13OnSteelStud'] as const
export type BoardBase = (typeof BOARD_BASES)[number]

/** What one fixing may carry, N. */
export interface BoardFixing {
  /** Straight out of the wall. */
  readonly pullOut: Value
  /** Down along the wall. */
  readonly shear: Value
}

const HANDBOOK = 'USG, table of fixings in gypsum board, as remembered; the makers disagree, so the packet goes before'
const pounds = (x: number, source: string): Value => value(x * LBF, 'N', 'from memory', source)
const first = (pullOut: number, shear: number): BoardFixing => ({ pullOut: pounds(pullOut, HANDBOOK), shear: pounds(shear, HANDBOOK) })

/** One board maker's allowable loads in 12.7 mm (1/2 in) board alone, and with a thin steel stud behind it. */
export const BOARD_FIXINGS: Readonly<Record<BoardBase, Readonly<Partial<Record<BoardFixingKind, BoardFixing>>>>> = {
  board13: { toggleEighth: first(20, 40), toggleThreeSixteenths: first(30, 50), toggleQuarter: first(40, 60) },
  board13OnSteelStud: { toggleEighth: first(70, 100), toggleThreeSixteenths: first(80, 125), toggleQuarter: first(155, 175), sheetMetalScrew8: first(50, 80) },
}

const SECOND = 'National Gypsum, table of fixings in gypsum board, as remembered; larger than the other maker’s, so not merged with it'
type Toggle = Exclude<BoardFixingKind, 'sheetMetalScrew8'>
/** A second maker's figures for toggles, for comparison, N. */
export const SECOND_MAKER_TOGGLES: Readonly<Record<'board13' | 'board16', Readonly<Record<Toggle, Value>>>> = {
  board13: { toggleEighth: pounds(30, SECOND), toggleThreeSixteenths: pounds(60, SECOND), toggleQuarter: pounds(80, SECOND) },
  board16: { toggleEighth: pounds(90, SECOND), toggleThreeSixteenths: pounds(120, SECOND), toggleQuarter: pounds(120, SECOND) },
}

const GUIDE = 'National Gypsum, Construction Guide, 12th edition, p. 98'
const moment = (poundFeet: number, what: string): Value => value(poundFeet * POUND_FOOT, 'N m', 'published', `${GUIDE}: ${what}`)
/** Moment that one shelf bracket may bring on a board wall, N m. */
export const BRACKET_MOMENT = {
  blocksBehind13: moment(40, 'wood blocks behind 1/2 in board'),
  blocksBehind16: moment(70, 'wood blocks behind 5/8 in board'),
  steelStudsClose: moment(50, 'No. 10 sheet-metal screws into steel studs, brackets 2 ft apart'),
  steelStudsWide: moment(25, 'No. 10 sheet-metal screws into steel studs, brackets 4 ft apart'),
} as const satisfies Readonly<Record<string, Value>>

const SHEET = 'a winged board fixing’s data sheet of 2018'
const kilograms = (low: number, likely: number, high: number, what: string): Range =>
  range(low * STANDARD_GRAVITY, likely * STANDARD_GRAVITY, high * STANDARD_GRAVITY, 'N', 'published', `${SHEET}, ${what}; over its sizes, likely: their middle`)
/** One winged fixing by the data sheets of two markets, N: how far vendors' ratings of one thing lie apart. */
export const WINGED_FIXING: Readonly<Record<'unitedKingdom' | 'australia', Readonly<Record<'pullOut' | 'shear', Range>>>> = {
  unitedKingdom: { pullOut: kilograms(20, 20, 20, 'United Kingdom, pull-out, 9.5 to 15 mm board'), shear: kilograms(71, 83.5, 113, 'United Kingdom, shear: 71, 74, 93, 113 kg') },
  australia: { pullOut: kilograms(12, 17, 22, 'Australia, pull-out, board up to 13 mm, columns read from a jumbled copy'), shear: kilograms(30, 45, 60, 'Australia, shear, columns read from a jumbled copy') },
}

/** Least ratio of ultimate to allowable for a fixing in board. */
export const BOARD_SAFETY: Value = value(4, '1', 'published', 'Facts Facts, My Home Repair: a quarter of the ultimate at most')
