import {
  checkHanger, diagramsOf, FIELD_PATHS, fieldOf, gathering, isRelevant, legSectionTable, panelTable, strengthLadder, swingPeriod, testHangLifts, testMassFor, tipPush, turnsFreely,
  type CheckResult, type FieldPath, type Hanger,
} from '#core'
import { cordWeighing } from '../../../../src/check/cordWeighing'
import { wrapsNeeded } from '../../../../src/check/wrapsNeeded'

/** Digits that are kept: fewer than two processors could tell apart, more than a change of meaning leaves alike. */
const DIGITS = 5
/** Words beside a number, and what is kept elsewhere. */
const LEFT_OUT = new Set(['source', 'terms', 'formula', 'text', 'hanger'])
/** Curves of more points are kept by their ends and extremes. */
const MOST_POINTS = 8

const short = (value: number): string => String(Number(value.toPrecision(DIGITS)))
const isCurve = (value: unknown): value is readonly number[] => Array.isArray(value) && value.length > MOST_POINTS && value.every((v) => typeof v === 'number')
function plain(value: unknown): string {
  const keep = (key: string, v: unknown): unknown => {
    if (LEFT_OUT.has(key)) return undefined
    if (isCurve(v)) return { of: v.length, first: v[0], last: v.at(-1), least: Math.min(...v), most: Math.max(...v) }
    return typeof v === 'number' ? Number(v.toPrecision(DIGITS)) : v
  }
  return JSON.stringify(value, keep).replaceAll('"', '')
}

/** What a check says, line by line: each part in all its cases, what is found of it, and the whole. */
export function keptLines(check: CheckResult): ReadonlyMap<string, string> {
  const { solved } = check
  const lines = new Map<string, string>([
    ['verdicts', `${check.verdicts.hanger}; ${check.verdicts.place}; ${check.governing?.id ?? 'nothing'} decides`],
    ['one gone', `leg ${check.redundancy.leg}, strand ${check.redundancy.strand}`],
    ['care', plain(check.care)],
    ['findings', plain(check.findings)],
    ['cautions', plain(check.cautions)],
  ])
  for (const link of check.links) {
    const key = `${link.tier > 1 ? `${link.tier}: ` : ''}${link.link}.${link.part}`
    const told = `${link.case} ${link.verdict} ${link.utilisation === null ? '?' : short(link.utilisation)} of ${link.allowable === null ? '?' : short(link.allowable.value)}${link.grade === null ? '' : ` ${link.grade}`}${link.overallFactor === null ? '' : ` x ${short(link.overallFactor)}`}`
    lines.set(key, lines.has(key) ? `${lines.get(key) ?? ''}; ${told}` : told)
    for (const finding of link.findings) {
      const said = lines.get(`${key} says`) ?? ''
      if (!said.includes(plain(finding))) lines.set(`${key} says`, `${said}${plain(finding)}`)
    }
  }
  lines.set('beside', plain({
    gathering: gathering(solved), wraps: wrapsNeeded(solved), swing: swingPeriod(solved), tip: tipPush(solved), turns: turnsFreely(solved),
    lifts: [testHangLifts(solved, false), testHangLifts(solved, true)], testMass: testMassFor(solved), weighing: cordWeighing(solved.hanger.answers),
  }))
  lines.set('cord', plain(strengthLadder(solved.hanger)))
  lines.set('sections', plain([legSectionTable(solved.hanger), panelTable(solved)]))
  for (const d of diagramsOf(solved, 'watered')) lines.set(`${d.link} bends`, plain(d))
  return lines
}

/** The worst of each part in figures, and what is said. */
export function worstOfParts(check: CheckResult): ReadonlyMap<string, string> {
  const worst = new Map<string, { readonly ratio: number; readonly text: string }>()
  for (const link of check.links) {
    const key = `${link.link}.${link.part}`
    const ratio = link.utilisation ?? (link.verdict === 'fails' ? 1e9 : 0)
    if (ratio >= (worst.get(key)?.ratio ?? -1)) worst.set(key, { ratio, text: `${link.verdict === 'holds' ? '' : `${link.verdict} `}${link.utilisation === null ? '?' : short(link.utilisation)}` })
  }
  const codes = [...new Set([...check.findings, ...check.links.flatMap((l) => l.findings)].map((f) => f.code))]
  return new Map([...[...worst].map(([key, { text }]) => [key, text] as const), ...codes.map((code) => [code, 'said'] as const), ['one gone', `${check.redundancy.leg} ${check.redundancy.strand}`], ['care', plain(check.care.reasons)]])
}

function* otherAnswers({ answers }: Hanger): Generator<readonly [FieldPath, string | number]> {
  for (const path of FIELD_PATHS.filter((p) => isRelevant(p, answers))) {
    const field = fieldOf(path)
    const value = answers[path]
    if (field.type === 'choice') for (const choice of field.choices) { if (choice !== value) yield [path, choice] }
    if ((field.type === 'quantity' || field.type === 'open') && typeof value === 'number') {
      for (const other of field.kind === 'count' ? [value - 1, value + 1] : [value / 1.3, value * 1.3]) if (other >= field.min && other <= field.max) yield [path, other]
    }
  }
}

/** The hanger with one answer to so many questions that matter to it, chosen by chance; what was not known is known then. */
export function answeredAnew(hanger: Hanger, changes: number, chance: () => number): Hanger {
  let { answers } = hanger
  const given = new Set(hanger.given)
  const oneOf = <T>(all: readonly T[]): T | undefined => all[Math.floor(chance() * all.length)]
  for (let left = changes; left > 0; left--) {
    const path = oneOf(FIELD_PATHS.filter((p) => isRelevant(p, answers) && !['text', 'date', 'screw'].includes(fieldOf(p).type)))
    const field = path === undefined ? undefined : fieldOf(path)
    if (path === undefined || field === undefined) continue
    const now = answers[path]
    const within = (value: number): number => Math.min('max' in field ? field.max : value, Math.max('min' in field ? field.min : value, value))
    if (field.type === 'choice') answers = { ...answers, [path]: oneOf(field.choices) }
    else if (field.type === 'quantity' || field.type === 'open') {
      const about = typeof now === 'number' && now > 0 ? now : Math.sqrt(Math.max(field.min, field.max * 1e-4) * field.max)
      const value = within(about * 2 ** (2 * chance() - 1))
      answers = { ...answers, [path]: field.kind === 'count' ? Math.round(value) : value }
    }
    given.add(path)
  }
  return { ...hanger, answers, given, assumed: hanger.assumed.filter((a) => !given.has(a.path)) }
}

/** What each other answer to one question changes: worst of each part, findings that come and go. One line an answer; none where nothing changes. */
export function changedByAnswers(hanger: Hanger, asks: (path: FieldPath) => boolean): readonly string[] {
  const before = worstOfParts(checkHanger(hanger))
  return [...otherAnswers(hanger)].filter(([path]) => asks(path)).flatMap(([path, value]) => {
    const after = worstOfParts(checkHanger({ ...hanger, answers: { ...hanger.answers, [path]: value }, given: new Set([...hanger.given, path]) }))
    const changes = [...new Set([...before.keys(), ...after.keys()])].filter((key) => before.get(key) !== after.get(key)).map((key) => `${key} ${after.get(key) ?? 'gone'}`)
    return changes.length === 0 ? [] : [`${path} ${typeof value === 'number' ? short(value) : value}: ${changes.join('; ')}`]
  })
}
