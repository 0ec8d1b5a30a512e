import type { RandomGenerator } from 'pure-rand/types/RandomGenerator'
import type { Chain } from './chain'
import { fillNormals } from './normals'
import { CHANCE_CASES, type ChanceCase } from './tally'

/** Hangers by which the scatter of each part is found before the others are drawn. */
const PILOT = 200
/** Standard deviation of a logarithm below which a part counts as certain. */
const LEAST_DEVIATION = 0.01
/** Use below which nothing more is told, and beyond which a part bears nothing. */
export const [LEAST_USE, MOST_USE] = [1e-6, 1e3]

/** Demand over real strength of the part of a hanger drawn last, in the way in which it gives way first. */
export function useOf({ members }: Chain['parts'][number], code: ChanceCase): number {
  let most = LEAST_USE
  for (const member of members) most = Math.max(most, member.use(code))
  return Math.min(MOST_USE, most)
}

/** Standard deviation of the logarithm of each part's use, by situation, in the order of the parts. */
export type Deviations = Readonly<Record<ChanceCase, Float64Array>>

/**
 * How much each part's use scatters: by it parts are compared, for a part that works at half its strength and scatters little is
 * further from failing than one at a quarter that scatters much (safety index, C. A. Cornell, ACI Journal 66, 1969).
 */
export function deviationsOf(chain: Chain, generator: RandomGenerator): Deviations {
  const z = new Float64Array(chain.size)
  const count = chain.parts.length
  const sums = new Map(CHANCE_CASES.map((code) => [code, { sum: new Float64Array(count), squares: new Float64Array(count) }]))
  for (let i = 0; i < PILOT; i += 1) {
    fillNormals(generator, z)
    chain.draw(z)
    for (const [code, { sum, squares }] of sums) {
      chain.parts.forEach((part, p) => {
        const log = Math.log(useOf(part, code))
        sum[p]! += log
        squares[p]! += log * log
      })
    }
  }
  const deviations = (code: ChanceCase): Float64Array => {
    const { sum, squares } = sums.get(code) ?? { sum: new Float64Array(count), squares: new Float64Array(count) }
    return sum.map((s, p) => Math.max(LEAST_DEVIATION, Math.sqrt(Math.max(0, (squares[p]! - (s * s) / PILOT) / (PILOT - 1)))))
  }
  return { dry: deviations('dry'), watered: deviations('watered'), flooded: deviations('flooded'), bump: deviations('bump') }
}
