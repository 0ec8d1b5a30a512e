import { value, type Value } from './basis'
import { DAY } from './duration'

/** How long a test hang must have lasted to count, s. */
export const LEAST_TEST_TIME: Value = value(DAY, 's', 'common practice', 'a day, for new cord to settle')

/** Slip of the marked strands from which a test hang no longer counts, m. */
export const MOST_TEST_SLIP: Value = value(0.003, 'm', 'common practice', 'a judgement: a knot settles by as much; one that slips further runs')

/** Share of a test mass that a part may be asked to hold for good; all of it for a moment. */
export const TEST_SHARE_AT_REST: Value = value(0.5, '1', 'common practice', 'half the test mass at rest, all of it for a moment')
