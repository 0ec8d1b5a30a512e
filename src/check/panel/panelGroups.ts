import type { CaseCode } from '../../load/loadCases'
import { legAngle } from '../slingPlan'
import type { CaseSling, Solved } from '../solved'
import { panelStrands } from './panelPlan'

/** The strands of one corner in front, or one half of those behind; the worse of the two counts for both. */
export interface PanelGroup {
  readonly kind: 'front' | 'back'
  readonly strands: number
  /** Their angle from the vertical, rad. */
  readonly angle: number
  /** The largest pull over all solves, and what counts, N. */
  readonly solved: number | null
  readonly tension: number | null
}

/** The two kinds of strands of a panel in one case. */
export const panelGroups = (solved: Solved, code: CaseCode): readonly PanelGroup[] => groupsOf(solved, solved.slings?.[code] ?? null)

/** The same by another sling. */
export function groupsOf({ hanger: { answers }, plan }: Pick<Solved, 'hanger' | 'plan'>, sling: CaseSling | null): readonly PanelGroup[] {
  const strands = panelStrands(answers)
  return (['front', 'back'] as const).map((kind): PanelGroup => {
    const legs = (plan?.legs ?? []).flatMap((leg, i) => (leg.kind === kind ? [i] : []))
    const most = (of: readonly number[] | null): number | null => (of === null ? null : Math.max(...legs.map((i) => of[i] ?? 0)))
    const [first] = legs
    const leg = first === undefined ? undefined : plan?.legs[first]
    return { kind, strands: strands[kind === 'front' ? 0 : 2] ?? 0, angle: leg === undefined ? 0 : legAngle(leg), solved: most(sling?.solvedEach ?? null), tension: most(sling?.each ?? null) }
  })
}
