import { BENDING_YIELD, DOWEL_BEARING, DOWEL_BEARING_POWER, LAG_ACROSS_GRAIN, LATERAL_LIMIT, LATERAL_POWER, LATERAL_ULTIMATE_OVER_LIMIT, SCREW_LATERAL_PENETRATION } from '../../../catalogue/lateral'
import { value, type Value } from '../../../catalogue/basis'
import { YIELD_STRESS } from '../../../catalogue/metals'
import { THICK_YIELD_REDUCTION } from '../../../catalogue/places'
import { stepFrom } from '../../../catalogue/readCurve'
import { HARDWOOD_TIMBERS } from '../../../catalogue/timber'
import type { WoodKind } from '../../../catalogue/woods'
import type { Answers } from '../../../hanger/fields'
import { metres, pascals, type Metres } from '../../../quantity/si'
import { projectingPin } from '../../../statics/projectingPin'
import { plasticMoment } from '../../../statics/wire'
import { bendingYield, lateralLimit, woodBearing, yieldReduction } from '../../lateral'
import type { Term } from '../../linkResult'
import { entering, fromCatalogue, worked } from '../../term'
import type { Threads } from './threads'

/** Load across, N, with its lines; they end in the symbol R_V. */
interface Across {
  readonly load: number
  readonly terms: readonly Term[]
}

/** The column of tables by wood for a building timber. */
export const woodKindOf = (answers: Answers): WoodKind => (HARDWOOD_TIMBERS.includes(answers['place.timber']) ? 'hardwood' : 'softwood')

/** A lag thinner or thicker than the table of lags across the grain counts as its first, or as no more than its last. */
function withinLagTable(diameter: Metres): Metres {
  const thicknesses = LAG_ACROSS_GRAIN.steps.map(([d]) => d)
  return metres(Math.min(diameter, thicknesses.at(-1) ?? 0))
}

/**
 * Mean load across that breaks or tears out a fastening: its proportional limit times what lies above it (USDA Wood
 * Handbook, chapter 8), less in proportion where a screw has under 7 diameters in the wood. Pull-out beside it is a mean ultimate
 * too, so that the same factors apply to both.
 */
export function acrossUltimate(answers: Answers, { kind, diameter, penetration }: Threads, gravity: number): Across {
  const wood = woodKindOf(answers)
  const over = LATERAL_ULTIMATE_OVER_LIMIT[wood]
  const counted = kind === 'lagScrew' ? withinLagTable(diameter) : diameter
  const thin = kind === 'lagScrew' && counted < (LAG_ACROSS_GRAIN.steps[0]?.[0] ?? 0)
  const limit = lateralLimit(thin ? 'woodScrew' : kind, wood, gravity, counted) ?? 0
  const share = kind === 'smoothNail' || diameter === 0 ? 1 : Math.min(1, penetration / (SCREW_LATERAL_PENETRATION.value * diameter))
  const curve = LATERAL_LIMIT[thin ? 'woodScrew' : kind][wood]
  const table: Value = value(stepFrom(curve.steps, gravity) ?? 0, curve.unit, curve.basis, curve.source)
  const power = LATERAL_POWER[kind].value
  return {
    load: limit * over.value * share,
    terms: [
      fromCatalogue('lateralConstant', 'K_l', table),
      ...(kind === 'lagScrew' && !thin ? [entering('acrossGrain', 'k_across', counted === 0 ? 1 : limit / (table.value * counted ** power), '1', LAG_ACROSS_GRAIN.basis, LAG_ACROSS_GRAIN.source)] : []),
      ...(counted === diameter ? [] : [entering('countedDiameter', 'D_l', counted, 'm', 'computed', 'no thicker than the table of lags goes')]),
      fromCatalogue('overLimit', 'c_l', over),
      entering('lateralDepth', 'k_l', share, '1', 'computed', `share of its full side load by its depth: ${SCREW_LATERAL_PENETRATION.source}`),
      worked('alongCapacity', 'R_V', limit * over.value * share, 'N', `c_l * K_l * ${counted === diameter ? 'D' : 'D_l'}^${power} * k_l${kind === 'lagScrew' && !thin ? ' * k_across' : ''}`, curve.source),
    ],
  }
}

/** Yield stress of the fastening in bending: a hook’s own metal, else a nail’s, screw’s or lag’s by its thickness. */
function yieldOf(answers: Answers, { kind, root }: Pick<Threads, 'kind' | 'root'>): Value {
  if (answers['fixing.kind'] === 'screwHook') return YIELD_STRESS[answers['hook.metal']]
  const curve = kind === 'lagScrew' ? BENDING_YIELD.lag : BENDING_YIELD.nail
  const found = bendingYield(kind === 'lagScrew' ? 'lag' : 'nail', root) ?? bendingYield('lag', root) ?? BENDING_YIELD.lag.steps.at(-1)?.[1] ?? 0
  return value(found, curve.unit, curve.basis, curve.source)
}

/**
 * Load allowed across a fastening with nothing but thin metal on the wood: yield of a dowel at the wood's face,
 * by its root, over the reduction of the National Design Specification (12.3).
 */
export function acrossAllowable(answers: Answers, threads: Threads, gravity: number): Across {
  const { root, penetration } = threads
  const fyb = yieldOf(answers, threads)
  const bearing = woodBearing(gravity)
  const reduction = yieldReduction(root) ?? THICK_YIELD_REDUCTION.value
  const { load } = projectingPin({ diameter: root, projection: metres(0), depth: penetration, yieldStress: pascals(fyb.value), bearing })
  return {
    load: load / reduction,
    terms: [
      entering('rootDiameter', 'D_r', root, 'm', 'computed', 'diameter at the root of the thread, of a nail the whole'),
      fromCatalogue('bendingYield', 'F_yb', fyb),
      fromCatalogue('bearingConstant', 'c_b', DOWEL_BEARING),
      fromCatalogue('bearingPower', 'n_b', DOWEL_BEARING_POWER),
      worked('bearingPerLength', 'q_b', bearing * root, 'N/m', 'c_b * G^n_b * D_r', DOWEL_BEARING.source),
      worked('plasticMoment', 'M_y', plasticMoment(root, pascals(fyb.value)), 'N m', 'F_yb * D_r^3 / 6', 'plastic moment of a round bar'),
      entering('yieldReduction', 'R_d', reduction, '1', 'published', 'AWC National Design Specification, 12.3: what yield is divided by'),
      worked('alongCapacity', 'R_V', load / reduction, 'N', 'min(sqrt(2 * M_y * q_b), q_b * L / (1 + sqrt(2))) / R_d', 'yield of a dowel at the wood’s face: it bends, or turns in the wood'),
    ],
  }
}
