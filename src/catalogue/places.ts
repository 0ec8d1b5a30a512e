import { value, type Value } from './basis'

/** How far above the lower edge of its plate a bracket turns on plasterboard, m: the edge crushes the board. */
export const PIVOT_RISE: Value = value(0.01, 'm', 'common practice', 'a judgement: the lower edge of the plate crushes plasterboard, so the bracket turns a little above it')

/** Fixings of one plate that are counted on to share a load: no two are set alike. */
export const COUNTED_FIXINGS: Value = value(2, '1', 'common practice', 'of several fixings behind a stiff plate two may have to bear it all at first')

/** Tip of a lag screw over its diameter, which holds nothing. */
export const LAG_TIP: Value = value(1, '1', 'from memory', 'AWC National Design Specification, appendix L: tips of lag screws are up to about a diameter long, and not counted')

/** Load across a screw, lag or nail in timber that is wet in service, over dry. */
export const WET_ACROSS: Value = value(0.7, '1', 'from memory', 'AWC National Design Specification, table 11.3.3: wet service, loads across')

/** Yield over allowable of a dowel of 1/4 in and more that bends, loaded across the grain. */
export const THICK_YIELD_REDUCTION: Value = value(4, '1', 'from memory', 'AWC National Design Specification, table 12.3.1B: 3.2 times 1.25 across the grain')

/** What a rating for pull-out may be asked along the wall, as a share of it, where the packet gives no other. */
export const SHEAR_AS_PULL_OUT: Value = value(1, '1', 'common practice', 'in a wall a fixing holds at least as much down along it as straight out')

/** Load across a lag screw in end grain over that in side grain. */
export const END_GRAIN_ACROSS: Value = value(0.67, '1', 'from memory', 'AWC National Design Specification, 12.5.2: end grain, loads across')
