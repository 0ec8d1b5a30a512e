import { hasStick } from '../../hanger/arrangement'
import { governingOf, type CheckResult } from '../../check/checkHanger'
import type { Solved } from '../../check/solved'
import { pullInPlaceMass } from '../../check/links/fixing/pullInPlace'
import { isWorse } from '../../check/verdict'
import { isSettling } from '../../words/settling'
import type { PlaceToFix, Trial } from '../../words/sheetCustomer'
import { ASK_END, ASK_LINES, ASK_TITLE, NOT_THERE_TITLE, OPEN_TITLE, placeFindingText, placeUsedText, placeVerdictText, TOLD_TITLE, toldText } from '../../words/sheetPlace'
import type { Block } from '../block'
import type { SheetFacts } from '../facts'

/** Sentences on a place that the front has room for. */
const MOST_FINDINGS = 2

/** Whether it was said what the hanger will be fixed into. */
export function isPlaceTold({ answer: { check } }: SheetFacts): boolean {
  const { given, answers } = check.solved.hanger
  return given.has('place.substrate') && answers['place.substrate'] !== 'unknown'
}

/** Whether a stick hangs from a hook at each end. */
export function hangsFromTwoHooks({ solved: { hanger: { answers } } }: CheckResult): boolean {
  return hasStick(answers) && answers['stick.held'] === 'twoHooks'
}

/** What the first step is to be told of the place: nothing where it will not do. */
export function placeToFix(facts: SheetFacts): PlaceToFix {
  const { check } = facts.answer
  const { answers } = check.solved.hanger
  if (!isPlaceTold(facts) || isWorse(check.verdicts.place, 'just holds')) return { known: false, two: hangsFromTwoHooks(check) }
  return { known: true, two: hangsFromTwoHooks(check), support: answers['place.support'], timber: answers['place.substrate'] === 'timber' }
}

/** Whether the told place carries the hanger's own pot, but not the heaviest. */
const onlyOwn = ({ answer: { check }, limit }: SheetFacts): boolean =>
  limit !== null && check.solved.hanger.answers['pot.have'] === 'yes' && !isWorse(check.verdicts.place, 'just holds') && isWorse(limit.check.verdicts.place, 'just holds')

/** What to pull in place with, kg: what hangs there and half as much again, and what an untested branch or rail asks for. */
function pullOf({ solved, links }: CheckResult): number {
  const asked = links.flatMap(({ findings }) => findings).flatMap((f) => (f.code === 'BRANCH_UNTESTED' || f.code === 'RAIL_NEEDS_RATING' ? [f.testMass] : []))
  return Math.max(pullInPlaceMass(solved), ...asked)
}

/** The pots under the first, kg. */
const below = ({ tiers }: Solved): readonly number[] => tiers.slice(1).map(({ alone }) => alone.potted.watered.mass.high)

/** What the place and the hanger are tried with: no more than the place is told to carry. */
export function trialOf(facts: SheetFacts): Trial | null {
  const { answer: { check }, limit } = facts
  if (limit === null) return null
  if (isPlaceTold(facts) && onlyOwn(facts)) return { pull: pullOf(check), watered: check.solved.potted.watered.mass.high, below: below(check.solved), pot: 'own' }
  return { pull: pullOf(limit.check), watered: limit.watered, below: below(check.solved), pot: 'heaviest' }
}

const askBox: Block = {
  kind: 'box', mark: 'ask', title: ASK_TITLE,
  blocks: [{ kind: 'list', items: ASK_LINES }, { kind: 'paragraph', weight: 'strong', text: ASK_END }],
}

/** What speaks against the place: of one that fails nothing that would only be good to know. */
function whyNot(check: CheckResult, fails: boolean): readonly string[] {
  const decides = governingOf(check.links.filter((l) => l.side === 'place'))
  if (decides === null) return []
  const { link, utilisation, findings } = decides
  const used = utilisation !== null && utilisation > 1 ? [placeUsedText(link, utilisation)] : []
  const said = findings.filter((finding) => finding.code !== 'LEAD_HOLE' && !(fails && isSettling(finding))).map(placeFindingText)
  return [...used, ...said].slice(0, MOST_FINDINGS)
}

/** The ceiling or wall that was told, and how it stands; or what to ask before anything is drilled. */
export function placeBox(facts: SheetFacts): Block {
  if (!isPlaceTold(facts)) return askBox
  const { check } = facts.answer
  const { answers } = check.solved.hanger
  const ofPlace = (facts.limit?.check ?? check).verdicts.place
  const hasPot = answers['pot.have'] === 'yes'
  const said = placeVerdictText(ofPlace, hasPot ? { verdict: check.verdicts.place, watered: check.solved.potted.watered.mass.high, isTiers: check.solved.tiers.length > 0 } : null)
  if (said !== '') return { kind: 'box', mark: 'plain', title: TOLD_TITLE, blocks: [toldText(answers), said].map((text): Block => ({ kind: 'paragraph', weight: 'plain', text })) }
  const fails = check.verdicts.place === 'fails'
  const why = whyNot(check, fails)
  return {
    kind: 'box', mark: fails ? 'stop' : 'ask', title: fails ? NOT_THERE_TITLE : OPEN_TITLE,
    blocks: [toldText(answers), ...why, ASK_END].map((text): Block => ({ kind: 'paragraph', weight: 'plain', text })),
  }
}
