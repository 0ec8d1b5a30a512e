import { PIVOT_RISE } from '../catalogue/places'
import { SUBSTRATE_ROUTES, type Substrate } from '../catalogue/substrates'
import type { Answers } from '../hanger/fields'
import { metres, newtons, radians } from '../quantity/si'
import { bracketScrews, type ScrewPlace } from '../statics/bracket'
import type { Term } from './linkResult'
import type { PlaceDemandOutcome, PlaceLoad } from './placeLoad'
import type { Solved } from './solved'
import { entering, fromCatalogue, worked } from './term'

const inBoard = ({ 'place.substrate': substrate }: Answers): boolean => Object.hasOwn(SUBSTRATE_ROUTES, substrate) && SUBSTRATE_ROUTES[substrate as Substrate] === 'byBoard'

/** Heights of a bracket's screws above the edge or the point on which it turns, from the highest down, m; evenly from the highest to the lowest. */
export function screwLevers(answers: Answers): readonly number[] {
  const n = answers['bracket.screws']
  const [top, bottom] = [answers['bracket.top'], answers['bracket.bottom']]
  const pivot = inBoard(answers) ? PIVOT_RISE.value : 0
  return Array.from({ length: n }, (_, i) => Math.max(0, (n === 1 ? top : top - ((top - bottom) * i) / (n - 1)) - pivot))
}

/**
 * What the worst screw of a bracket bears, N: the pull of the highest, T = W a y / sum y^2, turning on the lower
 * edge of its plate (10 mm above it on plasterboard), and its share of the weight along the wall; of a swing
 * arm, swung wherever, also the side moment. No answer where no screw stands above that edge
 * (BRACKET_NO_LEVER); a swing arm on one screw turns round it and fails (BRACKET_TURNS).
 */
export function bracketDemand(solved: Solved, { load, symbol, terms }: PlaceLoad): PlaceDemandOutcome {
  const { answers } = solved.hanger
  const reach = answers['bracket.reach']
  const levers = screwLevers(answers)
  const screws = levers.map((up): ScrewPlace => ({ across: metres(0), up: metres(up) }))
  const swings = answers['place.support'] === 'swingArm'
  const at = (swing: number) => bracketScrews({ load: newtons(load), reach: metres(reach), swing: radians(swing), screws })
  const [straight, aside] = [at(0), swings ? at(Math.PI / 2) : at(0)]
  if (!straight.ok || !aside.ok) {
    const turns = straight.ok
    return { ok: false, finding: { code: turns ? 'BRACKET_TURNS' : 'BRACKET_NO_LEVER' }, fails: turns, terms }
  }
  const [pull, shear] = [Math.max(...straight.pulls), Math.max(...aside.shears)]
  const squares = levers.reduce((sum, y) => sum + y * y, 0)
  return {
    ok: true, pull, shear, load,
    terms: [
      ...terms,
      entering('reach', 'a', reach, 'm', 'your own', 'from the wall to where it hangs'),
      entering('screws', 'n_s', levers.length, '1', 'your own', 'screws of the bracket'),
      ...(inBoard(answers) ? [fromCatalogue('pivotRise', 'y_p', PIVOT_RISE)] : []),
      entering('highestScrew', 'y_1', levers[0] ?? 0, 'm', 'computed', 'highest screw above the edge on which the plate turns'),
      entering('leverSquares', 'S_y', squares, 'm2', 'computed', 'sum of the squares of all such heights'),
      worked('pullOut', 'E_N', pull, 'N', `${symbol} * a * y_1 / S_y`, 'a stiff bracket turns on its lower edge'),
      ...(swings ? sideTerms(levers) : []),
      worked('along', 'E_V', shear, 'N', swings ? `sqrt((${symbol} * a * y_m / S_m)^2 + (${symbol} / n_s)^2)` : `${symbol} / n_s`, swings ? 'swung to the side, the arm turns the plate in the plane of the wall' : 'the screws share the weight'),
    ],
  }
}

function sideTerms(levers: readonly number[]): readonly Term[] {
  const middle = levers.reduce((sum, y) => sum + y, 0) / levers.length
  return [
    entering('middleLever', 'y_m', (levers[0] ?? 0) - middle, 'm', 'computed', 'highest screw above the middle of them all'),
    entering('middleSquares', 'S_m', levers.reduce((sum, y) => sum + (y - middle) ** 2, 0), 'm2', 'computed', 'sum of the squares of their distances from the middle'),
  ]
}
