import { FILLER_IN_KNOTS, PLAIN_STRAND } from '../../../catalogue/knots'
import type { CaseCode } from '../../../load/loadCases'
import { metres, newtons } from '../../../quantity/si'
import { diamondNet, strandsForDiamond } from '../../../statics/diamondNet'
import { inCase, stillApplying } from '../../cordStrength'
import { assessLink, type LinkResult } from '../../linkResult'
import { carryInKnots } from '../../panel/panelSections'
import { panelGroups } from '../../panel/panelGroups'
import type { Solved } from '../../solved'
import { entering, fromCatalogue, worked } from '../../term'
import { cordFactors } from '../../timeFactors'
import { groupTerms } from './panelTerms'

/** Strands of a square knot. */
const IN_KNOT = 4

/**
 * The knots of a diamond net in front, where it was told: the most that one of them passes on, along strands that lean by
 * half the spacing over the distance of two rows; its rows run from the first knot down to the gathering knot. No
 * number where its strands do not fit (PANEL_NET_STRANDS). No results where the net was not told.
 */
export function panelNet(solved: Solved, code: CaseCode): readonly LinkResult[] {
  const { answers } = solved.hanger
  const knots = answers['panel.knots']
  const [front] = panelGroups(solved, code)
  if (knots === null || answers['cradle.kind'] !== 'net' || front === undefined || front.tension === null) return []
  const { case: loadCase } = solved.loads[code]
  const cord = inCase(solved.cord.leg, loadCase)
  const common = { link: 'leg', part: 'frontNet', side: 'hanger', case: code, overallFactor: null } as const
  const strands = 2 * answers['panel.front']
  const down = front.tension * Math.cos(front.angle)
  const rows = answers['cradle.first'] / (2 * knots)
  const net = diamondNet({
    strands: Array.from({ length: strands }, () => newtons(down / answers['panel.front'])),
    spacing: metres(answers['panel.knotSpacing']), rowDistance: metres(rows),
  })
  if (!net.ok || net.widest !== knots) {
    return [assessLink({ ...common, demand: null, capacity: null, factors: [], grade: 'table', atLeast: 'not enough known', findings: [{ code: 'PANEL_NET_STRANDS', knots, needed: strandsForDiamond(knots), strands }], terms: [] })]
  }
  const pull = net.tension * IN_KNOT
  const efficiency = cord.tied ? PLAIN_STRAND : FILLER_IN_KNOTS
  const carry = carryInKnots(IN_KNOT)
  const time = cordFactors(answers, loadCase, false)
  return [assessLink({
    ...common,
    demand: { value: pull, unit: 'N' },
    capacity: cord.capacity,
    factors: [{ code: 'effectiveStrands', value: carry * efficiency.value, basis: efficiency.basis, source: efficiency.source }, ...stillApplying(cord, time.factors)],
    grade: cord.grade, atLeast: 'holds', findings: cord.findings,
    terms: [
      ...groupTerms(solved, code, front).filter((t) => t.code !== 'demand'),
      worked('cornerPull', 'T_f', front.tension, 'N', 'max(T_s, T_min)', 'strands of the worse corner, taken for both'),
      entering('strandsPerLeg', 'n', answers['panel.front'], '1', 'your own', 'strands in front from each corner'),
      worked('knotLoad', 'V_k', (IN_KNOT * down) / answers['panel.front'], 'N', '4 * T_f * cos(beta) / n', 'each knot passes on the load of the four strands that enter it'),
      entering('knotSpacing', 'a_k', answers['panel.knotSpacing'], 'm', 'your own', 'from one knot of a row to the next'),
      entering('firstKnots', 'c_k', answers['cradle.first'], 'm', 'your own', 'from the gathering knot to the first knot in front'),
      entering('widestRow', 'k_w', knots, '1', 'your own', 'knots in the widest row'),
      worked('demand', 'E', pull, 'N', 'V_k / cos(atan(a_k / 2 / (c_k / (2 * k_w))))', 'along strands that lean between two rows'),
      ...cord.terms,
      entering('strandsThatCarry', 'n_c', carry, '1', 'computed', 'two of four strands run straight through a square knot'),
      fromCatalogue('efficiency', 'eta', efficiency),
      worked('effectiveStrands', 'n_eff', carry * efficiency.value, '1', 'n_c * eta', efficiency.source),
      ...time.terms,
    ],
  })]
}
