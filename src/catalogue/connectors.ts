import { POUND, STANDARD_GRAVITY } from '../quantity/si'
import { range, value, type Range, type Value } from './basis'

const LBF = POUND * STANDARD_GRAVITY
const FITTINGS = 'a fittings maker’s catalogue (Bridco): load at which the part deforms'
const deforms = (kilograms: number, page: string): Value => value(kilograms * STANDARD_GRAVITY, 'N', 'published', `${FITTINGS}, ${page}`)

/** The two ends of one turnbuckle: load at which each deforms, N. */
export interface EndsRow {
  readonly id: string
  readonly hook: Value
  readonly eye: Value
}
const ends = (id: string, hook: number, eye: number): EndsRow => ({ id, hook: deforms(hook, 'p. 42'), eye: deforms(eye, 'p. 42') })

/** Open hook and closed eye of the same bar. */
export const TURNBUCKLE_ENDS: readonly EndsRow[] = [ends('M4', 100, 475), ends('M5', 130, 680), ends('M6', 350, 1500), ends('M8', 650, 2300)]

const shares = TURNBUCKLE_ENDS.map(({ hook, eye }) => hook.value / eye.value)
/** Load that opens an open hook over that of a closed eye of the same bar. */
export const OPEN_HOOK_OVER_EYE: Range = range(Math.min(...shares), shares.reduce((sum, share) => sum + share, 0) / shares.length, Math.max(...shares), '1', 'computed', `${FITTINGS}, p. 42: turnbuckles of M4 to M8; likely: the mean`)

/** One snap hook, N. */
export interface SnapRow {
  readonly id: string
  readonly deforms: Value
}
const snap = (id: string, kilograms: number): SnapRow => ({ id, deforms: deforms(kilograms, 'p. 13') })

/** Snap hooks, the maker's figure for cast ones by length and for spring hooks by bar. */
export const SNAP_HOOKS: readonly SnapRow[] = [snap('cast, 50 mm long', 140), snap('cast, 70 mm long', 250), snap('cast, 100 mm long', 700), snap('spring, 6 mm', 300), snap('spring, 8 mm', 550)]

const RING = 'data sheet of a forged and welded ring (LSSRING), 0.496 in bar, 1.70 in inside'
/** A welded ring of 12.6 mm bar, 43 mm inside: what it may carry and what breaks it, N. */
export const WELDED_RING: Readonly<Record<'limit' | 'breaks', Value>> = {
  limit: value(3520 * LBF, 'N', 'published', RING),
  breaks: value(17600 * LBF, 'N', 'published', RING),
}

const tonnes = (x: number, way: string): Value => value(x * 1000 * STANDARD_GRAVITY, 'N', 'published', `a fittings maker’s catalogue (Bridco), p. 7: rated eye bolt M12, ${way}`)
/** Rated load of one eye bolt M12 by the way it is pulled: along its shank at best, across its eye at worst, N. */
export const EYE_BOLT_M12: Readonly<Record<'best' | 'worst', Value>> = { best: tonnes(1.25, 'best direction'), worst: tonnes(0.2, 'worst direction') }

/** Pull that slides a magnet down a wall over the one it is rated for, on bare, thick, flat steel; refused overhead. */
export const MAGNET_SLIDES: Range = range(0.15, 0.2, 0.25, '1', 'published', 'a magnet dealer’s questions and answers (supermagnete): 15 to 25 % of the rated pull; likely: the middle')
