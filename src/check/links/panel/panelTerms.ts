import type { CaseCode } from '../../../load/loadCases'
import type { Term } from '../../linkResult'
import type { PanelGroup } from '../../panel/panelGroups'
import type { Section } from '../../sections'
import type { Solved } from '../../solved'
import { entering, fromCatalogue, worked } from '../../term'
import { weightTerms } from '../weightTerms'

/** How the pull of one group of a panel's strands came about, with the symbol E. */
export function groupTerms(solved: Solved, code: CaseCode, { angle, solved: pull, tension, kind }: PanelGroup): readonly Term[] {
  const weight = weightTerms(solved, code).filter((t) => t.code !== 'demand')
  if (pull === null || tension === null) return weight
  const where = kind === 'front' ? 'from a corner of the panel to the front of the pot' : 'from the panel down behind the pot'
  return [
    ...weight,
    entering('legAngle', 'beta', angle, 'rad', 'computed', `${where}, from the vertical`),
    entering('solvedTension', 'T_s', pull, 'N', 'computed', 'worst group of the solved sling, leaning on the wall: as drawn, off centre, strands longer and shorter'),
    worked('leastTension', 'T_min', solved.loads[code].weight / (2 * Math.cos(angle)), 'N', 'W / (2 * cos(beta))', 'millimetres decide between front and back: either pair may have to bear it all'),
    worked('demand', 'E', tension, 'N', 'max(T_s, T_min)', 'worst group'),
  ]
}

/** How many strands carry in the weakest section, with the symbol n_eff. */
export function groupSectionTerms({ strands }: PanelGroup, section: Section): readonly Term[] {
  return [
    entering('strandsPerLeg', 'n', strands, '1', 'your own', 'strands of one corner in front, or one half of those behind'),
    entering('strandsThatCarry', 'n_c', section.strands, '1', 'computed', 'strands that carry in the weakest section'),
    fromCatalogue('efficiency', 'eta', section.efficiency),
    worked('effectiveStrands', 'n_eff', section.effective, '1', 'n_c * eta', section.efficiency.source),
  ]
}
