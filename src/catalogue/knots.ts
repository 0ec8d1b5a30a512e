import { range, value, type Range, type Value } from './basis'
import { KNOT_EFFICIENCIES } from './knotEfficiencies'

const practice = (x: number, source: string): Value => value(x, '1', 'common practice', source)

/** Cord in a knotted hanger per length of plain strand: fillers once, working cords about four times. */
export const KNOT_TAKE_UP: Value = practice(2.5, 'half the cords knot round the other half and take up about four times their length')

/** Plain strand: strands never share a load exactly. */
export const PLAIN_STRAND: Value = practice(0.9, 'unequal sharing between the strands of one leg')

/** Share of strands that run straight through a sinnet or alternating square knots (the filler cords). */
export const FILLER_SHARE: Value = practice(0.5, 'half the strands of a square-knot sinnet are filler cords')

/** Fewest strands that can be knotted. */
export const LEAST_KNOTTED: Value = practice(3, 'a square knot or half knot is tied by two working cords round at least one filler cord')

/** Efficiency of a filler cord inside its knots: it runs straight through and is not itself knotted. */
export const FILLER_IN_KNOTS: Value = practice(0.7, 'filler cord nipped by square knots; no published test of knotted cotton cord was found')

/**
 * Lark's head, per strand, by bar over cord diameter, as [ratio, efficiency] points: from the worst that
 * was published on a bar that is no bar at all, up to a thick one; above the last point constant.
 */
export const LARKS_HEAD: { readonly points: readonly (readonly [number, number])[] } & Omit<Value, 'value' | 'unit'> = {
  points: [[0, 0.4], [1, 0.5], [2, 0.5], [15, 0.75]],
  basis: 'computed',
  source: 'girth hitch 0.40 sling to sling (climbing journal), 0.77 on a tight bar and no loss on a thick one in slippery sling cord (rope tests); 0.5 to 0.75 taken; no test of natural cord was found',
}

/** Turn from the pot's base into the wraps of the gathering knot. */
export const TURN_INTO_WRAPS: Value = value(0.5, '1', 'from memory', 'fibre rope over a pin of its own diameter keeps 0.5 to 0.7')

/** A carrying strand that is itself tied: overhand, join, reef. */
export const TIED_STRAND: Value = value(0.45, '1', 'published', 'overhand and square knot 0.43 to 0.47 (Plymouth Cordage 1946; Cordage Institute; Day 1970 as relayed by Minnesota Extension 1964)')

/** A top cord where it is tied to its stick by a clove hitch or lark's head. */
export const TIED_TO_STICK: Value = practice(0.5, 'lark’s head as on a thin bar; a clove hitch of thick natural rope keeps 0.75 (Day 1970), of thin cord nothing was found')

/** A carrying strand that is spliced. */
export const SPLICED_STRAND: Value = KNOT_EFFICIENCIES.shortSplice.handbook

/** A sharp pot edge bends the cord as a bar of this diameter would, m. */
export const SHARP_EDGE: Value = value(0.002, 'm', 'common practice', 'a judgement: cut metal, glass or raw clay, broken by hand')

/** Efficiency of cord bent over a bar by diameter ratio D/d, as [ratio, efficiency] points; below the first point proportional to the ratio, above the last constant. */
export const BEND: { readonly points: readonly (readonly [number, number])[] } & Omit<Value, 'value' | 'unit'> = {
  points: [[1, 0.5], [2, 0.75], [8, 0.95]],
  basis: 'from memory',
  source: 'fibre rope over D/d of 1, 2 and 8; wire rope keeps 50 % at 1 (wire rope maker)',
}

/** Tension left in a hand-pulled wrap of a new gathering knot, N. */
export const WRAP_TENSION: Value = value(30, 'N', 'common practice', 'pulled tight by hand')

/** What is left of the wraps' tension once the cord has relaxed. */
export const WRAP_RELAXATION: Value = value(0.5, '1', 'from memory', 'cords under constant length lose about half their tension; no test of wrapped knots was found')

/** Slip of the gathering knot in a drop that leaves the tails well inside the wraps, m. */
export const MOST_DROP_SLIP: Value = value(0.01, 'm', 'common practice', 'the tails below the wraps are many times longer')

/** Share of a gathered bundle's cross-section that its cords fill: the less, the wider it is and the longer its wrapping cord. */
export const BUNDLE_PACKING: Value = value(0.75, '1', 'from memory', 'round cords fill 0.907 where they touch in threes and about 0.82 poured together; 0.75 taken, for cord that is gathered by hand')

/** Thicknesses of cord that the loop of a wrapping cord adds to the bundle it is laid on. */
export const STRANDS_OF_FOLD: Value = practice(2, 'the wrapping cord is laid along the bundle there and back before it is wrapped')

/** Wraps that makers usually tie. */
export const USUAL_WRAPS: Range = range(5, 6, 8, '1', 'common practice', 'what makers tie, whatever the pot weighs; no source')
