import { bundle, strandsSeen } from '../bundle'
import { uprightLine } from '../measure'
import { widestHalf } from '../potFrame'
import type { Scene } from '../scene'
import type { Dimension, Shape } from '../shape'
import { movedDimension } from '../shifted'
import type { LowerScene } from '../tiers'
import { potDimensions } from './pot'

/** One strand of a lower pot laid out straight to the right of it: its place, and heights of the knot above, the first knots and its own knot, m. */
interface LowerTape {
  readonly x: number
  readonly top: number
  readonly firstKnots: number
  readonly gathering: number
}

const keyOfPot = (tier: number): 'second' | 'third' => (tier === 2 ? 'second' : 'third')

function tapeOf(upper: Scene, lower: readonly LowerScene[], { tier, scene, by }: LowerScene): LowerTape {
  const { unit } = upper
  const { answers } = upper.check.solved.hanger
  const key = keyOfPot(tier)
  const widest = Math.max(widestHalf(upper), ...lower.map((l) => widestHalf(l.scene) + Math.abs(l.by[0])))
  const gathering = by[1] + scene.pose.hangingPoint[2] - scene.check.solved.geometry.strand
  // Cords of their own run side by side, so do their lengths.
  const column = answers['tiers.how'] === 'ownCords' ? tier - 2 : 0
  return { x: widest + (5.6 + 9 * column) * unit, top: gathering + answers[`${key}.strand`], firstKnots: gathering + answers[`${key}.first`], gathering }
}

/** The strands of lower pots laid straight, with a stroke across at each joint. */
export const lowerTapes = (upper: Scene, lower: readonly LowerScene[]): readonly Shape[] => lower.flatMap((under) => {
  const { x, top, firstKnots, gathering } = tapeOf(upper, lower, under)
  const { cord, unit, answers, pencil } = under.scene
  const across = (z: number): Shape => ({ link: null, ink: 'note', leg: null, pencil: false, kind: 'line', width: 0, behind: false, points: [[x - 0.5 * unit, z], [x + 0.5 * unit, z]] })
  const strand: Shape = { kind: 'cord', link: under.tier === 2 ? 'leg@2' : 'leg@3', ink: 'cord', leg: null, pencil: pencil('make.strands', 'make.totalLength', 'cord.diameter'), behind: false, ...bundle([[x, top], [x, gathering]], cord, strandsSeen(answers['make.strands'])) }
  return [strand, ...[top, firstKnots, gathering].map(across)]
})

/** Measures of the lower pots, as far as they are told apart from the first pot's, and those along their strands. */
export const lowerDimensions = (upper: Scene, lower: readonly LowerScene[]): readonly Dimension[] => lower.flatMap((under) => {
  const { tier, scene, by } = under
  const key = keyOfPot(tier)
  const { unit, check } = upper
  const own = { 'pot.rim': `${key}.rim`, 'pot.height': `${key}.height`, 'pot.base': `${key}.base` } as const
  const pots = potDimensions(scene).flatMap((d): readonly Dimension[] => {
    const { path } = d
    if (path !== 'pot.rim' && path !== 'pot.height' && path !== 'pot.base') return []
    return [{ ...movedDimension(d, by), path: own[path], pencil: scene.pencil(own[path]) }]
  })
  const { x, top, firstKnots, gathering } = tapeOf(upper, lower, under)
  const { pencil } = upper
  const all = check.solved.hanger.answers
  return [
    ...pots,
    uprightLine({ path: `${key}.first`, value: all[`${key}.first`], pencil, ends: [gathering, firstKnots], at: x + 1.6 * unit, feet: [x, x] }, null),
    uprightLine({ path: `${key}.strand`, value: all[`${key}.strand`], pencil, ends: [gathering, top], at: x + 5 * unit, feet: [x, x] }, null),
  ]
})
