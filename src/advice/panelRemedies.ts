import type { CheckResult } from '../check/checkHanger'
import type { Finding } from '../check/finding'
import type { Patch } from '../hanger/document'
import { gatheredStrands } from '../hanger/strandCount'
import { formatSi } from '../quantity/formatSi'
import type { RemedyKind } from './remedyKinds'

const found = <C extends Finding['code']>({ links }: CheckResult, code: C): Extract<Finding, { code: C }> | undefined =>
  links.flatMap((l) => l.findings).find((f): f is Extract<Finding, { code: C }> => f.code === code)

/** So many more strands from each corner and behind, with the cords on the stick for them, and a net that was told as much wider. */
function withMore({ solved: { hanger: { answers } } }: CheckResult, more: number): Patch {
  const [front, behind] = [Math.min(24, answers['panel.front'] + more), Math.min(24, answers['panel.behind'] + more)]
  const cords = Math.ceil(gatheredStrands({ ...answers, 'panel.front': front, 'panel.behind': behind }) / 2)
  return {
    'panel.front': String(front), 'panel.behind': String(behind), 'panel.cords': String(Math.min(48, Math.max(answers['panel.cords'], cords))),
    ...(answers['panel.knots'] === null ? {} : { 'panel.knots': String(Math.min(12, Math.floor(front / 2))) }),
  }
}

/** What mends a wall planter: more strands round its pot, enough cords on its stick, a panel wide enough. */
export const PANEL_REMEDIES: readonly RemedyKind[] = [
  {
    code: 'panelStrands', helps: ['leg', 'gatheringTurn'], plannedOnly: true, cost: 4,
    patches: (check) => (check.solved.hanger.answers['make.arrangement'] === 'panel' ? [2, 4].map((more) => withMore(check, more)) : []),
  },
  {
    code: 'panelCords', helps: ['leg'], plannedOnly: true, cost: 4,
    patches: (check) => {
      const few = found(check, 'PANEL_CORDS_FEW')
      return few === undefined ? [] : [{ 'panel.cords': String(Math.ceil(few.needed / 2)) }]
    },
  },
  {
    code: 'widerPanel', helps: ['leg'], plannedOnly: true, cost: 4,
    patches: (check) => {
      const narrow = found(check, 'PANEL_NARROW')
      if (narrow === undefined) return []
      const stick = check.solved.hanger.answers['stick.length']
      return [{ 'panel.width': formatSi(narrow.least, 'mm'), ...(narrow.least > stick ? { 'stick.length': formatSi(narrow.least, 'mm') } : {}) }]
    },
  },
]
