import type { Answer } from '../advice/answer'
import type { Care } from '../check/care'
import { gathering } from '../check/gathering'
import type { LinkResult } from '../check/linkResult'
import type { Finding } from '../check/finding'
import { swingPeriod } from '../check/swingPeriod'
import { tipPush } from '../check/tipPush'
import type { Solved } from '../check/solved'
import { pottedTogether } from '../check/tiers/pottedTogether'
import type { HangerDocument } from '../hanger/document'
import { unknownKeyNames } from '../hanger/parse'
import { CASES, type CaseCode } from '../load/loadCases'
import { STATES } from '../load/states'
import { careReasonText, careSentences } from '../words/care'
import { CAUTION_TEXTS } from '../words/cautions'
import { findingText } from '../words/findings'
import { TERM_NAMES } from '../words/termNames'
import { slingJson } from './slingJson'

export const CHECK_FORMAT = 'strandwise-check'
export const CHECK_VERSION = 1

const massesOf = (potted: Solved['potted']): object => Object.fromEntries(STATES.map((state) => [state, potted[state].mass]))

const PARTED: readonly CaseCode[] = ['strandParted', 'legParted', 'legPartedSudden']

const findingJson = (finding: Finding): object => ({ ...finding, text: findingText(finding) })

function linkJson(link: LinkResult): object {
  return {
    id: link.id,
    link: link.link,
    tier: link.tier,
    part: link.part,
    case: link.case,
    demand: link.demand,
    capacity: link.capacity,
    factors: link.factors.map((f) => ({ code: f.code, name: TERM_NAMES[f.code], value: f.value, basis: f.basis, source: f.source })),
    allowable: link.allowable,
    utilisation: link.utilisation,
    overallFactor: link.overallFactor,
    verdict: link.verdict,
    findings: link.findings.map(findingJson),
    terms: link.terms.map((t) => ({ ...t, name: TERM_NAMES[t.code] })),
  }
}

function careJson(care: Care): object {
  const { replace, inspect } = careSentences(care)
  return {
    life: care.life,
    replaceAfter: care.replaceAfter,
    replaceBy: care.replaceBy,
    reasons: care.reasons.map((reason) => ({ ...reason, text: careReasonText(reason) })),
    inspect: care.inspect,
    texts: { replace, inspect },
  }
}

function gatheringJson(solved: Solved): object {
  const { wraps, needed, wrappingCord, height, bundle, cordMakes, baseEdge, slip, splay } = gathering(solved)
  return {
    wraps,
    wrapsNeeded: needed.ok ? needed.wraps : null,
    wrapsNeededCase: needed.ok ? needed.case : null,
    wrappingCord,
    knotHeight: height,
    bundle,
    cordMakes,
    baseEdge,
    slip,
    splay,
  }
}

/** The push on the rim that tips the pot; its force null where none does. Null where it is not reckoned. */
function tipPushJson(solved: Solved): object | null {
  const push = tipPush(solved)
  if (push === null) return null
  const { tips, force, share, direction, locked, lean, tilt, work } = push
  return { force: tips ? force : null, share: tips ? share : null, direction: tips ? direction : null, locked, lean, tilt, work }
}

/** How a wall planter hangs and shares its weight; null of any other hanger, or where its strands cannot go so. */
function panelJson({ geometry: { panel }, panel: solved }: Solved): object | null {
  if (!panel?.ok || solved === null) return null
  return {
    onWall: panel.onWall,
    edgeFromAxis: panel.edgeFromAxis,
    touches: { radius: panel.path.leave.r, height: panel.path.leave.z },
    shares: solved.shares,
  }
}

/**
 * The answer to one hanger file by the contract "strandwise-check" version 1: every key always there,
 * null where not known, SI, unrounded.
 */
export function checkJson(file: string, document: HangerDocument, answer: Answer): object {
  const { check } = answer
  const { solved, governing } = check
  const { path } = solved.geometry
  // What parts or is let go concerns every hanger; of the others only its own.
  const concerns = (code: CaseCode): boolean => PARTED.includes(code) || solved.wholeCases.includes(code)
  const unknown = unknownKeyNames(document)
  const findings: readonly Finding[] = unknown.length > 0 ? [...check.findings, { code: 'UNKNOWN_KEYS', names: unknown }] : check.findings
  return {
    format: CHECK_FORMAT,
    version: CHECK_VERSION,
    file,
    name: document.name,
    verdict: check.verdict,
    verdicts: check.verdicts,
    governing: governing === null ? null : { id: governing.id, link: governing.link, case: governing.case, utilisation: governing.utilisation },
    weights: massesOf(pottedTogether(solved)),
    tiers: solved.tiers.map(({ tier, alone }) => ({ tier, weights: massesOf(alone.potted), strand: alone.geometry.strand, drop: alone.geometry.drop })),
    geometry: {
      strand: solved.geometry.strand,
      ringHeight: path.ok ? path.top : null,
      legAngle: path.ok ? path.angle : null,
      legLength: path.ok ? path.free : null,
      leaveRadius: path.ok ? path.leave.r : null,
      leaveHeight: path.ok ? path.leave.z : null,
      drop: solved.geometry.drop,
      swingPeriod: swingPeriod(solved),
      hangerMass: solved.hangerMass.dry,
      centreOfGravity: Object.fromEntries(STATES.map((state) => [state, solved.potted[state].centre])),
    },
    sling: Object.fromEntries(CASES.map((code) => [code, solved.slings === null || !concerns(code) ? null : slingJson(solved.slings[code].drawn)])),
    panel: panelJson(solved),
    tipPush: tipPushJson(solved),
    gathering: gatheringJson(solved),
    links: check.links.map(linkJson),
    remedies: answer.remedies.map((r) => ({ code: r.code, patch: r.patch, verdict: r.verdict, utilisation: r.utilisation })),
    heaviest: answer.heaviest === null ? null : { watered: answer.heaviest },
    care: careJson(check.care),
    cautions: check.cautions.map((code) => ({ code, text: CAUTION_TEXTS[code] })),
    assumed: check.assumed.map((a) => ({ path: a.path, value: a.text, basis: a.basis })),
    findings: findings.map(findingJson),
  }
}
