import { PLAIN_STRAND } from '../../catalogue/knots'
import { newtons } from '../../quantity/si'
import { splayHoop } from '../../statics/friction'
import { inCase, stillApplying } from '../cordStrength'
import { factor, assessLink, type LinkResult } from '../linkResult'
import { saySettlingTests } from '../saySettlingTests'
import type { Solved } from '../solved'
import { entering, worked } from '../term'
import { cordFactors } from '../timeFactors'

/**
 * The top wrap of the gathering knot, which holds all the legs together where they splay: hoop
 * tension N T / (2 pi). One wrap is taken to bear it alone, and no friction over the pot is counted on.
 */
export function wrapHoopLink(solved: Solved): readonly LinkResult[] {
  const { answers } = solved.hanger
  const watered = solved.slings?.watered.sum ?? null
  const plain = solved.cord.wrap.dry.capacity
  return saySettlingTests(solved, solved.wholeCases.map((code) => {
    const cord = inCase(solved.cord.wrap, solved.loads[code].case)
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
      factors: [{ ...factor('effectiveStrands', PLAIN_STRAND) }, ...stillApplying(cord, time.factors)],
      grade: cord.grade,
      overallFactor: plain === null || watered === null ? null : plain.value / splayHoop(1, newtons(watered)),
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
  }))
}
