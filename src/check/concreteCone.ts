import { CONCRETE_CONE, type ConeKind } from '../catalogue/concrete'
import { newtons, type Metres, type Newtons, type Pascals } from '../quantity/si'

/**
 * Pull that breaks a cone of concrete out round one anchor far from edges and others: k f^0.5 h^1.5,
 * `strength` of the concrete, `depth` the embedment. An upper bound on a plug, never its strength.
 * @example concreteCone('crackedPostInstalled', pascals(20e6), metres(0.04)) // 8711.6
 */
export const concreteCone = (kind: ConeKind, strength: Pascals, depth: Metres): Newtons => newtons(CONCRETE_CONE[kind].value * Math.sqrt(strength) * depth ** 1.5)
