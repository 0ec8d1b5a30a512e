import { BENDING_YIELD, DOWEL_BEARING, DOWEL_BEARING_POWER } from '../../catalogue/lateral'
import { value, type Value } from '../../catalogue/basis'
import { YIELD_STRESS } from '../../catalogue/metals'
import { WET_ACROSS } from '../../catalogue/places'
import { TIMBER_DURATION, TIMBER_GRAVITY } from '../../catalogue/timber'
import type { CaseCode } from '../../load/loadCases'
import { metres, newtons, pascals, type Metres, type Newtons } from '../../quantity/si'
import { projectingPin } from '../../statics/projectingPin'
import { plasticMoment } from '../../statics/wire'
import { asideLoad } from '../asideLoad'
import { bendingYield, woodBearing } from '../lateral'
import { reserve, type LinkResult, type Term } from '../linkResult'
import { placeLoad } from '../placeLoad'
import type { Solved } from '../solved'
import { entering, fromCatalogue, worked } from '../term'
import { reserveTerms, strengthReserve } from '../timeFactors'
import { madisonShare } from '../woodStrength'
import { temperAssumed } from './assumedPart'
import { assessPlace } from './fixing/assessPlace'
import { IN_TIMBER, threadsOf } from './fixing/threads'

/** The bar that stands out of the wall. */
interface Pin {
  readonly diameter: Metres
  readonly yieldStress: Value
  /** In timber: how deep it goes; null where it is held in something else, and bends at its face. */
  readonly depth: Metres | null
}

/**
 * A hook or nail standing out of a wall, bent by the weight that hangs on it, N. In timber by the yield theory of
 * dowels: it bends within the wood, or turns in it; board over the wood counts as air, and lasting load and damp weaken
 * the wood but not the metal. In a wall of anything else, or on a plate, it bends at the face. No result for
 * other supports, or where it does not stand out.
 */
export function pinLink(solved: Solved): readonly LinkResult[] {
  const { answers } = solved.hanger
  if (answers['place.support'] !== 'wallHook' || answers['hook.projection'] <= 0) return []
  const isHook = !isDriven(solved)
  const inTimber = answers['place.substrate'] === 'timber' && answers['fixing.count'] === 1
  const kind = inTimber ? IN_TIMBER[answers['fixing.kind']] : null
  const threads = kind === null && isHook ? null : threadsOf(solved, kind ?? IN_TIMBER[answers['fixing.kind']] ?? 'smoothNail')
  const bar = isHook || threads === null ? metres(answers['hook.wire']) : threads.root
  const pin: Pin = { diameter: bar, yieldStress: isHook ? YIELD_STRESS[answers['hook.metal']] : nailYield(bar), depth: kind === null || threads === null ? null : threads.penetration }
  const deciding = ['hook.projection', ...(isHook ? ['hook.wire'] as const : []), ...(threads?.deciding.filter((path) => path === 'fixing.penetration' ? pin.depth !== null : !isHook) ?? [])] as const
  return temperAssumed(solved, deciding, solved.wholeCases.map((code) => bent(solved, code, pin)))
}

/** A nail or screw is itself what stands out; otherwise the hook's wire does. */
const isDriven = ({ hanger: { answers } }: Solved): boolean => ['nail', 'woodScrew', 'lagScrew'].includes(answers['fixing.kind']) && answers['fixing.count'] === 1

function nailYield(diameter: Metres): Value {
  const { unit, basis, source, steps } = BENDING_YIELD.nail
  return value(bendingYield('nail', diameter) ?? steps.at(-1)?.[1] ?? 0, unit, basis, source)
}

function bent(solved: Solved, code: CaseCode, pin: Pin): LinkResult {
  const { answers } = solved.hanger
  const whole = placeLoad(solved, code)
  const reserveOf = strengthReserve(answers, solved.loads[code].case)
  const aside = asideLoad(solved, code, whole)
  const demand = aside === null ? whole.load : Math.max(whole.load, Math.hypot(aside.down, aside.side))
  const held = pin.depth === null ? atFace(answers['hook.projection'], pin) : inWood(solved, code, pin, pin.depth)
  return assessPlace(solved, {
    link: 'pin', part: pin.depth === null ? 'pinAtFace' : 'pinInWood', side: 'place', case: code, overallFactor: null,
    demand: { value: demand, unit: 'N' },
    capacity: { value: held.load, unit: 'N', basis: 'computed', source: 'the weight that bends what stands out of the wall for good' },
    factors: [reserve(reserveOf)], grade: 'table', atLeast: 'holds', findings: [],
    terms: [
      ...whole.terms, ...(aside?.terms ?? []),
      aside === null ? worked('demand', 'E', demand, 'N', whole.symbol, 'all of it hangs on what stands out') : worked('demand', 'E', demand, 'N', `max(${whole.symbol}, sqrt(P_d^2 + S^2))`, 'all of it hangs on what stands out, or less of it down and some to one side'),
      entering('wire', 'd_h', pin.diameter, 'm', 'your own', 'diameter of what stands out'),
      entering('lever', 'e', answers['hook.projection'], 'm', 'your own', 'from the wall to where it hangs'),
      fromCatalogue('yieldStress', 'f_y', pin.yieldStress),
      worked('plasticMoment', 'M_p', plasticMoment(pin.diameter, pascals(pin.yieldStress.value)), 'N m', 'f_y * d_h^3 / 6', 'plastic moment of a round bar'),
      ...held.terms, ...reserveTerms(reserveOf),
    ],
  })
}

interface Held {
  readonly load: Newtons
  readonly terms: readonly Term[]
}

function atFace(projection: number, { diameter, yieldStress }: Pin): Held {
  const load = newtons(plasticMoment(diameter, pascals(yieldStress.value)) / projection)
  return { load, terms: [worked('capacity', 'R', load, 'N', 'M_p / e', 'it bends at the face of the wall')] }
}

function inWood(solved: Solved, code: CaseCode, { diameter, yieldStress }: Pin, depth: Metres): Held {
  const { answers } = solved.hanger
  const { time } = solved.loads[code].case
  const gravity = TIMBER_GRAVITY[answers['place.timber']].handbook
  const damp = answers['place.exposure'] !== 'indoors'
  const duration = madisonShare(time)
  const bearing = woodBearing(gravity.value) * duration * (damp ? WET_ACROSS.value : 1)
  const between = answers['fixing.between']
  const { load } = projectingPin({ diameter, projection: metres(answers['hook.projection'] + between), depth, yieldStress: pascals(yieldStress.value), bearing: pascals(bearing) })
  return {
    load,
    terms: [
      entering('boardBetween', 'b_0', between, 'm', 'your own', 'board or plaster over the timber, which counts as air'),
      worked('leverInAll', 'e_0', answers['hook.projection'] + between, 'm', 'e + b_0', 'from the timber to where it hangs'),
      entering('penetration', 'L', depth, 'm', 'your own', 'length in the timber'),
      fromCatalogue('gravityIndex', 'G', gravity),
      fromCatalogue('bearingConstant', 'c_b', DOWEL_BEARING),
      fromCatalogue('bearingPower', 'n_b', DOWEL_BEARING_POWER),
      entering('loadTime', 't', time, 's', 'common practice', 'time under this load over the service life'),
      worked('duration', 'k_dur', duration, '1', `min(1, ${TIMBER_DURATION.a} + ${TIMBER_DURATION.b} * t^(-${TIMBER_DURATION.n}))`, `${TIMBER_DURATION.source}; of the wood only`),
      ...(damp ? [fromCatalogue('wetService', 'k_damp', WET_ACROSS)] : []),
      worked('bearingPerLength', 'q_b', bearing * diameter, 'N/m', `c_b * G^n_b * d_h * k_dur${damp ? ' * k_damp' : ''}`, DOWEL_BEARING.source),
      worked(
        'capacity', 'R', load, 'N', 'min(2 * M_p / (e_0 + sqrt(e_0^2 + 2 * M_p / q_b)), q_b * L^2 / (2 * (e_0 + L / 2 + sqrt((e_0 + L / 2)^2 + L^2 / 4))))',
        'yield theory of dowels (AWC Technical Report 12): it bends within the wood, or turns in it',
      ),
    ],
  }
}
