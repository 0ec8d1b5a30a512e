import { peopleBeneath } from '../../../catalogue/reserves'
import type { CaseCode } from '../../../load/loadCases'
import { inCase, stillApplying, type CordStrength } from '../../cordStrength'
import type { Finding } from '../../finding'
import { assessLink, type LinkResult, type Part } from '../../linkResult'
import { panelFindings, sharesFinding } from '../../panel/panelFindings'
import { panelGroups, type PanelGroup } from '../../panel/panelGroups'
import { panelSections, strandSections } from '../../panel/panelSections'
import { redundancy } from '../../redundancy'
import { saySettlingTests } from '../../saySettlingTests'
import { weakestSection, type Section } from '../../sections'
import type { Solved } from '../../solved'
import { cordFactors } from '../../timeFactors'
import { worse } from '../../verdict'
import { temperAssumed } from '../assumedPart'
import { panelNet } from './panelNet'
import { groupSectionTerms, groupTerms } from './panelTerms'

/** One part of a panel that is told apart: whose pull it bears, and where it is weakest. */
interface PanelPart {
  readonly part: Extract<Part, 'frontStrands' | 'backStrands' | 'panelCords'>
  readonly group: PanelGroup
  readonly sections: readonly Section[]
}

/**
 * The strands of a wall planter, in three parts: round the front, behind the pot, and the outermost cords of the knotted
 * panel, into which those in front pull; with a net that was told, its knots. Each part is sized for what it gets at worst. Findings:
 * those of panelFindings(), PANEL_SHARES, PANEL_NET_STRANDS, and over people STRAND_PARTS_AND_FALLS or STRAND_PARTS_UNKNOWN.
 */
export function panelLegLink(solved: Solved): readonly LinkResult[] {
  const whole = saySettlingTests(solved, solved.wholeCases.flatMap((code) => [...partsOf(solved, code, 0).map((part) => inOneCase(solved, code, part)), ...panelNet(solved, code)]))
  return temperAssumed(solved, ['panel.front', 'panel.behind', 'panel.cords', 'panel.width', 'panel.rise'], [...whole, ...strandParted(solved)])
}

function partsOf(solved: Solved, code: CaseCode, parted: number): readonly PanelPart[] {
  const { answers } = solved.hanger
  const cord = inCase(solved.cord.leg, solved.loads[code].case)
  const groups = panelGroups(solved, code)
  const [front, back] = groups as [PanelGroup, PanelGroup]
  const each = ({ tension, strands }: PanelGroup): number => (tension ?? 0) / strands
  const outermost = each(back) > each(front) ? back : front
  const left = ({ strands }: PanelGroup): number => Math.max(0, strands - parted)
  return [
    { part: 'frontStrands', group: front, sections: strandSections(answers, left(front), answers['cradle.kind'] === 'net', cord) },
    { part: 'backStrands', group: back, sections: strandSections(answers, left(back), false, cord) },
    { part: 'panelCords', group: outermost, sections: panelSections(answers, left(outermost), cord) },
  ]
}

/** New, dry strands over the watered load, as many as carry where the fewest do. */
function overall(solved: Solved, { part, sections }: PanelPart): number | null {
  const plain = solved.cord.wrap.dry.capacity
  const watered = partsOf(solved, 'watered', 0).find((p) => p.part === part)?.group.tension ?? null
  return plain === null || watered === null ? null : (Math.min(...sections.map((s) => s.strands)) * plain.value) / watered
}

function inOneCase(solved: Solved, code: CaseCode, one: PanelPart): LinkResult {
  const { answers } = solved.hanger
  const { case: loadCase } = solved.loads[code]
  const cord: CordStrength = inCase(solved.cord.leg, loadCase)
  const section = weakestSection(one.sections)
  const time = cordFactors(answers, loadCase, false)
  const said = panelFindings(solved, code)
  const shares = code === 'watered' && one.part !== 'panelCords' ? sharesFinding(solved) : []
  return assessLink({
    link: 'leg', part: one.part, side: 'hanger', case: code,
    demand: one.group.tension === null ? null : { value: one.group.tension, unit: 'N' },
    capacity: cord.capacity,
    factors: [{ code: 'effectiveStrands', value: section.effective, basis: section.efficiency.basis, source: section.efficiency.source }, ...stillApplying(cord, time.factors)],
    grade: cord.grade,
    overallFactor: code === 'strandParted' ? null : overall(solved, one),
    atLeast: said.atLeast,
    findings: [...cord.findings, ...said.findings, ...shares],
    terms: [...groupTerms(solved, code, one.group), ...cord.terms, ...groupSectionTerms(one.group, section), ...time.terms],
  })
}

/** One strand gone in each part: shown where the rest carry on; over people it must be known that the pot stays. */
function strandParted(solved: Solved): readonly LinkResult[] {
  const people = peopleBeneath(solved.hanger.answers['place.beneath'])
  const { strand } = redundancy(solved)
  return partsOf(solved, 'strandParted', 1).flatMap((one): readonly LinkResult[] => {
    const left = weakestSection(one.sections).effective > 0 ? inOneCase(solved, 'strandParted', one) : null
    if (left !== null && left.utilisation !== null && left.utilisation <= 1) return [left]
    if (!people || strand === 'stays') return []
    const unknown = strand === 'unknown'
    const finding: Finding = unknown ? { code: 'STRAND_PARTS_UNKNOWN' } : { code: 'STRAND_PARTS_AND_FALLS' }
    return [assessLink({
      link: 'leg', part: one.part, side: 'hanger', case: 'strandParted', demand: null, capacity: null, factors: [], grade: 'table', overallFactor: null,
      atLeast: worse('not enough known', unknown ? 'holds' : 'fails'), findings: [finding], terms: [],
    })]
  })
}
