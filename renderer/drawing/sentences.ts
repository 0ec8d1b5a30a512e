import { CASE_NAMES, forceText, hangsFrom, lengthText, numberText, pullerOf, speedText, swingPeriod, type CaseCode, type CheckResult } from '#core'
import { texts } from '../texts/texts'

const t = texts.pictured

type Sling = NonNullable<CheckResult['solved']['slings']>[CaseCode]

/** Tilts below this are not worth a word, degrees. */
const NOTED_TILT = 0.5

const degrees = (radians: number): string => `${Math.round((radians * 180) / Math.PI)}°`

/** The situation as a caption. */
export const situationTitle = (situation: CaseCode): string => CASE_NAMES[situation].replace(/^./, (letter) => letter.toUpperCase())

const slingOf = (check: CheckResult, situation: CaseCode): Sling | null => check.solved.slings?.[situation] ?? null

/** Tilt of the pot in a situation, rad; null where it found no rest. */
export function tiltOf(check: CheckResult, situation: CaseCode): number | null {
  const drawn = slingOf(check, situation)?.drawn
  return drawn !== undefined && 'tiltRadians' in drawn ? drawn.tiltRadians : null
}

const TROUBLE: Readonly<Record<Sling['trouble'], string | null>> = {
  none: null,
  unstable: t.trouble.unstable,
  'lost support': t.trouble.lostSupport,
  'not converged': t.trouble.notConverged,
}

/** What moves the hanger in a situation, told with its numbers. */
const MOVING: Readonly<Partial<Record<CaseCode, (check: CheckResult) => string>>> = {
  bump: ({ solved }) => {
    const period = swingPeriod(solved)
    return period === null ? t.swings : t.swingsIn(numberText(Math.round(period * 10) / 10))
  },
  gust: ({ solved: { gust } }) => (gust === null ? '' : t.gust(speedText(gust.speed), forceText(gust.force), degrees(gust.leanWatered), degrees(gust.lean), degrees(Math.min(gust.swing, Math.PI / 2)))),
  tug: ({ solved: { hanger, loads } }) => (pullerOf(hanger.answers) === 'cat' ? t.cat : t.child)(forceText(loads.tug.weight - loads.tug.weight / loads.tug.factor)),
}

function partedNote(sling: Sling | null, situation: CaseCode): string | null {
  if (situation === 'strandParted') return t.strandGone
  return sling === null || sling.gone === null ? null : t.legGone(sling.gone + 1)
}

/** What has to be said beneath the caption so that the drawing is not misread. */
export function situationNotes(check: CheckResult, situation: CaseCode): readonly string[] {
  const sling = slingOf(check, situation)
  const tilt = tiltOf(check, situation)
  const notes = [
    sling === null ? t.nothingHangs : TROUBLE[sling.trouble],
    tilt !== null && (tilt * 180) / Math.PI > NOTED_TILT ? t.tilts(degrees(tilt)) : null,
    MOVING[situation]?.(check) ?? partedNote(sling, situation),
    slackNote(check, situation),
    sling === null ? null : t.onlyWhatCarries,
  ]
  return notes.filter((note) => note !== null)
}

/** One leg as drawn: its number, its pull as the mass that pulls as hard, its share of all pulls. */
export interface LegPull {
  readonly number: number
  readonly force: string
  readonly share: number | null
  /** It carries nothing. */
  readonly isSlack: boolean
}

/** A share in whole per cent, to the nearest: shares of one whole are not to add up to more. */
export const shareText = (share: number): string => `${Math.round(share * 100)} %`

/** Pull of every leg that carries in a situation, from the sling as drawn. */
export function legPulls(check: CheckResult, situation: CaseCode): readonly LegPull[] {
  const sling = slingOf(check, situation)
  if (sling === null || !('T' in sling.drawn)) return []
  const { gone, drawn: { T, slack } } = sling
  const sum = T.reduce((a, b) => a + b, 0)
  return T.map((force, i) => ({ number: i + (gone !== null && i >= gone ? 2 : 1), force: forceText(force), share: sum > 0 ? force / sum : null, isSlack: slack[i] ?? false }))
}

/** Which legs carry nothing, by their numbers; null where all carry. */
function slackNote(check: CheckResult, situation: CaseCode): string | null {
  const slack = legPulls(check, situation).filter(({ isSlack }) => isSlack).map(({ number }) => number)
  return slack.length === 0 ? null : t.legsSlack(slack)
}

/** A wall planter in words. */
function panelDescription({ solved: { hanger: { answers }, geometry } }: CheckResult): string {
  const { panel, path, drop } = geometry
  if (!panel?.ok || !path.ok) return ''
  const say = panel.onWall ? t.panelOnWall : t.panel
  return [
    say(lengthText(answers['panel.width']), lengthText(answers['panel.height']), lengthText(answers['panel.rise'])),
    t.panelStrands(String(answers['panel.front']), degrees(path.angle), lengthText(path.leave.z), String(answers['panel.behind'])),
    drop === null ? '' : t.drop(lengthText(drop)),
  ].filter((s) => s !== '').join(' ')
}

/** The drawing in words, for whoever cannot see it. */
export function drawingDescription(check: CheckResult, situation: CaseCode): string {
  const { hanger: { answers }, geometry } = check.solved
  const { path } = geometry
  const [rim, base, height] = [lengthText(answers['pot.rim']), lengthText(answers['pot.base']), lengthText(answers['pot.height'])]
  const pot = answers['pot.shape'] === 'trough' ? t.trough(rim, lengthText(answers['pot.length']), base, height) : t.pot(rim, base, height)
  if (!path.ok) return [pot, ...situationNotes(check, situation)].join(' ')
  if (geometry.panel?.ok) return [`${situationTitle(situation)}.`, panelDescription(check), pot, ...situationNotes(check, situation)].join(' ')
  const from = t.hangFrom[geometry.ringRadius > 0 ? 'levelRing' : hangsFrom(answers)]
  const legs = geometry.legs.some((leg) => Math.abs(leg.path.angle - path.angle) > 0.01) ? t.unlikeLegs : t.legs
  const ways = [
    legs(String(answers['make.legs']), from, degrees(path.angle), lengthText(path.leave.z)),
    t.hangingPoint(lengthText(path.top)),
    geometry.drop === null ? '' : t.drop(lengthText(geometry.drop)),
  ]
  return [situationTitle(situation) + '.', ...ways, pot, ...situationNotes(check, situation)].filter((s) => s !== '').join(' ')
}
