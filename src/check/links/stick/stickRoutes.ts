import { value, type Value } from '../../../catalogue/basis'
import { LOWER_TAIL, WOOD_SCATTER } from '../../../catalogue/sticks'
import { TIMBER_DURATION } from '../../../catalogue/timber'
import type { CaseCode } from '../../../load/loadCases'
import { assessLink, factor, reserve, type Evidence, type LinkResult } from '../../linkResult'
import type { Solved } from '../../solved'
import { stickBeam, type NoStickBeam, type StickBeam } from '../../stickBeam'
import { stickWood } from '../../stickWood'
import { entering, fromCatalogue, worked } from '../../term'
import { allowableReserve, reserveTerms, strengthReserve } from '../../timeFactors'
import { lowerTail, madisonShare } from '../../woodStrength'
import { allowableDuration } from '../fixing/fixingTimber'
import { weightTerms } from '../weightTerms'
import { bendingCapacity, shearCapacity } from './stickSums'

type Way = 'bending' | 'shear'

/**
 * A stick by its wood, in every case: bent and sheared, each by two routes that are never mixed. The ultimate
 * one takes the mean strength, its low (5 %) value, what a load of that time leaves (Madison curve) and the usual
 * reserve; the allowable one a permissible stress for ten years (ASTM D245) with the load duration of its table
 * and the reserve on safe values. An accident goes by the ultimate route alone.
 */
export const stickRoutes = (solved: Solved): readonly LinkResult[] => solved.wholeCases.flatMap((code): readonly LinkResult[] => {
  const beam = stickBeam(solved, code)
  if (!beam.ok) return [withoutBeam(solved, code, beam)]
  return (['bending', 'shear'] as const).flatMap((way) => [
    ultimate(solved, code, beam, way),
    ...(solved.loads[code].case.accidental ? [] : [allowable(solved, code, beam, way)]),
  ])
})

/** The stick cannot hang so. */
export function withoutBeam(solved: Solved, code: CaseCode, { finding, fails }: NoStickBeam): LinkResult {
  return assessLink({
    link: 'stick', part: 'whole', side: 'hanger', case: code, demand: { value: solved.loads[code].weight, unit: 'N' }, capacity: null, factors: [],
    grade: 'table', overallFactor: null, atLeast: fails ? 'fails' : 'not enough known', findings: [finding], terms: weightTerms(solved, code),
  })
}

const scatterOf = (way: Way): Value => {
  const variation = WOOD_SCATTER[way === 'bending' ? 'rupture' : 'shear']
  return value(lowerTail(variation.value), '1', variation.basis, `1 - ${LOWER_TAIL.value} x ${variation.value}: ${variation.source}`)
}

const sumOf = (way: Way) => (way === 'bending' ? bendingCapacity : shearCapacity)

/** What all results of the stick share. Culms differ more than boards: bamboo just holds at best, and is not known where its hollow is not. */
function common(solved: Solved, code: CaseCode): Pick<Evidence, 'link' | 'side' | 'case' | 'demand' | 'grade' | 'overallFactor' | 'atLeast' | 'findings'> {
  const { answers } = solved.hanger
  const atLeast = answers['stick.wood'] !== 'bamboo' ? 'holds' : answers['stick.hollow'] === null ? 'not enough known' : 'just holds'
  return { link: 'stick', side: 'hanger', case: code, demand: { value: solved.loads[code].weight, unit: 'N' }, grade: 'table', overallFactor: null, atLeast, findings: [] }
}

function ultimate(solved: Solved, code: CaseCode, beam: StickBeam, way: Way): LinkResult {
  const { answers } = solved.hanger
  const wood = stickWood(answers)
  const loadCase = solved.loads[code].case
  const mean = way === 'bending' ? wood.rupture : wood.shear
  const sum = sumOf(way)(answers, beam, way === 'bending'
    ? { stress: mean.value * wood.grain.value, formula: 'f_m * k_slope', source: 'mean bending strength, its grain allowed for', terms: [fromCatalogue('rupture', 'f_m', mean), fromCatalogue('grainShare', 'k_slope', wood.grain)] }
    : { stress: mean.value, formula: 'f_m', source: 'mean shear strength', terms: [fromCatalogue('shearStrength', 'f_m', mean)] })
  const duration = value(madisonShare(loadCase.time), '1', TIMBER_DURATION.basis, TIMBER_DURATION.source)
  const reserveOf = strengthReserve(answers, loadCase)
  return assessLink({
    ...common(solved, code), part: way === 'bending' ? 'stickBending' : 'stickShear',
    capacity: { value: sum.capacity, unit: 'N', basis: mean.basis, source: mean.source },
    factors: [factor('scatter', scatterOf(way)), factor('duration', duration), reserve(reserveOf)],
    terms: [
      ...weightTerms(solved, code), ...sum.terms,
      entering('loadTime', 't', loadCase.time, 's', 'common practice', 'time under this load over the service life'),
      worked('duration', 'k_dur', duration.value, '1', `min(1, ${TIMBER_DURATION.a} + ${TIMBER_DURATION.b} * t^(-${TIMBER_DURATION.n}))`, TIMBER_DURATION.source),
      ...reserveTerms(reserveOf),
    ],
  })
}

function allowable(solved: Solved, code: CaseCode, beam: StickBeam, way: Way): LinkResult {
  const { answers } = solved.hanger
  const wood = stickWood(answers)
  const loadCase = solved.loads[code].case
  const scatter = scatterOf(way)
  const bending = way === 'bending'
  const mean = bending ? wood.rupture : wood.shear
  const divisor = bending ? wood.bendingDivisor : wood.shearDivisor
  const sum = sumOf(way)(answers, beam, {
    stress: (mean.value * scatter.value * (bending ? wood.grain.value : 1)) / divisor.value,
    formula: bending ? 'f_m * k_low * k_slope / q' : 'f_m * k_low / q',
    source: divisor.source,
    terms: [
      fromCatalogue(bending ? 'rupture' : 'shearStrength', 'f_m', mean), fromCatalogue('lowShare', 'k_low', scatter),
      ...(bending ? [fromCatalogue('grainShare', 'k_slope', wood.grain)] : []), fromCatalogue('stickDivisor', 'q', divisor),
    ],
  })
  const reserveOf = allowableReserve(answers, loadCase)
  return assessLink({
    ...common(solved, code), part: bending ? 'stickBendingAllowed' : 'stickShearAllowed',
    capacity: { value: sum.capacity, unit: 'N', basis: divisor.basis, source: divisor.source },
    factors: [factor('duration', allowableDuration(loadCase)), reserve(reserveOf)],
    terms: [...weightTerms(solved, code), ...sum.terms, ...reserveTerms(reserveOf)],
  })
}
