import { YIELD_STRESS } from '../../catalogue/metals'
import { peopleBeneath } from '../../catalogue/reserves'
import { pascals } from '../../quantity/si'
import { hookFirstYield } from '../../statics/curvedBar'
import { closedRingLoad, openHookLoad, plasticMoment } from '../../statics/wire'
import type { Finding } from '../finding'
import { hookLoad } from '../hookLoad'
import { reserve, type LinkResult } from '../linkResult'
import type { Solved } from '../solved'
import { fromCatalogue, worked } from '../term'
import { byTestHang, liftFindings, testHangFaults, testMassFor } from '../testHang'
import { reserveTerms, strengthReserve } from '../timeFactors'
import { isWorse } from '../verdict'
import { temperAssumed } from './assumedPart'
import { assessPlace } from './fixing/assessPlace'
import { ratedFactors, wireTerms } from './ringLink'

/**
 * The hook's bowl: rated, or open wire by a plastic hinge opposite its mouth, or a closed eye by ring
 * collapse; straight pull, N. An unmarked one of unknown metal may have held a test hang (TEST_HANG_LIFTS,
 * or HOOK_UNMARKED where one would settle it). Over people an open hook is refused: a bump may lift the ring out
 * (HOOK_OPEN_OVER_PEOPLE). What a customer told counts less (TOLD_BY_CUSTOMER). HOOK_MAY_OPEN from its first yield on; HOOK_MAY_UNSCREW where twisted legs hang from a screw hook
 * without a swivel. No results where no hook carries.
 */
export function hookLink(solved: Solved): readonly LinkResult[] {
  const { answers } = solved.hanger
  if (answers['place.support'] !== 'ceilingHook' && answers['place.support'] !== 'wallHook') return []
  // A screw hook that is turned by what hangs from it may unscrew; said once.
  const turns = answers['fixing.kind'] === 'screwHook' && answers['make.build'] === 'spiral' && answers['connector.kind'] !== 'swivel'
  return hookInCases(solved).map((result): LinkResult => (turns && result.case === 'watered' ? { ...result, findings: [...result.findings, { code: 'HOOK_MAY_UNSCREW' }] } : result))
}

function hookInCases(solved: Solved): readonly LinkResult[] {
  const { answers } = solved.hanger
  // A latch keeps the ring in and adds no strength to the bowl.
  const bowl = answers['hook.kind'] !== 'closed'
  const refused = answers['hook.kind'] === 'open' && peopleBeneath(answers['place.beneath'])
  const findings: readonly Finding[] = refused ? [{ code: 'HOOK_OPEN_OVER_PEOPLE' }] : []
  // A test hang of the hanger alone says nothing of a hook that others hang from too.
  const tested = answers['hook.metal'] === 'unknown' && answers['rail.others'] === null && answers['make.arrangement'] !== 'row' && testHangFaults(solved, false)?.length === 0
  return solved.wholeCases.flatMap((code) => {
    const { load, terms: loadTerms } = hookLoad(solved, code)
    const base = { link: 'hook', side: 'place', case: code, demand: { value: load, unit: 'N' }, overallFactor: null, atLeast: refused ? 'fails' : 'holds', findings } as const
    const rated = answers['hook.rated']
    if (rated !== null) {
      const { factors, terms } = ratedFactors(solved, code)
      return temperAssumed(solved, ['hook.kind'], [assessPlace(solved, { ...base, part: 'rated', capacity: { value: rated, unit: 'N', basis: 'your own', source: 'rated load of the hook' }, factors, grade: 'rated', terms: [...loadTerms, ...terms] })])
    }
    const yieldStress = YIELD_STRESS[answers['hook.metal']]
    const stress = pascals(yieldStress.value)
    const wire = answers['hook.wire']
    const inside = answers['hook.inside']
    const capacity = bowl ? openHookLoad(wire, inside, stress) : closedRingLoad(wire, inside, stress)
    const reserveOf = strengthReserve(answers, solved.loads[code].case)
    // An open hook that is refused is refused whatever its wire.
    const wired = temperAssumed(solved, refused ? ['hook.kind'] : ['hook.kind', 'hook.wire', 'hook.inside'], [assessPlace(solved, {
      ...base,
      part: bowl ? 'wireHinge' : 'ringCollapse',
      capacity: { value: capacity, unit: 'N', basis: 'computed', source: bowl ? 'the pull that bends an open hook of this wire open for good' : 'the pull that bends a closed eye of this wire for good' },
      factors: [reserve(reserveOf)],
      grade: 'table',
      findings: bowl && load > hookFirstYield(wire, inside, stress) ? [...findings, { code: 'HOOK_MAY_OPEN', force: load }] : findings,
      terms: [
        ...loadTerms,
        ...wireTerms('d_h', wire, inside, fromCatalogue('yieldStress', 'f_y', yieldStress), plasticMoment(wire, stress)),
        worked('capacity', 'R', capacity, 'N', bowl ? 'M_p / r_m' : '4 * M_p / r_m', bowl ? 'hinge opposite the mouth, lever the mean radius' : 'four hinges, each arm the mean radius'),
        ...reserveTerms(reserveOf),
      ],
    })])
    const settles = answers['hook.metal'] === 'unknown' && !refused
    const untested = wired.map((w): LinkResult => (settles && isWorse(w.verdict, 'just holds') ? { ...w, findings: [...w.findings, { code: 'HOOK_UNMARKED', testMass: testMassFor(solved) }] } : w))
    if (!tested) return untested
    // A hook that held its test mass holds at least that; what its wire says counts where it says more.
    const held = temperAssumed(solved, ['hook.kind'], [assessPlace(solved, { ...base, part: 'testHang', ...byTestHang(solved, code), grade: 'tested', findings: [...findings, ...liftFindings(solved, false)] })])
    return held.some((h) => h.utilisation === null || h.utilisation > 1 || wired.some((w) => isWorse(h.verdict, w.verdict))) ? untested : held
  })
}
