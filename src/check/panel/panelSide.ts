import { hasCorners } from '../legPlaces'
import type { Answers } from '../../hanger/fields'
import { cradledProfile, type CradledOutline } from '../../load/outline'
import { sectionReach } from '../../load/section'
import { metres, type Metres } from '../../quantity/si'
import type { Wall } from '../../statics/sling/result'
import type { RoundSide } from '../../statics/unrolled'
import type { ProfilePoint } from '../../statics/tautPath'
import type { Finding } from '../finding'

/** What a panel's strands lie on: the straight side that stands for the pot, and the cradle's first knot on it. */
export interface PanelSide {
  readonly ok: true
  readonly side: RoundSide
  /** Height of the first knot in front, above the base, and how far above the rim it would be, if it is. */
  readonly knotHeight: Metres
  /** Where the pot touches the wall: the highest of its widest levels, m above the base. */
  readonly touches: Metres
  readonly contacts: Wall['contacts']
  /** Whether a straight side only stands for a curved one, or for that of a saucer or cover pot. */
  readonly approximate: boolean
}

/** The pot's side cannot be taken as round and straight, or the first knot is not on it. */
export interface NoPanelSide {
  readonly ok: false
  readonly finding: Finding
  readonly fails: boolean
}

const ROUNDING = 1e-9

/**
 * The round, straight side that the strands in front lie on. Of a bowl, or a pot in a saucer, the cone through its rim
 * and the place of the first knot; of one that is widest below its rim a cylinder. Findings:
 * PANEL_CORNERS, CRADLE_ABOVE_RIM.
 */
export function panelSide(answers: Answers, outline: CradledOutline): PanelSide | NoPanelSide {
  const shape = answers['pot.shape']
  if (hasCorners(answers) && (shape === 'square' || shape === 'trough')) return { ok: false, finding: { code: 'PANEL_CORNERS', shape }, fails: false }
  const profile = cradledProfile(outline, sectionReach)
  const most = Math.max(...profile.map(({ r }) => r))
  const widest = profile.filter(({ r }) => r >= most - ROUNDING).at(-1) as ProfilePoint
  const base = profile[0] as ProfilePoint
  const top = profile.at(-1) as ProfilePoint
  const first = answers['cradle.first']
  const knot = pointAlong(profile, first)
  const along = lengthTo(profile, top)
  if (knot === null || knot.z >= top.z) return { ok: false, finding: { code: 'CRADLE_ABOVE_RIM', first, most: along }, fails: true }
  const found = { ok: true, knotHeight: metres(knot.z), touches: metres(widest.z), contacts: contactsOf(widest, base) } as const
  if (profile.length === 2) return { ...found, side: sideOf(base.r, top), approximate: false }
  // Widest below its rim it is taken as a cylinder as wide: strands lie no flatter on the pot itself.
  if (widest.z < top.z - ROUNDING) return { ...found, side: sideOf(widest.r, { r: widest.r, z: top.z }), approximate: true }
  // No hollow is left in the profile, so that the line comes down to the base outside the pot.
  const baseRadius = top.r - ((top.r - knot.r) / (top.z - knot.z)) * top.z
  return { ...found, side: sideOf(baseRadius, top), approximate: true }
}

const sideOf = (base: number, rim: ProfilePoint): RoundSide => ({ baseRadius: metres(base), rimRadius: metres(rim.r), height: metres(rim.z) })

/** What may touch the wall: the highest widest level, and the base edge, once where they are the same. */
const contactsOf = (widest: ProfilePoint, base: ProfilePoint): Wall['contacts'] =>
  [widest, ...(widest.z > base.z ? [base] : [])].map(({ r, z }) => ({ type: 'circle', z, r }))

/** The point of a profile so far along it from the middle under the base; on the base edge where it would be under the base, null beyond its end. */
function pointAlong(profile: readonly ProfilePoint[], along: number): ProfilePoint | null {
  let reached = (profile[0] as ProfilePoint).r
  if (along <= reached) return profile[0] as ProfilePoint
  for (let i = 1; i < profile.length; i++) {
    const [a, b] = [profile[i - 1] as ProfilePoint, profile[i] as ProfilePoint]
    const step = Math.hypot(b.r - a.r, b.z - a.z)
    if (along <= reached + step) {
      const share = (along - reached) / step
      return { r: a.r + (b.r - a.r) * share, z: a.z + (b.z - a.z) * share }
    }
    reached += step
  }
  return null
}

function lengthTo(profile: readonly ProfilePoint[], to: ProfilePoint): number {
  return profile.slice(0, profile.indexOf(to) + 1).reduce((sum, p, i) => {
    const before = profile[i - 1]
    return sum + (before === undefined ? p.r : Math.hypot(p.r - before.r, p.z - before.z))
  }, 0)
}
