import { PLAIN_STRAND } from '../../catalogue/knots'
import { CASES_WHOLE } from '../../load/loadCases'
import { newtons } from '../../quantity/si'
import { splayHoop } from '../../statics/friction'
import { cordStrength } from '../cordStrength'
import { factor, assessLink, type LinkResult } from '../linkResult'
import type { Solved } from '../solved'
import { entering, worked } from '../term'
import { cordFactors } from '../timeFactors'

/**
 * The top wrap of the gathering knot, which holds all the legs together where they splay: hoop
 * tension N T / (2 pi). One wrap is taken to bear it alone, and no friction over the pot is counted on.
 */
export function wrapHoopLink(solved: Solved): readonly LinkResult[] {
  const { answers } = solved.hanger
  const cord = cordStrength(answers)
  const watered = solved.slings?.watered.sum ?? null
  return CASES_WHOLE.map((code) => {
    const pull = solved.slings?.[code].sum ?? null
    const hoop = pull === null ? null : splayHoop(1, newtons(pull))
    const time = cordFactors(answers, solved.loads[code].case, true)
    return assessLink({
      link: 'wrapHoop',
      part: 'whole',
      side: 'hanger',
      case: code,
      demand: hoop === null ? null : { value: hoop, unit: 'N' },
      capacity: cord.capacity,
      factors: [{ ...factor('effectiveStrands', PLAIN_STRAND) }, ...time.factors],
      grade: cord.grade,
      overallFactor: cord.capacity === null || watered === null ? null : cord.capacity.value / splayHoop(1, newtons(watered)),
      atLeast: 'holds',
      findings: cord.findings,
      terms: [
        ...(pull === null || hoop === null ? [] : [
          entering('knotPull', 'N_T', pull, 'N', 'computed', 'sum of the legs’ tensions as drawn'),
          worked('demand', 'E', hoop, 'N', 'N_T / (2 * pi)', 'hoop tension of a ring under radial pulls'),
        ]),
        ...cord.terms,
        ...time.terms,
      ],
    })
  })
}
