import { YIELD_STRESS } from '../../catalogue/metals'
import { peopleBeneath } from '../../catalogue/reserves'
import { CASES_WHOLE } from '../../load/loadCases'
import { pascals } from '../../quantity/si'
import { closedRingLoad, openHookLoad, plasticMoment } from '../../statics/wire'
import type { Finding } from '../finding'
import { assessLink, reserve, type LinkResult } from '../linkResult'
import type { Solved } from '../solved'
import { fromCatalogue, worked } from '../term'
import { reserveTerms, strengthReserve } from '../timeFactors'
import { temperAssumed } from './assumedPart'
import { ratedFactors, wireTerms } from './ringLink'
import { weightTerms } from './weightTerms'

/**
 * The hook's bowl: rated, or open wire by a plastic hinge opposite its mouth, or a closed eye by ring
 * collapse; straight pull, N. Over people an open hook is refused: a bump may lift the ring out
 * (HOOK_OPEN_OVER_PEOPLE).
 */
export function hookLink(solved: Solved): readonly LinkResult[] {
  const { answers } = solved.hanger
  // A latch keeps the ring in and adds no strength to the bowl.
  const bowl = answers['hook.kind'] !== 'closed'
  const refused = answers['hook.kind'] === 'open' && peopleBeneath(answers['place.beneath'])
  const findings: readonly Finding[] = refused ? [{ code: 'HOOK_OPEN_OVER_PEOPLE' }] : []
  // An open hook that is refused is refused whatever its wire.
  return temperAssumed(solved, refused || answers['hook.rated'] !== null ? ['hook.kind'] : ['hook.kind', 'hook.wire', 'hook.inside'], CASES_WHOLE.map((code) => {
    const load = solved.loads[code]
    const base = { link: 'hook', side: 'place', case: code, demand: { value: load.weight, unit: 'N' }, overallFactor: null, atLeast: refused ? 'fails' : 'holds', findings } as const
    const rated = answers['hook.rated']
    if (rated !== null) {
      const { factors, terms } = ratedFactors(solved, code)
      return assessLink({ ...base, part: 'rated', capacity: { value: rated, unit: 'N', basis: 'your own', source: 'rated load of the hook' }, factors, grade: 'rated', terms: [...weightTerms(solved, code), ...terms] })
    }
    const yieldStress = YIELD_STRESS[answers['hook.metal']]
    const stress = pascals(yieldStress.value)
    const wire = answers['hook.wire']
    const inside = answers['hook.inside']
    const capacity = bowl ? openHookLoad(wire, inside, stress) : closedRingLoad(wire, inside, stress)
    const reserveOf = strengthReserve(answers, load.case)
    return assessLink({
      ...base,
      part: bowl ? 'wireHinge' : 'ringCollapse',
      capacity: { value: capacity, unit: 'N', basis: 'computed', source: bowl ? 'the pull that bends an open hook of this wire open for good' : 'the pull that bends a closed eye of this wire for good' },
      factors: [reserve(reserveOf)],
      grade: 'table',
      terms: [
        ...weightTerms(solved, code),
        ...wireTerms('d_h', wire, inside, fromCatalogue('yieldStress', 'f_y', yieldStress), plasticMoment(wire, stress)),
        worked('capacity', 'R', capacity, 'N', bowl ? 'M_p / r_m' : '4 * M_p / r_m', bowl ? 'hinge opposite the mouth, lever the mean radius' : 'four hinges, each arm the mean radius'),
        ...reserveTerms(reserveOf),
      ],
    })
  }))
}
