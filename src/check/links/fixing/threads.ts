import { LAG_TIP } from '../../../catalogue/places'
import { METRIC_ROOT_SHARE, SCREW_GAUGES, THREAD_SHARE } from '../../../catalogue/screws'
import { LEAST_PENETRATION, type WithdrawnByAllowable } from '../../../catalogue/withdrawal'
import type { Answers, FieldPath } from '../../../hanger/fields'
import { readScrew, type ScrewSize } from '../../../hanger/readScrew'
import { metres, type Metres } from '../../../quantity/si'
import type { Finding } from '../../finding'
import type { Term } from '../../linkResult'
import type { Solved } from '../../solved'
import { entering } from '../../term'
import { threadInTimber } from '../../withdrawal'

/** What is screwed or driven into the timber, as far as it counts. */
export interface Threads {
  readonly kind: WithdrawnByAllowable
  /** Outside the thread and at its root (of a nail the same), as counted. */
  readonly diameter: Metres
  readonly root: Metres
  /** Length that holds in the timber. */
  readonly penetration: Metres
  readonly terms: readonly Term[]
  readonly findings: readonly Finding[]
  /** Measures that decide and may only be assumed. */
  readonly deciding: readonly FieldPath[]
}

/** What each kind of fixing is in timber; null for one that is not made for it. */
export const IN_TIMBER: Readonly<Record<Answers['fixing.kind'], WithdrawnByAllowable | null>> = {
  screwHook: 'woodScrew', woodScrew: 'woodScrew', lagScrew: 'lagScrew', nail: 'smoothNail',
  plug: null, boardFixing: null, metalAnchor: null, resinAnchor: null, adhesive: null, magnet: null, unknown: null,
}

interface Measured {
  readonly length: Metres | null
  readonly findings: readonly Finding[]
}

const screwOf = (answers: Answers): ScrewSize | null => {
  const text = answers['fixing.screw']
  const read = text === null ? null : readScrew(text)
  return read?.ok === true ? read : null
}

/** The thread in the timber of a screw whose length is known, by its packet or its own; null where it is not. A nail holds by all of its length. */
function byLength(answers: Answers, kind: WithdrawnByAllowable, screw: ScrewSize | null): Measured {
  const length = screw?.length ?? answers['fixing.length']
  if (length === null) return { length: null, findings: [] }
  const threaded = kind === 'smoothNail' ? length : (screw?.thread ?? length * THREAD_SHARE.value)
  const depth = answers['fixing.timberDepth']
  const thread = threadInTimber(metres(length), metres(threaded), answers['fixing.between'])
  const through = depth !== null && length - answers['fixing.between'] > depth
  return {
    length: metres(through ? Math.max(0, Math.min(thread, threaded - (length - answers['fixing.between'] - depth))) : thread),
    findings: through ? [{ code: 'SCREW_LONGER_THAN_TIMBER', length: length - answers['fixing.between'], depth }] : [],
  }
}

/**
 * What of a screw, lag or nail counts. Its thickness and the thread in the timber as measured, else as its packet
 * says (the thread printed there, or two thirds of its length), less what lies between; where both are said, the
 * lesser. Below its least penetration a thick screw counts as a thinner one that reaches its own
 * (PENETRATION_TOO_SHORT); the tip of a lag is not counted; what comes out behind the timber neither
 * (SCREW_LONGER_THAN_TIMBER).
 */
export function threadsOf(solved: Solved, kind: WithdrawnByAllowable): Threads {
  const { answers, given } = solved.hanger
  const screw = screwOf(answers)
  const outside = given.has('fixing.diameter') || screw === null ? answers['fixing.diameter'] : screw.diameter
  const named = byLength(answers, kind, screw)
  const measured = answers['fixing.penetration']
  const whole = named.length === null ? measured : given.has('fixing.penetration') ? Math.min(measured, named.length) : named.length
  const penetration = metres(Math.max(0, whole - (kind === 'lagScrew' ? LAG_TIP.value * outside : 0)))
  const least = LEAST_PENETRATION[kind].value * outside
  const short = penetration < least
  const diameter = metres(Math.min(outside, penetration / LEAST_PENETRATION[kind].value))
  const gaugeRoot = SCREW_GAUGES.find((row) => Math.abs(row.outside.value - outside) < 1e-9)?.root?.value
  const rootShare = kind === 'smoothNail' ? 1 : gaugeRoot === undefined ? METRIC_ROOT_SHARE.value : gaugeRoot / outside
  return {
    kind, diameter, penetration,
    root: metres(diameter * rootShare),
    terms: [
      entering('screwDiameter', 'D', diameter, 'm', 'your own', short ? 'counted no thicker than its penetration allows' : kind === 'smoothNail' ? 'diameter of the nail' : 'outside diameter of the thread'),
      entering('penetration', 'L', penetration, 'm', 'your own', kind === 'lagScrew' ? 'thread in the timber, its tip and the board not counted' : 'thread in the timber, board not counted'),
    ],
    findings: [...named.findings, ...(short ? [{ code: 'PENETRATION_TOO_SHORT', given: penetration, least } as const] : [])],
    deciding: [...(named.length === null ? ['fixing.penetration' as const] : []), ...(screw === null ? ['fixing.diameter' as const] : [])],
  }
}
