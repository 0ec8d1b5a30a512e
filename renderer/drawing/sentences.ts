import { CASE_NAMES, forceText, hangsFrom, lengthText, numberText, pullerOf, speedText, swingPeriod, type CaseCode, type CheckResult } from '#core'

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
  unstable: 'The pot does not rest upright; it is drawn as it was hung.',
  'lost support': 'Fewer than three legs carry: the pot is not held, wherever it is drawn.',
  'not converged': 'Where it comes to rest could not be found; it is drawn as it was hung.',
}

const DRAWN_PLUMB = 'It is drawn hanging plumb.'

/** What moves the hanger in a situation, told with its numbers. */
const MOVING: Readonly<Partial<Record<CaseCode, (check: CheckResult) => string>>> = {
  bump: ({ solved }) => {
    const period = swingPeriod(solved)
    return `It swings 30° to each side of where it is drawn${period === null ? '' : `, there and back in ${numberText(Math.round(period * 10) / 10)} s`}.`
  },
  gust: ({ solved: { gust } }) => (gust === null ? '' : `Gusts of ${speedText(gust.speed)} push with ${forceText(gust.force)}: it leans ${degrees(gust.leanWatered)} just watered, ${degrees(gust.lean)} dry, and may swing to ${degrees(Math.min(gust.swing, Math.PI / 2))}. ${DRAWN_PLUMB}`),
  tug: ({ solved: { hanger, loads } }) => `${pullerOf(hanger.answers) === 'cat' ? 'A cat' : 'A child'} pulls with ${forceText(loads.tug.weight - loads.tug.weight / loads.tug.factor)}, straight down or a little to one side. ${DRAWN_PLUMB}`,
}

function partedNote(sling: Sling | null, situation: CaseCode): string | null {
  if (situation === 'strandParted') return 'The strand that has gone is on leg 1.'
  return sling === null || sling.gone === null ? null : `Leg ${sling.gone + 1} is gone and is not drawn.`
}

/** What has to be said beneath the caption so that the drawing is not misread. */
export function situationNotes(check: CheckResult, situation: CaseCode): readonly string[] {
  const sling = slingOf(check, situation)
  const tilt = tiltOf(check, situation)
  const notes = [
    sling === null ? 'The legs are too short to close under the pot: nothing hangs.' : TROUBLE[sling.trouble],
    tilt !== null && (tilt * 180) / Math.PI > NOTED_TILT ? `The pot tilts ${degrees(tilt)}.` : null,
    MOVING[situation]?.(check) ?? partedNote(sling, situation),
    slackNote(check, situation),
    sling === null ? null : 'Only what carries is drawn.',
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
  if (slack.length === 0) return null
  return slack.length === 1 ? `Leg ${slack[0]} hangs slack.` : `Legs ${slack.slice(0, -1).join(', ')} and ${slack.at(-1)} hang slack.`
}

/** A wall planter in words. */
function panelDescription({ solved: { hanger: { answers }, geometry } }: CheckResult): string {
  const { panel, path, drop } = geometry
  if (!panel?.ok || !path.ok) return ''
  const where = panel.onWall ? 'Before a wall a' : 'A'
  return [
    `${where} knotted panel ${lengthText(answers['panel.width'])} wide and ${lengthText(answers['panel.height'])} high hangs from a stick and ends ${lengthText(answers['panel.rise'])} above the rim.`,
    `${answers['panel.front']} strands from each corner run round the front, ${degrees(path.angle)} from the vertical, and come to the pot ${lengthText(path.leave.z)} above its base; ${answers['panel.behind']} run down behind it.`,
    drop === null ? '' : `From hook to end of fringe it measures ${lengthText(drop)}.`,
  ].filter((s) => s !== '').join(' ')
}

/** The drawing in words, for whoever cannot see it. */
export function drawingDescription(check: CheckResult, situation: CaseCode): string {
  const { hanger: { answers }, geometry } = check.solved
  const { path } = geometry
  const long = answers['pot.shape'] === 'trough' ? ` and ${lengthText(answers['pot.length'])} long` : ''
  const pot = `The pot is ${lengthText(answers['pot.rim'])} wide${long} at the rim, ${lengthText(answers['pot.base'])} at its base and ${lengthText(answers['pot.height'])} high.`
  if (!path.ok) return [pot, ...situationNotes(check, situation)].join(' ')
  if (geometry.panel?.ok) return [`${situationTitle(situation)}.`, panelDescription(check), pot, ...situationNotes(check, situation)].join(' ')
  const from = geometry.ringRadius > 0 ? 'from a level ring' : { ring: 'from a ring', bunched: 'from the hook', stick: 'from a stick' }[hangsFrom(answers)]
  const ways = [
    `${answers['make.legs']} legs hang ${from}, ${geometry.legs.some((leg) => Math.abs(leg.path.angle - path.angle) > 0.01) ? 'up to ' : ''}${degrees(path.angle)} from the vertical, and leave the pot ${lengthText(path.leave.z)} above its base.`,
    `The hanging point is ${lengthText(path.top)} above the base.`,
    geometry.drop === null ? '' : `From hook to end of fringe it measures ${lengthText(geometry.drop)}.`,
  ]
  return [situationTitle(situation) + '.', ...ways, pot, ...situationNotes(check, situation)].filter((s) => s !== '').join(' ')
}
