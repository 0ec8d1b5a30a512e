import { gathering } from '../../check/gathering'
import type { CheckResult } from '../../check/checkHanger'
import { cordPlan } from '../../cordPlan/cordPlan'
import { cordName, NO_PLAN_TEXTS, PART_COLUMNS, partRow, PLAN_COLUMNS, PLAN_TITLE, planFacts, planNotes, planRow } from '../../words/cordPlan'
import { gatheringText } from '../../words/gathering'
import type { Block } from '../block'

/** The cord plan: what to cut, what it comes to, and the sum behind each strand. */
export function cordBlocks(check: CheckResult): readonly Block[] {
  const plan = cordPlan(check.solved.hanger)
  if (!plan.ok) return [{ kind: 'heading', level: 2, text: PLAN_TITLE }, { kind: 'paragraph', weight: 'strong', text: NO_PLAN_TEXTS[plan.reason] }]
  const worked = plan.kinds.flatMap((kind): Block[] => {
    // Both halves of a folded cord are alike, but for one that fills with one half and works with the other.
    const strands = kind.role === 'mixed' ? [] : kind.strands.slice(0, 1)
    return strands.map((parts) => ({ kind: 'table', caption: cordName(kind), columns: PART_COLUMNS, rows: parts.map(partRow) }))
  })
  return [
    { kind: 'table', caption: PLAN_TITLE, columns: PLAN_COLUMNS, rows: plan.kinds.map(planRow) },
    { kind: 'facts', items: planFacts(plan) },
    { kind: 'paragraph', weight: 'plain', text: gatheringText(gathering(check.solved)) },
    { kind: 'list', items: planNotes(plan) },
    ...worked,
  ]
}
