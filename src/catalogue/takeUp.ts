import { range, value, type Range, type Value } from './basis'

const practice = (low: number, likely: number, high: number, source: string): Range => range(low, likely, high, '1', 'common practice', source)

/** Filler cord in a knotted leg over the leg's length. */
export const FILLER_TAKE_UP: Range = practice(1, 1.05, 1.1, 'a filler cord runs straight on and is only nipped; no source')

/** Working cord of a square-knot sinnet over its length: it goes over and under its fillers and back in a knot three to four thicknesses high. */
export const SINNET_TAKE_UP: Range = practice(3.5, 4, 5, 'working cords are cut four to five times as long as what they knot; no source')

/** Working cord of a half-knot spiral over its length. */
export const SPIRAL_TAKE_UP: Range = practice(4, 4.5, 5.5, 'half knots lie closer than square ones; no source')

/** Every strand of alternating square knots, or of a panel, over the length knotted: fillers and working cords change from row to row. */
export const ROWS_TAKE_UP: Range = practice(2, 2.5, 3.5, 'each strand works in every other row; the closer the rows, the more; no source')

/** How much more or less of the same cord the same hands take from piece to piece. */
export const OWN_TAKE_UP_DOUBT: Value = value(0.05, '1', 'common practice', 'a judgement: the same maker, cord and knots, pulled now more and now less')

/** Height of one square knot in thicknesses of its cord. */
export const SQUARE_KNOT_HEIGHT: Range = practice(3, 3.5, 4, 'two half knots, each a little less than two thicknesses high; no source')

/** Turns that each strand of a cord goes round the bar it is hung on by a lark's head. */
export const LARKS_HEAD_TURNS: Value = value(1, '1', 'common practice', 'each half passes behind and over the bar, and half the loop lies across both')

/** Cord for a knot at an end, such as a top cord's at its stick, m. */
export const TIED_END: Range = range(0.1, 0.15, 0.2, 'm', 'common practice', 'a hand’s width or two to tie with; no source')

/** Cut off a fringe to make it even, m. */
export const FRINGE_TRIM: Range = range(0.02, 0.03, 0.05, 'm', 'common practice', 'a few centimetres; no source')
