import { PART_SPREADS, type PartSpread } from '../catalogue/scatter'
import type { LinkResult, Part } from '../check/linkResult'
import type { FactorCode } from '../check/termCodes'
import type { Layout } from './layout'
import type { Member, RatioIn } from './member'
import { overCounted } from './spread'

/** How the strength of a part that is not of cord scatters, by the way it was found. */
const SPREAD_OF: Readonly<Partial<Record<Part, PartSpread>>> = {
  ultimateRoute: 'pulledOut', stickBending: 'woodBent', stickShear: 'woodSheared', pinInWood: 'pinInWood', pinAtFace: 'metal',
  wireHinge: 'metal', ringCollapse: 'metal', shankBending: 'metal', armHinge: 'metal',
  rated: 'rated', weldedChain: 'rated', openChain: 'rated', lowTable: 'lowTable', testHang: 'tested', pulledInPlace: 'tested',
}

/** Ways to the same strength by what a book allows: it hides a safety, so the other way counts. */
const ALLOWED: readonly Part[] = ['allowableRoute', 'stickBendingAllowed', 'stickShearAllowed']
export const isAllowed = ({ part }: Pick<LinkResult, 'part'>): boolean => ALLOWED.includes(part)

/** Factors that are no property of the part: reserves, what may be asked of it for a moment, and the low value that drawing replaces. */
const NOT_REAL: readonly FactorCode[] = ['reserve', 'forAMoment', 'scatter']

/** What a result says a part really bears, N or m, its reserve and low values left out. */
export const realStrength = ({ capacity, factors }: Pick<LinkResult, 'capacity' | 'factors'>): number =>
  factors.filter((f) => !NOT_REAL.includes(f.code)).reduce((product, f) => product * f.value, capacity?.value ?? 0)

/** A part that is not of cord, found in one way: its demand goes with the weight, its strength is drawn. */
export function partMember(results: readonly LinkResult[], layout: Layout, ratioIn: RatioIn): Member {
  const [any] = results
  const over = overCounted(PART_SPREADS[(any === undefined ? undefined : SPREAD_OF[any.part]) ?? 'other'])
  const place = any === undefined ? 0 : layout.take(`strength.${any.link}`, 1)
  const cases = new Map(results.map((result) => [result.case, (result.demand?.value ?? 0) / realStrength(result)]))
  let drawn = 1
  return {
    draw: (z) => { drawn = over(z[place]!) },
    use: (code) => ((cases.get(code) ?? 0) * ratioIn(code)) / drawn,
  }
}
