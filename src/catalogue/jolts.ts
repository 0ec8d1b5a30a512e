import { value, type Value } from './basis'

/** Angle a bumped pot swings from, rad. */
export const BUMP_ANGLE: Value = value(Math.PI / 6, 'rad', 'common practice', 'a judgement: pushed aside by 30 degrees, as by a head or shoulder, and let go')

/** Height of the accidental drop, m. */
export const DROP_HEIGHT: Value = value(0.01, 'm', 'common practice', 'height of the accidental drop')
