import { UNMEASURED_DIAMETER } from '../catalogue/cords'
import { cradledProfile } from '../load/outline'
import { sectionReach } from '../load/section'
import type { CaseCode } from '../load/loadCases'
import { metres, newtons } from '../quantity/si'
import { wallHook } from '../statics/wallHook'
import { asideLoad } from './asideLoad'
import type { PlaceDemandOutcome, PlaceLoad } from './placeLoad'
import type { Solved } from './solved'
import { entering, worked } from './term'

/**
 * A hook or nail in a wall with the pot hanging below it, N: its weight along the wall; where the pot is wider
 * than the hook stands out it leans, and pulls by H = W e / L. The pot touches at its widest level, a cord
 * between; its weight may sit off the axis, away from the wall. Pulled aside it may swing along the wall, or away from it and then pulls
 * straight out. No answer where the strands do not reach
 * round the pot (WALL_LEAN_UNKNOWN).
 */
export function wallHookDemand(solved: Solved, code: CaseCode, { load, symbol, terms }: PlaceLoad): PlaceDemandOutcome {
  const { answers } = solved.hanger
  const { path, outline, top, panel } = solved.geometry
  if (!path.ok || top === null) return { ok: false, finding: { code: 'WALL_LEAN_UNKNOWN' }, fails: false, terms }
  const widestLevel = cradledProfile(outline, sectionReach).reduce((a, b) => (b.r > a.r ? b : a))
  // A panel's pot leans on its highest widest level, where its strands hold it.
  const widest = panel?.ok ? { r: widestLevel.r, z: panel.side.touches } : widestLevel
  const cord = panel === null ? answers['cord.diameter'] ?? UNMEASURED_DIAMETER.value : answers['panel.thickness']
  const projection = answers['hook.projection']
  const centre = widest.r + cord + answers['seat.offset']
  const drop = top + path.top - widest.z
  const leaning = wallHook({ weight: newtons(load), centreFromWall: metres(centre), projection: metres(projection), drop: metres(drop) })
  if (!leaning.ok) return { ok: false, finding: { code: 'WALL_LEAN_UNKNOWN' }, fails: false, terms }
  const aside = asideLoad(solved, code, { load, symbol })
  const shear = aside === null ? load : Math.max(load, Math.hypot(aside.down, aside.side))
  const pull = Math.max(leaning.leans ? leaning.pull : 0, aside?.side ?? 0)
  const lean = `${symbol} * (r_w + d_c + o - e) / L_d`
  const asideTerms = aside === null ? [] : aside.terms
  const along = aside === null
    ? worked('along', 'E_V', shear, 'N', symbol, 'all of it hangs down along the wall')
    : worked('along', 'E_V', shear, 'N', `max(${symbol}, sqrt(P_d^2 + S^2))`, 'all of it hangs down along the wall, or less of it and some sideways')
  if (!leaning.leans) {
    const out = aside === null ? [] : [worked('pullOut', 'E_N', pull, 'N', 'S', 'swung away from the wall')]
    return { ok: true, pull, shear, load, terms: [...terms, ...asideTerms, ...out, along] }
  }
  return {
    ok: true, pull, shear, load,
    terms: [
      ...terms, ...asideTerms,
      entering('widestRadius', 'r_w', widest.r, 'm', 'computed', 'from the pot’s axis to the wall that it leans on'),
      entering(panel === null ? 'diameter' : 'behindPot', 'd_c', cord, 'm', panel === null && answers['cord.diameter'] === null ? 'common practice' : 'your own', panel === null ? 'a cord lies between pot and wall' : 'cords and knots between pot and wall'),
      entering('seatOffset', 'o', answers['seat.offset'], 'm', 'your own', 'weight off the axis, away from the wall'),
      entering('lever', 'e', projection, 'm', 'your own', 'from the wall to where it hangs'),
      entering('leanDrop', 'L_d', drop, 'm', 'computed', 'from the hook down to where the pot touches the wall'),
      aside === null
        ? worked('pullOut', 'E_N', pull, 'N', lean, 'the pot leans on the wall: moments about the hook, without friction')
        : worked('pullOut', 'E_N', pull, 'N', `max(${lean}, S)`, 'the pot leans on the wall: moments about the hook, without friction; or it swings away from it'),
      along,
    ],
  }
}
