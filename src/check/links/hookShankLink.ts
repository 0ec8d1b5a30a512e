import { YIELD_STRESS } from '../../catalogue/metals'
import { pascals, type Metres } from '../../quantity/si'
import { plasticMoment, shankSidePull } from '../../statics/wire'
import { asidePull } from '../asideLoad'
import { assessLink, reserve, type LinkResult } from '../linkResult'
import type { CaseLoad, Solved } from '../solved'
import { entering, fromCatalogue, worked } from '../term'
import { reserveTerms, strengthReserve } from '../timeFactors'
import { temperAssumed } from './assumedPart'

/**
 * The hook's shank where it leaves the ceiling, bent by the side pull of each case that has one, as at the end of a
 * swing: capacity Mp over the lever to the bowl, N. A rated hook is bent too: its rating is for a
 * straight pull. No result where the bowl sits at the ceiling, or for other supports: what stands out of a
 * wall is the pin.
 */
export function hookShankLink(solved: Solved): readonly LinkResult[] {
  const { answers } = solved.hanger
  const lever = answers['hook.projection']
  if (answers['place.support'] !== 'ceilingHook' || lever <= 0) return []
  return temperAssumed(solved, ['hook.wire', 'hook.projection'], solved.wholeCases.flatMap((code) => (solved.loads[code].side > 0 ? [bent(solved, solved.loads[code], lever)] : [])))
}

function bent(solved: Solved, load: CaseLoad, lever: Metres): LinkResult {
  const { answers } = solved.hanger
  const yieldStress = YIELD_STRESS[answers['hook.metal']]
  const stress = pascals(yieldStress.value)
  const wire = answers['hook.wire']
  const capacity = shankSidePull(wire, lever, stress)
  const reserveOf = strengthReserve(answers, load.case)
  // Of a swing along a stick all may go to one of its hooks; a gust blows at all that hangs there.
  const share = Math.max(1, asidePull(solved, load.case.code)?.share ?? 1)
  const demand = load.side * share
  return assessLink({
    link: 'hookShank', part: 'shankBending', side: 'place', case: load.case.code,
    demand: { value: demand, unit: 'N' },
    capacity: { value: capacity, unit: 'N', basis: 'computed', source: 'the weight that bends a shank of this wire for good' },
    factors: [reserve(reserveOf)],
    grade: 'table',
    overallFactor: null,
    atLeast: 'holds',
    findings: [],
    terms: [
      entering('weight', 'W', load.weight / load.factor, 'N', 'computed', 'weight at rest in this state'),
      entering('sidePull', 's', load.sideShare, '1', 'computed', load.sideSource),
      ...(share === 1 ? [] : [entering('hookShare', 'k_o', share, '1', 'computed', 'all that hangs there and is blown at, over this hanger’s own weight')]),
      worked('demand', 'E', demand, 'N', share === 1 ? 'W * s' : 'W * s * k_o', 'balance along the ceiling'),
      entering('wire', 'd_h', wire, 'm', 'your own', 'diameter of the shank'),
      entering('lever', 'e', lever, 'm', 'your own', 'from the ceiling to the bowl'),
      fromCatalogue('yieldStress', 'f_y', yieldStress),
      worked('plasticMoment', 'M_p', plasticMoment(wire, stress), 'N m', 'f_y * d_h^3 / 6', 'plastic moment of round wire'),
      worked('capacity', 'R', capacity, 'N', 'M_p / e', 'bending where the shank leaves the ceiling'),
      ...reserveTerms(reserveOf),
    ],
  })
}
