import type { Inspection } from '../hanger/inspection'
import type { Finding } from './finding'
import type { LinkCode, LinkResult } from './linkResult'
import type { Solved } from './solved'
import { worse } from './verdict'

type Damage = Extract<Inspection['what'], 'frayed' | 'thinned' | 'slipped'>

/** What an inspection log leaves open: damage that nobody mended, and strands that are gone from the leg that lost most. */
export interface Wear {
  readonly damage: readonly (Omit<Inspection, 'what'> & { readonly what: Damage })[]
  readonly gone: number
  /** The leg that lost most, from 1; null where it was not said. */
  readonly leg: number | null
}

const isDamage = (entry: Inspection): entry is Wear['damage'][number] => entry.what === 'frayed' || entry.what === 'thinned' || entry.what === 'slipped'

/**
 * Reads the log from its first row to its last. A repair ends what stands before it in its leg, or everywhere where
 * no leg is named; a strand that is gone without its leg may be of any leg, and so counts in that which lost most.
 */
export function wearOf(inspections: readonly Inspection[]): Wear {
  let open: readonly Inspection[] = []
  for (const entry of inspections) {
    if (entry.what === 'repaired') open = open.filter(({ leg }) => entry.leg !== null && leg !== entry.leg)
    else if (isDamage(entry) || entry.what === 'strandGone') open = [...open, entry]
  }
  const lost = new Map<number | null, number>()
  for (const entry of open) if (entry.what === 'strandGone') lost.set(entry.leg, (lost.get(entry.leg) ?? 0) + (entry.strands ?? 1))
  const named = [...lost].filter(([leg]) => leg !== null).sort(([, a], [, b]) => b - a)
  const [leg, most] = named[0] ?? [null, 0]
  return { damage: open.filter(isDamage), gone: most + (lost.get(null) ?? 0), leg }
}

/** Strands that are gone from the leg that lost most. */
export const strandsGone = ({ hanger }: Solved): number => wearOf(hanger.inspections).gone

const PART_OF: Readonly<Record<Damage, LinkCode>> = { frayed: 'leg', thinned: 'leg', slipped: 'gatheringGrip' }

/**
 * Damage that was seen and not mended leaves its part "not enough known" at best, for nobody can say what it still
 * bears (INSPECTION_OPEN); strands counted as gone are told (INSPECTION_STRAND_GONE), and the legs reckoned without them. A
 * panel is not reckoned strand by strand, so that there they leave "not enough known" too.
 */
export function temperInspected(solved: Solved, links: readonly LinkResult[]): readonly LinkResult[] {
  const { damage, gone, leg } = wearOf(solved.hanger.inspections)
  if (damage.length === 0 && gone === 0) return links
  const reckoned = solved.geometry.panel === null
  return links.map((link): LinkResult => {
    const findings: Finding[] = damage.filter(({ what }) => PART_OF[what] === link.link).map(({ what, date, leg: at }) => ({ code: 'INSPECTION_OPEN', what, date, leg: at }))
    const open = findings.length > 0
    const lost = gone > 0 && link.link === 'leg'
    if (lost) findings.push({ code: 'INSPECTION_STRAND_GONE', strands: gone, leg, reckoned })
    if (findings.length === 0) return link
    return { ...link, verdict: open || (lost && !reckoned) ? worse(link.verdict, 'not enough known') : link.verdict, findings: [...link.findings, ...findings] }
  })
}
