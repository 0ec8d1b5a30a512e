import type { Value } from '../catalogue/basis'
import { MASS_BY_DIAMETER, THICKEST_DIAMETER } from '../catalogue/cords'
import { BEND, FILLER_IN_KNOTS, FILLER_SHARE, LARKS_HEAD, PLAIN_STRAND, TIED_STRAND, TURN_INTO_WRAPS } from '../catalogue/knots'
import type { Answers } from '../hanger/fields'
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

/**
 * Efficiency of a cord bent over a bar, by bar over cord diameter; linear between the catalogue's points.
 * @example bendEfficiency(1.5).value // 0.625
 */
export function bendEfficiency(ratio: number): Value {
  const { points, basis, source } = BEND
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
 * The sections of a leg above the pot; its effective strands are the least of them (factors that
 * never meet in one section are never multiplied). `parted` strands are taken as gone in each.
 */
export function legSections(answers: Answers, parted: number): readonly Section[] {
  const strands = answers['make.strands']
  const left = (carrying: number): number => Math.max(0, carrying - parted)
  const top = answers['make.top'] === 'ring'
    ? section('larksHead', left(strands), LARKS_HEAD)
    : section('bend', left(strands), bendEfficiency(answers['hook.wire'] / thickestCord(answers)))
  const carrying = carryingStrands(answers)
  const run = answers['make.build'] === 'plain' ? section('plainStrands', left(carrying), PLAIN_STRAND) : section('fillers', left(carrying), FILLER_IN_KNOTS)
  return answers['make.joined'] === 'yes' ? [top, run, section('tiedStrands', left(carrying), TIED_STRAND)] : [top, run]
}

/**
 * Strands that carry in a leg's run: all of a plain one; of a knotted one the filler cords, whole strands only.
 * @example carryingStrands({ 'make.build': 'sinnet', 'make.strands': 5 }) // 2
 */
export function carryingStrands(answers: Pick<Answers, 'make.build' | 'make.strands'>): number {
  const strands = answers['make.strands']
  return answers['make.build'] === 'plain' ? strands : Math.max(1, Math.floor(strands * FILLER_SHARE.value))
}

/** Diameter of the cord, measured or the thickest its grams per metre allow: the thicker, the worse it bends. */
function thickestCord(answers: Answers): number {
  const perMetre = answers['cord.linearDensity']
  return answers['cord.diameter'] ?? (perMetre === null ? THICKEST_DIAMETER.value : Math.sqrt(perMetre / MASS_BY_DIAMETER.low))
}

/** The turn from the base into the wraps of the gathering knot: all strands of the leg pass it. */
export const wrapSection = (answers: Answers): Section => section('turn', answers['make.strands'], TURN_INTO_WRAPS)

/** The section with the fewest effective strands; the first of equals. */
export const weakestSection = (sections: readonly Section[]): Section =>
  sections.reduce((weakest, s) => (s.effective < weakest.effective ? s : weakest))
