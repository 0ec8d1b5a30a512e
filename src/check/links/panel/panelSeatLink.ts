import { CENTRE_MARGIN } from '../../../catalogue/seat'
import { CASES_AT_REST } from '../../../load/loadCases'
import type { Finding } from '../../finding'
import { assessLink, type LinkResult } from '../../linkResult'
import type { Solved } from '../../solved'
import { entering, fromCatalogue, worked } from '../../term'
import { worse, type Verdict } from '../../verdict'
import { temperAssumed } from '../assumedPart'

/**
 * Whether a pot can tip out of a panel. Locked by the knots of the net in front it turns about the panel's edge, and
 * its centre of gravity must stay below that; the pinned sling must stay upright with a margin besides. How strands slide
 * there is not reckoned, so that it just holds at best, and without locking knots is not known. Findings: PANEL_SEAT_PINNED,
 * PANEL_SEAT_LOOSE, CRADLE_UNDER_BASE, SEAT_TOPPLES. No results where the strands cannot go so.
 */
export function panelSeatLink(solved: Solved): readonly LinkResult[] {
  const { panel, firstKnots } = solved.geometry
  const { answers } = solved.hanger
  if (!panel?.ok) return []
  const locks = answers['cradle.kind'] === 'net' && firstKnots === 'on the side'
  const findings: Finding[] = [{ code: locks ? 'PANEL_SEAT_PINNED' : 'PANEL_SEAT_LOOSE' }]
  if (answers['cradle.kind'] === 'net' && firstKnots === 'under the base') findings.push({ code: 'CRADLE_UNDER_BASE', first: answers['cradle.first'], least: panel.path.knotToBaseEdge })
  const topples = solved.pinnedMargin === false
  if (topples) findings.push({ code: 'SEAT_TOPPLES' })
  const atLeast: Verdict = worse(locks ? 'just holds' : 'not enough known', topples ? 'fails' : 'holds')
  const results = CASES_AT_REST.map((code) => {
    const centre = solved.potted[solved.loads[code].case.state].centre
    return assessLink({
      link: 'seat', part: locks ? 'locked' : 'friction', side: 'hanger', case: code, factors: [], overallFactor: null, grade: 'table', atLeast, findings,
      demand: { value: centre + CENTRE_MARGIN.value, unit: 'm' },
      capacity: { value: panel.edgeHeight, unit: 'm', basis: 'computed', source: 'height of the panel’s edge, about which the pot would turn' },
      terms: [
        entering('centreHeight', 'z_g', centre, 'm', 'computed', 'centre of gravity above the base'),
        fromCatalogue('centreMargin', 'z_m', CENTRE_MARGIN),
        worked('demand', 'E', centre + CENTRE_MARGIN.value, 'm', 'z_g + z_m', 'height to be held'),
      ],
    })
  })
  return temperAssumed(solved, ['cradle.kind', 'cradle.first', 'panel.rise'], results)
}
