import { value, type Value } from './basis'

/** Angle a bumped pot swings from, rad. */
export const BUMP_ANGLE: Value = value(Math.PI / 6, 'rad', 'common practice', 'a judgement: pushed aside by 30 degrees, as by a head or shoulder, and let go')

/** Height of the accidental drop, m. */
export const DROP_HEIGHT: Value = value(0.01, 'm', 'common practice', 'height of the accidental drop')

/** Who may reach a hanger and pull at it. */
export const PULLERS = ['cat', 'child'] as const
export type Puller = (typeof PULLERS)[number]

/** Pull of whoever reaches it, N: of a child by the fringe, as an accident; of a cat that jumps in to the pot, as it may any day. */
export const TUG_PULL: Readonly<Record<Puller, Value>> = {
  cat: value(98.0665, 'N', 'from memory', 'a cat of 5 kg, put on at once: twice its weight'),
  child: value(250, 'N', 'from memory', 'a child of nearly six hangs on it: 23 kg at 72 months, the heaviest of twenty (growth charts), with a tenth more; no measured pulls of small children were found'),
}

/** How far from straight down that pull may be, rad. */
export const TUG_ANGLE: Value = value(Math.PI / 6, 'rad', 'common practice', 'a judgement: whoever hangs on it swings as far as a bumped pot')
