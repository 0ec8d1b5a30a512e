import type { CheckResult } from '../check/checkHanger'
import type { Finding } from '../check/finding'
import type { Patch } from '../hanger/document'
import { gatheredStrands } from '../hanger/strandCount'
import { formatSi } from '../quantity/formatSi'

const found = <C extends Finding['code']>({ links }: CheckResult, code: C): Extract<Finding, { code: C }> | undefined =>
  links.flatMap((l) => l.findings).find((f): f is Extract<Finding, { code: C }> => f.code === code)

/** More strands from each corner of a panel and behind, with the cords on the stick for them, and a net that was told as much wider. */
export function morePanelStrands({ solved: { hanger: { answers } } }: CheckResult): readonly Patch[] {
  if (answers['make.arrangement'] !== 'panel') return []
  return [2, 4].map((more): Patch => {
    const [front, behind] = [Math.min(24, answers['panel.front'] + more), Math.min(24, answers['panel.behind'] + more)]
    const cords = Math.ceil(gatheredStrands({ ...answers, 'panel.front': front, 'panel.behind': behind }) / 2)
    return {
      'panel.front': String(front), 'panel.behind': String(behind), 'panel.cords': String(Math.min(48, Math.max(answers['panel.cords'], cords))),
      ...(answers['panel.knots'] === null ? {} : { 'panel.knots': String(Math.min(12, Math.floor(front / 2))) }),
    }
  })
}

/** Enough cords on the stick for the strands round the pot. */
export function morePanelCords(check: CheckResult): readonly Patch[] {
  const few = found(check, 'PANEL_CORDS_FEW')
  return few === undefined ? [] : [{ 'panel.cords': String(Math.ceil(few.needed / 2)) }]
}

/** A panel just wide enough, and a stick as long where it was shorter. */
export function widerPanel(check: CheckResult): readonly Patch[] {
  const narrow = found(check, 'PANEL_NARROW')
  if (narrow === undefined) return []
  const width = formatSi(narrow.least, 'mm')
  return [{ 'panel.width': width, ...(narrow.least > check.solved.hanger.answers['stick.length'] ? { 'stick.length': width } : {}) }]
}
