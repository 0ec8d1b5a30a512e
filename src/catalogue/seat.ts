import { value, type Value } from './basis'

/** How much higher than reckoned the centre of gravity is taken where the pot may tip, m. */
export const CENTRE_MARGIN: Value = value(0.02, 'm', 'common practice', 'margin on the centre of gravity')

/** How much softer than reckoned the legs are taken where the pot may tip: their stiffness as a share. */
export const SOFT_LEGS: Value = value(0.5, '1', 'from memory', 'a judgement: margin on the stiffness of the legs, which no maker measures')

/** Least offset of the weight from the axis, m, however truly the pot is set in. */
export const LEAST_OFFSET: Value = value(0.005, 'm', 'common practice', 'no pot is set in truer than this by eye')

/** Tilt by which a pot may be pushed by hand or head, rad. */
export const TILT_BY_HAND: Value = value((15 * Math.PI) / 180, 'rad', 'common practice', 'a judgement: as far as a pot is pushed aside in its cradle when it is watered or met in passing')

/** Tilt above which a pot slides out of what is left of its seat, rad. */
export const TIPS_ABOVE: Value = value((15 * Math.PI) / 180, 'rad', 'from memory', 'a judgement: about the friction angle of cotton cord on a glazed pot (0.24: 13.5 degrees)')
