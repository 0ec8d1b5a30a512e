import type { TermCode } from '../../check/termCodes'
import type { Scene } from '../scene'

/** A screw, hook's thread or nail in timber, m. */
export interface DrawnScrew {
  /** Outside the thread. */
  readonly diameter: number
  /** From the surface, with what lies before the timber. */
  readonly length: number
  /** Where along it its thread in the timber begins and ends. */
  readonly thread: readonly [from: number, to: number]
  readonly pencil: boolean
}

/** Whether the thread in the timber itself is what counts and is shown: not a packet's words, a whole length or a rating. */
export const screwMeasured = ({ answers, check }: Pick<Scene, 'answers' | 'check'>): boolean =>
  answers['place.substrate'] === 'timber' && answers['fixing.rated'] === null
  && (check.solved.hanger.given.has('fixing.penetration') || (answers['fixing.screw'] === null && answers['fixing.length'] === null))

/**
 * What is drawn of a screw in timber: its thread as measured; of one known by its packet or its whole length as the
 * check counts it. A screw longer than its timber comes out behind.
 */
export function screwOf({ answers, check, pencil }: Pick<Scene, 'answers' | 'check' | 'pencil'>): DrawnScrew {
  const { given } = check.solved.hanger
  const counted = (code: TermCode): number | null =>
    check.links.find(({ link, tier }) => link === 'fixing' && tier === 1)?.terms.find((term) => term.code === code)?.value ?? null
  const before = answers['fixing.between']
  const named = answers['fixing.screw'] !== null
  const whole = answers['fixing.length']
  const measured = answers['fixing.penetration']
  const said = given.has('fixing.penetration') || (!named && whole === null)
  const thread = said ? measured : counted('penetration') ?? measured
  const diameter = given.has('fixing.diameter') || !named ? answers['fixing.diameter'] : counted('screwDiameter') ?? answers['fixing.diameter']
  const length = Math.max(whole ?? 0, before + thread)
  const behind = answers['fixing.timberDepth'] === null ? length : Math.min(length, before + answers['fixing.timberDepth'])
  return {
    diameter, length, thread: [Math.max(before, behind - thread), length],
    pencil: pencil(...(said ? ['fixing.penetration'] as const : []), ...(named ? [] : ['fixing.diameter'] as const)),
  }
}
