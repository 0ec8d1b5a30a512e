import { REFUSED_ANGLE, WIDE_ANGLE } from '../../catalogue/legs'
import { gatheredStrands } from '../../hanger/strandCount'
import type { CaseCode } from '../../load/loadCases'
import { inCase } from '../cordStrength'
import type { Finding } from '../finding'
import { joinUnknown } from '../sections'
import type { Solved } from '../solved'
import { worse, type Verdict } from '../verdict'
import { weatherFindings } from '../weatherFindings'

export interface Said {
  readonly findings: readonly Finding[]
  readonly atLeast: Verdict
}

/** What bears on all strands of a panel in one case, and how bad the verdict is for it at least. */
export function panelFindings(solved: Solved, code: CaseCode): Said {
  const { answers } = solved.hanger
  const { panel } = solved.geometry
  const said: { readonly finding: Finding; readonly atLeast: Verdict }[] = []
  const say = (finding: Finding, atLeast: Verdict): void => { said.push({ finding, atLeast }) }
  if (panel !== null && !panel.ok) say(panel.finding, panel.fails ? 'fails' : 'not enough known')
  if (panel?.ok) {
    const degrees = (panel.path.angle * 180) / Math.PI
    const refused = panel.path.angle > REFUSED_ANGLE.value
    if (refused || panel.path.angle > WIDE_ANGLE.value) say({ code: 'PANEL_ANGLE', degrees, refused }, refused ? 'fails' : 'just holds')
    if (panel.side.approximate) say({ code: 'PANEL_CURVED' }, 'just holds')
    if (!panel.onWall) say({ code: 'PANEL_NO_WALL' }, 'holds')
  }
  const needed = gatheredStrands(answers)
  if (2 * answers['panel.cords'] < needed) say({ code: 'PANEL_CORDS_FEW', cords: answers['panel.cords'], needed }, 'fails')
  if (joinUnknown(answers, inCase(solved.cord.leg, solved.loads[code].case).tied)) say({ code: 'JOIN_UNKNOWN' }, 'not enough known')
  for (const { finding, atLeast } of weatherFindings(answers)) say(finding, atLeast)
  const trouble = solved.slings?.[code].trouble ?? 'none'
  if (trouble === 'unstable') say({ code: 'SLING_UNSTABLE' }, 'fails')
  if (trouble === 'lost support') say({ code: 'SLING_LOST_SUPPORT' }, 'fails')
  if (trouble === 'not converged') say({ code: 'SLING_NOT_CONVERGED' }, 'not enough known')
  return { findings: said.map((s) => s.finding), atLeast: said.reduce<Verdict>((worst, s) => worse(worst, s.atLeast), 'holds') }
}

/** How the weight is shared as drawn and with the strands in front longer and shorter; none where one of these has no rest. */
export function sharesFinding({ panel, hanger: { answers } }: Solved): readonly Finding[] {
  const [drawn, longer, shorter] = (panel?.shares ?? []).map((share) => share.front)
  if (typeof drawn !== 'number' || typeof longer !== 'number' || typeof shorter !== 'number') return []
  return [{ code: 'PANEL_SHARES', drawn, longer, shorter, tolerance: answers['make.tolerance'] }]
}
