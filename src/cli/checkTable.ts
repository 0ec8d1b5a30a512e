import type { Answer } from '../advice/answer'
import { governingOf } from '../check/checkHanger'
import { FACTOR_GUIDANCE } from '../check/factorGuidance'
import { gathering } from '../check/gathering'
import { LINKS, type LinkResult } from '../check/linkResult'
import type { HangerDocument } from '../hanger/document'
import { unknownKeyNames } from '../hanger/parse'
import { STATES } from '../load/states'
import { forceText, lengthText, massLimitText, massText, numberText, percentText } from '../words/amounts'
import { careSentences } from '../words/care'
import { CAUTION_TEXTS } from '../words/cautions'
import { factorGuidanceText } from '../words/factorGuidance'
import { FIELD_WORDS } from '../words/fields'
import { findingText } from '../words/findings'
import { gatheringText } from '../words/gathering'
import { CASE_NAMES, LINK_NAMES, PART_NAMES } from '../words/names'
import { REMEDY_TEXTS } from '../words/remedies'
import { verdictSentence } from '../words/verdictSentence'
import { columns } from './columns'

const amount = (q: { value: number; unit: string } | null): string => (q === null ? 'not known' : q.unit === 'N' ? forceText(q.value) : lengthText(q.value))

function linkRow(worst: LinkResult): readonly string[] {
  return [
    LINK_NAMES[worst.link], CASE_NAMES[worst.case], amount(worst.demand), amount(worst.allowable),
    worst.utilisation === null ? '–' : percentText(worst.utilisation), worst.overallFactor === null ? '' : numberText(worst.overallFactor), worst.verdict,
  ]
}

/** The readable answer to one hanger file. */
export function checkTable(file: string, document: HangerDocument, answer: Answer): string {
  const { check, heaviest, remedies } = answer
  const { solved, governing } = check
  const worst = LINKS.flatMap((link) => governingOf(check.links.filter((l) => l.link === link)) ?? [])
  const shown = worst.filter((l) => l.link !== 'load')
  const care = careSentences(check.care)
  const codes = new Set<string>()
  const findings = [...worst.toReversed().flatMap((l) => l.findings), ...check.findings].map(findingText).filter((text) => !codes.has(text) && codes.add(text))
  const { path } = solved.geometry
  const unknown = unknownKeyNames(document)
  const section = (title: string, lines: readonly string[]): readonly string[] => (lines.length === 0 ? [] : ['', title, ...lines.map((l) => `  ${l}`)])
  return [
    `${document.name === '' ? file : document.name}`,
    '',
    verdictSentence(check),
    ...(governing === null ? [] : [`Weakest: ${LINK_NAMES[governing.link]} (${PART_NAMES[governing.part]}), ${CASE_NAMES[governing.case]}${governing.utilisation === null ? '' : `, at ${percentText(governing.utilisation)} of what it may carry`}.`]),
    ...(heaviest === null ? [] : [`Heaviest watered pot the hanger may carry: ${massLimitText(heaviest)}.`]),
    '',
    columns([
      ['weight of the potted plant', 'low', 'likely', 'high'],
      ...STATES.map((s) => [CASE_NAMES[s], ...(['low', 'likely', 'high'] as const).map((k) => massText(solved.potted[s].mass[k]))]),
    ]),
    ...(path.ok ? ['', `  legs ${lengthText(path.free)} long from ring to pot, ${numberText((path.angle * 180) / Math.PI)}° from the vertical; ring ${lengthText(path.top)} above the base`] : []),
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
