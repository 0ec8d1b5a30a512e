import { governingOf } from '../../check/checkHanger'
import { pullInPlaceMass } from '../../check/links/fixing/pullInPlace'
import { isWorse } from '../../check/verdict'
import { findingText } from '../../words/findings'
import type { PlaceToFix, Trial } from '../../words/sheetCustomer'
import { ASK_END, ASK_LINES, ASK_TITLE, NOT_THERE_TITLE, OPEN_TITLE, placeVerdictText, TOLD_TITLE, toldText } from '../../words/sheetPlace'
import type { Block } from '../block'
import type { SheetFacts } from '../facts'

/** Sentences on a place that the front has room for. */
const MOST_FINDINGS = 2

/** Whether it was said what the hanger will be fixed into. */
export function isPlaceTold({ answer: { check } }: SheetFacts): boolean {
  const { given, answers } = check.solved.hanger
  return given.has('place.substrate') && answers['place.substrate'] !== 'unknown'
}

/** What the first step is to be told of the place: nothing where it will not do. */
export function placeToFix(facts: SheetFacts): PlaceToFix {
  const { check } = facts.answer
  const { answers } = check.solved.hanger
  if (!isPlaceTold(facts) || isWorse(check.verdicts.place, 'just holds')) return { known: false }
  return { known: true, support: answers['place.support'], timber: answers['place.substrate'] === 'timber' }
}

/** Whether the told place carries the hanger's own pot, but not the heaviest. */
const onlyOwn = ({ answer: { check }, limit }: SheetFacts): boolean =>
  limit !== null && check.solved.hanger.answers['pot.have'] === 'yes' && !isWorse(check.verdicts.place, 'just holds') && isWorse(limit.check.verdicts.place, 'just holds')

/** What the place and the hanger are tried with: no more than the place is told to carry. */
export function trialOf(facts: SheetFacts): Trial | null {
  const { answer: { check }, limit } = facts
  if (limit === null) return null
  if (isPlaceTold(facts) && onlyOwn(facts)) return { pull: pullInPlaceMass(check.solved), watered: check.solved.potted.watered.mass.high, pot: 'own' }
  return { pull: pullInPlaceMass(limit.check.solved), watered: limit.watered, pot: 'heaviest' }
}

const askBox: Block = {
  kind: 'box', mark: 'ask', title: ASK_TITLE,
  blocks: [{ kind: 'list', items: ASK_LINES }, { kind: 'paragraph', weight: 'strong', text: ASK_END }],
}

/** The ceiling or wall that was told, and how it stands; or what to ask before anything is drilled. */
export function placeBox(facts: SheetFacts): Block {
  if (!isPlaceTold(facts)) return askBox
  const { check } = facts.answer
  const { answers } = check.solved.hanger
  const ofPlace = (facts.limit?.check ?? check).verdicts.place
  const hasPot = answers['pot.have'] === 'yes'
  const said = placeVerdictText(ofPlace, hasPot ? { verdict: check.verdicts.place, watered: check.solved.potted.watered.mass.high } : null)
  if (said !== '') return { kind: 'box', mark: 'plain', title: TOLD_TITLE, blocks: [toldText(answers), said].map((text): Block => ({ kind: 'paragraph', weight: 'plain', text })) }
  const fails = check.verdicts.place === 'fails'
  const why = governingOf(check.links.filter((l) => l.side === 'place'))?.findings.map(findingText).slice(0, MOST_FINDINGS) ?? []
  return {
    kind: 'box', mark: fails ? 'stop' : 'ask', title: fails ? NOT_THERE_TITLE : OPEN_TITLE,
    blocks: [toldText(answers), ...why, ASK_END].map((text): Block => ({ kind: 'paragraph', weight: 'plain', text })),
  }
}
