import { value, type Value } from './basis'

export const TIMBERS = ['softwood', 'hardwood', 'unknown'] as const
export type Timber = (typeof TIMBERS)[number]

/** Specific gravity of a building timber by the two conventions, which must not be mixed. */
export interface TimberGravity {
  /** Oven-dry mass over volume at 12 % moisture (Wood Handbook). */
  readonly handbook: Value
  /** Oven-dry mass over oven-dry volume (National Design Specification). */
  readonly specification: Value
}

const HANDBOOK = 'USDA Wood Handbook FPL-GTR-282 (2021), table 5-3a'
const NDS = 'AWC National Design Specification, table 12.3.3A'
const softwood: TimberGravity = {
  handbook: value(0.32, '1', 'published', `${HANDBOOK}: western redcedar, the lightest building softwood listed`),
  specification: value(0.36, '1', 'published', `${NDS}: spruce-pine-fir south, eastern white pine, western cedar`),
}
export const TIMBER_GRAVITY: Readonly<Record<Timber, TimberGravity>> = {
  softwood,
  hardwood: {
    handbook: value(0.37, '1', 'published', `${HANDBOOK}: basswood, among the lightest hardwoods listed`),
    specification: value(0.43, '1', 'published', `${NDS}: yellow poplar`),
  },
  unknown: softwood,
}

/** Ultimate withdrawal of a wood screw from side grain, p = c G^2 D L (N, mm): c in N/mm2. */
export const SCREW_WITHDRAWAL_ULTIMATE: Value = value(108.25e6, 'Pa', 'published', 'USDA Wood Handbook FPL-GTR-282 (2021), eq. 8-10, p. 8-10 (108.25 there, in N and mm)')

/** Allowable withdrawal of a wood screw from side grain, W = c G^2 D per length of thread. */
export const SCREW_WITHDRAWAL_ALLOWABLE: Value = value(19.65e6, 'Pa', 'published', 'AWC National Design Specification, wood screws (2850 there, in lb and inches)')

/** Lower-tail factor from mean ultimate withdrawal to the 5 % value. */
export const WITHDRAWAL_SCATTER: Value = value(0.7, '1', 'from memory', 'coefficient of variation about 0.18: 1 - 1.645 x 0.18')

/** Thread that must be in the timber, as a multiple of the screw's diameter. */
export const LEAST_PENETRATION: Value = value(6, '1', 'published', 'AWC National Design Specification: least penetration 6 D for nails and screws')

/** Load duration factors for allowable values in timber: [longest time in s, factor]. */
export const ALLOWABLE_DURATION: { readonly steps: readonly (readonly [number, number])[] } & Omit<Value, 'value' | 'unit'> = {
  steps: [[600, 1.6], [7 * 86400, 1.25], [61 * 86400, 1.15], [10 * 365.25 * 86400, 1], [Infinity, 0.9]],
  basis: 'published',
  source: 'AWC National Design Specification, table 2.3.2',
}
/** A hung plant is a permanent load whatever its planned life. */
export const PERMANENT_IN_TIMBER: Value = value(0.9, '1', 'published', 'AWC National Design Specification, table 2.3.2: permanent')

/** Short-term strength left under a load lasting t seconds: (18.3 + 108.4 t^-0.0464) / 100. */
export const TIMBER_DURATION = { a: 0.183, b: 1.084, n: 0.0464, basis: 'published', source: 'Madison curve as given in Forests 2021, 12(9), 1148' } as const
