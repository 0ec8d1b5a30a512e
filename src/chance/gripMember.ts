import { FRICTION, WRAPS } from '../catalogue/scatter'
import type { LinkResult } from '../check/linkResult'
import type { Layout } from './layout'
import type { Member, RatioIn } from './member'
import { realStrength } from './partMember'
import { overCounted } from './spread'

/**
 * The grip of the gathering knot by its model: with more friction the pot and the turn into the wraps hold back more of the
 * pull, and the wraps grip harder; how tight they were pulled is drawn besides.
 */
export function gripMember(results: readonly LinkResult[], layout: Layout, friction: number, ratioIn: RatioIn): Member {
  const [overFriction, overWraps] = [overCounted(FRICTION), overCounted(WRAPS)]
  const wraps = layout.take('wraps', 1)
  const cases = new Map(results.map((result) => {
    const pull = result.terms.find((t) => t.code === 'knotPull')?.value ?? 0
    const slip = result.terms.find((t) => t.code === 'slipPull')?.value ?? pull
    // mu_pot alpha + mu alpha_w, as the check reckoned it: T e^-x reaches the wraps.
    const turned = pull > 0 && slip > 0 ? Math.log(pull / slip) : 0
    return [result.case, { demand: result.demand?.value ?? 0, strength: realStrength(result), turned }]
  }))
  let [mu, tight] = [1, 1]
  return {
    draw: (z) => {
      mu = overFriction(z[friction]!)
      tight = overWraps(z[wraps]!)
    },
    use: (code) => {
      const grip = cases.get(code)
      return grip === undefined ? 0 : (grip.demand * ratioIn(code) * Math.exp((1 - mu) * grip.turned)) / (grip.strength * mu * tight)
    },
  }
}
