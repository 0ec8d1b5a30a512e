import type { Answer } from '../advice/answer'
import { governingOf } from '../check/checkHanger'
import { FACTOR_GUIDANCE } from '../check/factorGuidance'
import { gathering } from '../check/gathering'
import { panelTable } from '../check/panel/panelTable'
import type { LinkResult } from '../check/linkResult'
import { parts } from '../check/parts'
import { pottedTogether } from '../check/tiers/pottedTogether'
import type { HangerDocument } from '../hanger/document'
import { unknownKeyNames } from '../hanger/parse'
import { STATES, type MassRange } from '../load/states'
import { forceText, lengthText, massLimitText, massText, numberText, percentText } from '../words/amounts'
import { careSentences } from '../words/care'
import { CAUTION_TEXTS } from '../words/cautions'
import { factorGuidanceText } from '../words/factorGuidance'
import { FIELD_WORDS } from '../words/fields'
import { findingText } from '../words/findings'
import { gatheringText } from '../words/gathering'
import { CASE_NAMES, LINK_NAMES, PART_NAMES } from '../words/names'
import { linkName, tierName } from '../words/tiers'
import { REMEDY_TEXTS } from '../words/remedies'
import { shareText } from '../words/share'
import { verdictSentence } from '../words/verdictSentence'
import { columns } from './columns'

const amount = (q: { value: number; unit: string } | null): string => (q === null ? 'not known' : q.unit === 'N' ? forceText(q.value) : lengthText(q.value))

function linkRow(worst: LinkResult): readonly string[] {
  return [
    linkName(worst.link, worst.tier), CASE_NAMES[worst.case], amount(worst.demand), amount(worst.allowable),
    worst.utilisation === null ? '–' : percentText(worst.utilisation), worst.overallFactor === null ? '' : numberText(worst.overallFactor), worst.verdict,
  ]
}

const weightRow = (name: string, mass: MassRange): readonly string[] => [name, ...(['low', 'likely', 'high'] as const).map((k) => massText(mass[k]))]

/** The readable answer to one hanger file. */
export function checkTable(file: string, document: HangerDocument, answer: Answer): string {
  const { check, heaviest, remedies } = answer
  const { solved, governing } = check
  const worst = parts(check).flatMap(({ results }) => governingOf(results) ?? [])
  const shown = worst.filter((l) => l.link !== 'load')
  const care = careSentences(check.care)
  const codes = new Set<string>()
  const findings = [...worst.toReversed().flatMap((l) => l.findings), ...check.findings].map(findingText).filter((text) => !codes.has(text) && codes.add(text))
  const { path } = solved.geometry
  const unknown = unknownKeyNames(document)
  const [tied] = panelTable(solved)
  const panelLine = !path.ok || tied === undefined ? null : `  strands in front ${lengthText(path.free)} long from panel to pot, ${numberText((path.angle * 180) / Math.PI)}° from the vertical; stick ${lengthText(path.top)} above the base; in front ${tied.front === null ? 'not known' : percentText(tied.front)} of the weight`
  const section = (title: string, lines: readonly string[]): readonly string[] => (lines.length === 0 ? [] : ['', title, ...lines.map((l) => `  ${l}`)])
  return [
    `${document.name === '' ? file : document.name}`,
    '',
    verdictSentence(check),
    ...(governing === null ? [] : [`Weakest: ${linkName(governing.link, governing.tier)} (${PART_NAMES[governing.part]}), ${CASE_NAMES[governing.case]}${governing.utilisation === null ? '' : `, ${shareText(governing.utilisation, governing.demand?.unit ?? '')}`}.`]),
    ...(heaviest === null ? [] : [`Heaviest watered pot the hanger may carry: ${massLimitText(heaviest)}.`]),
    '',
    columns([
      ['weight of the potted plant', 'low', 'likely', 'high'],
      ...STATES.map((s) => weightRow(CASE_NAMES[s], pottedTogether(solved)[s].mass)),
      ...solved.tiers.flatMap(({ tier, alone }) => STATES.map((s) => weightRow(`${tierName(tier)}, ${CASE_NAMES[s]}`, alone.potted[s].mass))),
    ]),
    ...(panelLine !== null ? ['', panelLine] : path.ok ? ['', `  legs ${lengthText(path.free)} long from ring to pot, ${numberText((path.angle * 180) / Math.PI)}° from the vertical; ring ${lengthText(path.top)} above the base`] : []),
    `  ${gatheringText(gathering(solved))}`,
    '',
    columns([['part', 'worst situation', 'asked', 'may carry', 'used', 'overall', 'verdict'], ...shown.map(linkRow)]),
    `  forces as the mass that would pull as hard; overall: strength of the new strands over the watered load, ${factorGuidanceText(FACTOR_GUIDANCE)}`,
    ...section('What this means', [...findings, ...(unknown.length > 0 ? [findingText({ code: 'UNKNOWN_KEYS', names: unknown })] : [])]),
    ...section('What would mend it', remedies.map((r) => `${REMEDY_TEXTS[r.code]}: ${Object.entries(r.patch).map(([p, t]) => `${p} = ${t}`).join(', ')} → the whole ${r.verdict}${r.utilisation === null ? '' : ` (${percentText(r.utilisation)})`}; ${LINK_NAMES[r.link].toLowerCase()} ${r.linkVerdict}`)),
    ...section(`Assumed, ${check.assumed.length} ${check.assumed.length === 1 ? 'thing' : 'things'}`, check.assumed.map((a) => `${FIELD_WORDS[a.path].label}: ${FIELD_WORDS[a.path].choices[a.text] ?? a.text} (${a.basis})`)),
    ...section('Care', [care.replace, ...care.reasons, care.inspect]),
    ...section('Cautions', check.cautions.map((c) => CAUTION_TEXTS[c])),
    '',
  ].join('\n')
}
