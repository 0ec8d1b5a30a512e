import { PIVOT_RISE } from '../catalogue/places'
import { SUBSTRATE_ROUTES, type Substrate } from '../catalogue/substrates'
import type { Answers } from '../hanger/fields'
import type { CaseCode } from '../load/loadCases'
import { metres, newtons, radians } from '../quantity/si'
import { bracketScrews, type ScrewPlace } from '../statics/bracket'
import { asideLoad } from './asideLoad'
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
 * arm, swung wherever, also the side moment. Pulled aside at its end, by S, a fixed arm turns its plate on a
 * side edge as well, S a / (n w / 2) on each screw of one upright row, a swing arm follows; away from the wall S pulls straight out. No answer where no screw stands above that edge
 * (BRACKET_NO_LEVER); a swing arm on one screw turns round it and fails (BRACKET_TURNS).
 */
export function bracketDemand(solved: Solved, code: CaseCode, { load, symbol, terms }: PlaceLoad): PlaceDemandOutcome {
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
  const [hangs, shares] = [Math.max(...straight.pulls), Math.max(...aside.shears)]
  const pulled = asideLoad(solved, code, { load, symbol })
  const wide = answers['bracket.wide']
  const [out, along] = pulled === null
    ? [0, 0]
    : [(pulled.down / load) * hangs + pulled.side * (swings ? 1 : Math.max(1, reach / ((levers.length * wide) / 2))), (pulled.down / load) * shares + pulled.side / levers.length]
  const [pull, shear] = [Math.max(hangs, out), Math.max(shares, along)]
  const shearOf = (down: string): string => (swings ? `sqrt((${down} * a * y_m / S_m)^2 + (${down} / n_s)^2)` : `${down} / n_s`)
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
      ...(pulled === null ? [] : [...pulled.terms, ...(swings ? [] : [entering('plateWide', 'w_p', wide, 'm', 'your own', 'width of the bracket’s plate')])]),
      worked(
        'pullOut', 'E_N', pull, 'N',
        pulled === null ? `${symbol} * a * y_1 / S_y` : `max(${symbol} * a * y_1 / S_y, P_d * a * y_1 / S_y + S${swings ? '' : ' * max(1, a / (n_s * w_p / 2))'})`,
        pulled === null ? 'a stiff bracket turns on its lower edge' : swings ? 'a stiff bracket turns on its lower edge, or is pulled straight out besides' : 'a stiff bracket turns on its lower edge, or on that and a side edge',
      ),
      ...(swings ? sideTerms(levers) : []),
      worked('along', 'E_V', shear, 'N', pulled === null ? shearOf(symbol) : `max(${shearOf(symbol)}, ${shearOf('P_d')} + S / n_s)`, swings ? 'swung to the side, the arm turns the plate in the plane of the wall' : 'the screws share the weight'),
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
