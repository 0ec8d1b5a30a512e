import { inCase, type CordStrengths } from '../check/cordStrength'
import type { LinkResult } from '../check/linkResult'
import type { Solved } from '../check/solved'
import { bundleStrength } from './bundle'
import type { CordNow } from './cordNow'
import type { Layout } from './layout'
import type { Member, RatioIn } from './member'

/**
 * A part of cord whose pull goes with the weight: the wraps that hold the legs together, a top cord, cords above a ring, the
 * strands of a wall planter. The check's demand, scaled; its strands each drawn.
 */
export function cordMember(solved: Solved, strengths: CordStrengths['leg'], results: readonly LinkResult[], layout: Layout, cord: CordNow, ratioIn: RatioIn): Member {
  const [any] = results
  const term = (code: 'strandsThatCarry' | 'efficiency'): number | undefined => any?.terms.find((t) => t.code === code)?.value
  const strands = Math.max(1, Math.round(term('strandsThatCarry') ?? 1))
  const effective = any?.factors.find((f) => f.code === 'effectiveStrands' || f.code === 'strandsAtWraps')?.value ?? 1
  const knot = cord.knot(any?.part ?? 'whole', effective / strands)
  const first = layout.take('strands', strands)
  const cases = results.flatMap((result) => {
    if (result.capacity === null || result.demand === null) return []
    const loadCase = solved.loads[result.case].case
    const strength = inCase(strengths, loadCase)
    return [{ code: result.case, counted: result.capacity.value, demand: result.demand.value, roll: cord.roll(strength), strand: cord.strand(strength), left: cord.left(result.factors, loadCase), strength: 0 }]
  })
  const scratch = new Float64Array(strands)
  return {
    draw: (z) => {
      for (const one of cases) {
        for (let i = 0; i < strands; i += 1) scratch[i] = one.strand(z[first + i]!)
        one.strength = one.counted * one.roll(z) * one.left(z) * knot(z) * bundleStrength(scratch, strands)
      }
    },
    use: (code) => {
      const one = cases.find((c) => c.code === code)
      return one === undefined ? 0 : (one.demand * ratioIn(code)) / one.strength
    },
  }
}
