import { value, type Value } from './basis'
import { WOODS } from './woods'

/** Species as building timber is graded and sold. */
export const TIMBER_SPECIES = [
  'sprucePineFir', 'hemFir', 'douglasFirLarch', 'southernPine', 'sprucePineFirSouth', 'easternWhitePine', 'westernCedars', 'redOak', 'whiteOak', 'yellowPoplar', 'beechBirchHickory',
] as const
export const TIMBERS = ['softwood', 'hardwood', 'unknown', ...TIMBER_SPECIES] as const
export type Timber = (typeof TIMBERS)[number]
/** Those that tables by wood list as hardwood; of the rest the lower, softwood, is taken. */
export const HARDWOOD_TIMBERS: readonly Timber[] = ['hardwood', 'redOak', 'whiteOak', 'yellowPoplar', 'beechBirchHickory']

/** Specific gravity of a building timber by the two conventions, which must not be mixed. */
export interface TimberGravity {
  /** Oven-dry mass over volume at 12 % moisture (Wood Handbook), of the lightest wood sold under the name. */
  readonly handbook: Value
  /** Oven-dry mass over oven-dry volume (National Design Specification). */
  readonly specification: Value
}

const HANDBOOK = 'USDA Wood Handbook FPL-GTR-282 (2021), table 5-3a'
const NDS = 'AWC National Design Specification, table 12.3.3A'
const ofWood = ({ gravity }: { readonly gravity: Value }, which: string): Value => ({ ...gravity, source: `${HANDBOOK}: ${which}` })
const remembered = (x: number, which: string): Value => value(x, '1', 'from memory', `${HANDBOOK}: ${which}`)
const specified = (x: number, which: string): Value => value(x, '1', 'published', `${NDS}: ${which}`)

const softwood: TimberGravity = {
  handbook: ofWood(WOODS.westernRedcedar, 'western redcedar, the lightest building softwood listed'),
  specification: specified(0.36, 'spruce-pine-fir south, eastern white pine, western cedar'),
}
export const TIMBER_GRAVITY: Readonly<Record<Timber, TimberGravity>> = {
  softwood,
  hardwood: {
    handbook: ofWood(WOODS.basswood, 'basswood, among the lightest hardwoods listed'),
    specification: specified(0.43, 'yellow poplar'),
  },
  unknown: softwood,
  sprucePineFir: { handbook: remembered(0.32, 'subalpine fir, the lightest of the group'), specification: specified(0.42, 'spruce-pine-fir') },
  hemFir: { handbook: remembered(0.37, 'grand fir, the lightest of the group'), specification: specified(0.43, 'hem-fir') },
  douglasFirLarch: { handbook: remembered(0.46, 'Douglas-fir, interior south, the lightest of the group'), specification: specified(0.5, 'Douglas fir-larch') },
  southernPine: { handbook: ofWood(WOODS.loblollyPine, 'loblolly pine, the lightest of the group listed'), specification: specified(0.55, 'southern pine') },
  sprucePineFirSouth: { handbook: ofWood(WOODS.engelmannSpruce, 'Engelmann spruce, the lightest of the group listed'), specification: specified(0.36, 'spruce-pine-fir south') },
  easternWhitePine: { handbook: ofWood(WOODS.easternWhitePine, 'eastern white pine'), specification: specified(0.36, 'eastern white pine') },
  westernCedars: { handbook: ofWood(WOODS.westernRedcedar, 'western redcedar, the lightest of the group'), specification: specified(0.36, 'western cedars') },
  redOak: { handbook: ofWood(WOODS.southernRedOak, 'southern red oak, the lighter of those listed'), specification: specified(0.67, 'red oak') },
  whiteOak: { handbook: remembered(0.63, 'overcup oak, the lightest of the group'), specification: specified(0.73, 'white oak') },
  yellowPoplar: { handbook: ofWood(WOODS.yellowPoplar, 'yellow poplar'), specification: specified(0.43, 'yellow poplar') },
  beechBirchHickory: { handbook: ofWood(WOODS.yellowBirch, 'yellow birch, the lightest of the group listed'), specification: specified(0.71, 'beech-birch-hickory') },
}

/** Load duration factors for allowable values in timber: [longest time in s, factor]. */
export const ALLOWABLE_DURATION: { readonly steps: readonly (readonly [number, number])[] } & Omit<Value, 'value' | 'unit'> = {
  steps: [[600, 1.6], [7 * 86400, 1.25], [61 * 86400, 1.15], [10 * 365.25 * 86400, 1], [Infinity, 0.9]],
  basis: 'published',
  source: 'AWC National Design Specification, table 2.3.2',
}
/** A hung plant is a permanent load whatever its planned life. */
export const PERMANENT_IN_TIMBER: Value = value(0.9, '1', 'published', 'AWC National Design Specification, table 2.3.2: permanent')

const WET = 'AWC National Design Specification, wet service, withdrawal'
/** Allowable withdrawal where the timber is or becomes wet in service, over dry; a smooth nail driven green that dries, or the reverse, loses most. */
export const WET_SERVICE: Readonly<Record<'woodScrew' | 'lagScrew' | 'smoothNail', Value>> = {
  woodScrew: value(0.7, '1', 'from memory', WET),
  lagScrew: value(0.7, '1', 'from memory', WET),
  smoothNail: value(0.25, '1', 'from memory', WET),
}

/** Withdrawal of a lag screw from end grain over that from side grain. Wood screws and nails in end grain have no published allowable: refused. */
export const LAG_IN_END_GRAIN: Value = value(0.75, '1', 'published', 'USDA Wood Handbook FPL-GTR-190 (2010), p. 8-13: three quarters; AWC National Design Specification, table 11.3.1: the same')

/** Short-term strength left under a load lasting t seconds: (18.3 + 108.4 t^-0.0464) / 100. */
export const TIMBER_DURATION = { a: 0.183, b: 1.084, n: 0.0464, basis: 'published', source: 'Madison curve as given in Forests 2021, 12(9), 1148' } as const

/** The same by an older straight line in the logarithm of t, in hours: (90.4 - 6.3 lg t) / 100. */
export const TIMBER_DURATION_1947 = { a: 0.904, b: 0.063, basis: 'published', source: 'L. W. Wood 1947 as given in Forests 2021, 12(9), 1148' } as const
