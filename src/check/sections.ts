import type { Value } from '../catalogue/basis'
import { MASS_BY_DIAMETER, THICKEST_DIAMETER } from '../catalogue/cords'
import { BEND, FILLER_IN_KNOTS, FILLER_SHARE, LARKS_HEAD, PLAIN_STRAND, SHARP_EDGE, SPLICED_STRAND, TIED_STRAND, TURN_INTO_WRAPS } from '../catalogue/knots'
import { hangsFrom, hangsFromKnot } from '../hanger/arrangement'
import type { Answers } from '../hanger/fields'
import type { CordStrength } from './cordStrength'
import { cordWeighing } from './cordWeighing'
import type { Part } from './linkResult'

/** One section of a leg: how many strands carry there and how well each does. */
export interface Section {
  readonly part: Part
  readonly strands: number
  readonly efficiency: Value
  /** strands x efficiency */
  readonly effective: number
}

const section = (part: Part, strands: number, efficiency: Value): Section => ({ part, strands, efficiency, effective: strands * efficiency.value })

type Curve = Pick<typeof BEND, 'points' | 'basis' | 'source'>

/** The efficiency at a ratio of bar over cord diameter: linear between points, in proportion before the first, constant beyond the last. */
function efficiencyAt({ points, basis, source }: Curve, ratio: number): Value {
  const first = points[0] as readonly [number, number]
  const last = points.at(-1) as readonly [number, number]
  let efficiency = ratio < first[0] ? (first[1] * ratio) / first[0] : last[1]
  points.slice(1).forEach(([to, high], i) => {
    const [from, low] = points[i] as readonly [number, number]
    if (ratio >= from && ratio < to) efficiency = low + ((high - low) * (ratio - from)) / (to - from)
  })
  return { value: efficiency, unit: '1', basis, source }
}

/**
 * Efficiency of a cord bent over a bar, by bar over cord diameter.
 * @example bendEfficiency(1.5).value // 0.625
 */
export const bendEfficiency = (ratio: number): Value => efficiencyAt(BEND, ratio)

/**
 * Efficiency of each strand in a lark's head on a bar, by bar over cord diameter.
 * @example larksHeadEfficiency(8.5).value // 0.625
 */
export const larksHeadEfficiency = (ratio: number): Value => efficiencyAt(LARKS_HEAD, ratio)

const RUN_PARTS = { plain: 'plainStrands', sinnet: 'fillers', alternating: 'alternatingKnots', spiral: 'spiralKnots' } as const satisfies Readonly<Record<Answers['make.build'], Part>>

/**
 * The sections of a leg above the pot's base whose strength is known; its effective strands are the least
 * of them (factors that never meet in one section are never multiplied). `parted` strands are taken as
 * gone in each. Where the strength is that of a strand pulled as tied, only unequal sharing is left, and
 * the pot's edge, over which no such strand was pulled.
 */
export function legSections(answers: Answers, parted: number, { tied, size }: Pick<CordStrength, 'tied' | 'size'>): readonly Section[] {
  const left = (carrying: number): number => Math.max(0, carrying - parted)
  const all = left(answers['make.strands'])
  const carrying = left(carryingStrands(answers))
  const knotted = (part: Part, strands: number, efficiency: Value): Section => section(part, strands, tied ? PLAIN_STRAND : efficiency)
  // The strength of a thinner rope goes with how that one bends: a thicker one of its kind is no weaker over any bar.
  const cord = size ?? thickestCord(answers)
  const top = hangsFromKnot(answers) ? knotted('turn', all, TURN_INTO_WRAPS) : hangsFrom(answers) === 'bunched'
    ? knotted('bend', all, bendEfficiency(topBar(answers) / cord))
    : knotted('larksHead', all, larksHeadEfficiency(answers[hangsFrom(answers) === 'ring' ? 'ring.wire' : 'stick.diameter'] / cord))
  const run = knotted(RUN_PARTS[answers['make.build']], carrying, answers['make.build'] === 'plain' ? PLAIN_STRAND : FILLER_IN_KNOTS)
  const sections = [top, run]
  if (answers['make.joined'] === 'yes') sections.push(knotted('tiedStrands', carrying, TIED_STRAND))
  if (answers['make.joined'] === 'splice') sections.push(knotted('splicedStrands', carrying, SPLICED_STRAND))
  if (answers['pot.edge'] === 'sharp') sections.push(section('potEdge', all, bendEfficiency(SHARP_EDGE.value / cord)))
  return sections
}

/** Whether a carrying strand is joined in a way of which nothing is known, and that no pull as tied has shown. */
export const joinUnknown = (answers: Pick<Answers, 'make.joined'>, tied: boolean): boolean => answers['make.joined'] === 'glued' && !tied

/**
 * Strands that carry in a leg's run: all of a plain one; of a knotted one the filler cords as told, or
 * half of the strands, whole ones only.
 * @example carryingStrands({ 'make.build': 'sinnet', 'make.strands': 5, 'make.fillers': null }) // 2
 */
export function carryingStrands(answers: Pick<Answers, 'make.build' | 'make.strands' | 'make.fillers'>): number {
  const strands = answers['make.strands']
  if (answers['make.build'] === 'plain') return strands
  return Math.min(strands, answers['make.fillers'] ?? Math.max(1, Math.floor(strands * FILLER_SHARE.value)))
}

/** The bar that bunched legs or a top cord bend over: the wire of whatever hangs from the hook, or of the hook, the thinner where both are known. */
export function topBar(answers: Answers): number {
  const between = answers['connector.kind'] === 'none' ? null : answers['connector.wire']
  return Math.min(answers['hook.wire'], between ?? answers['hook.wire'])
}

/** Diameter of the cord, measured or the thickest its grams per metre allow: the thicker, the worse it bends. */
export function thickestCord(answers: Answers): number {
  const weighed = cordWeighing(answers)
  return answers['cord.diameter'] ?? (weighed === null ? THICKEST_DIAMETER.value : Math.sqrt(weighed.perMetre.high / MASS_BY_DIAMETER.low))
}

/** The turn from the base into the wraps of the gathering knot: all strands of the leg that are not gone pass it. */
export const wrapSection = (answers: Answers, gone: number, tied: boolean): Section => section('turn', Math.max(0, answers['make.strands'] - gone), tied ? PLAIN_STRAND : TURN_INTO_WRAPS)

/** The section with the fewest effective strands; the first of equals. */
export const weakestSection = (sections: readonly Section[]): Section =>
  sections.reduce((weakest, s) => (s.effective < weakest.effective ? s : weakest))
