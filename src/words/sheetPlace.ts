import type { FixingFound, FixingOutcome } from '../advice/findFixing'
import type { PacketRating } from '../advice/packetRating'
import type { PlaceNeed, PlaceNeeds } from '../advice/placeNeeds'
import type { Finding, FindingCode } from '../check/finding'
import type { LinkCode } from '../check/linkResult'
import type { Verdict } from '../check/verdict'
import type { Answers } from '../hanger/fields'
import { POUND, STANDARD_GRAVITY } from '../quantity/si'
import { lengthText, massText, percentText } from './amounts'
import { FIELD_WORDS } from './fields'
import { findingText } from './findings'
import { LINK_NAMES } from './names'
import { heldBy, isFound, PLACE_FORM_NAMES, textInUnits, USUAL_PLACE_NAMES } from './placeNeeds'
import { ownPotText } from './sheetAmounts'

export const ASK_TITLE = 'Ask before you drill'
/** The customer's questions as short as they may be; in full they are in askCustomer.ts. */
export const ASK_LINES: readonly string[] = [
  'What is above or behind it: timber, board, brick, block, concrete?',
  'Knocked along: hollow, dull or hard? What dust does a drill bring out?',
  'Where do the joists or studs run? How thick is the board?',
  'How old is the house? Pipes, cables, asbestos, a neighbour’s flat?',
  'What happens beneath it?',
]
export const ASK_END = 'Not sure? Ask someone licensed.'

export const TOLD_TITLE = 'Where it hangs'
export const NOT_THERE_TITLE = 'Do not hang it there'
export const OPEN_TITLE = 'Ask before you drill: not enough is known of the place'

type Place = Pick<Answers, 'place.support' | 'place.substrate' | 'place.known' | 'fixing.kind' | 'fixing.screw'>
const chosen = (path: 'place.support' | 'place.substrate' | 'fixing.kind', answers: Place): string => FIELD_WORDS[path].choices[answers[path]] ?? answers[path]
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** The place as it was told, in one sentence. */
export function toldText(answers: Place): string {
  const told = answers['place.known'] === 'told' ? ', as it was told to us' : ''
  if (answers['place.support'] === 'overBeam') return `${capital(chosen('place.support', answers))}: ${chosen('place.substrate', answers)}${told}.`
  const held = answers['fixing.screw'] === null ? chosen('fixing.kind', answers) : `${chosen('fixing.kind', answers)}, ${answers['fixing.screw']}`
  return `${capital(chosen('place.support', answers))}, fixed into ${chosen('place.substrate', answers)} by ${held}${told}.`
}

/** Of several pots the top one’s mass. */
interface OwnPots {
  readonly verdict: Verdict
  readonly watered: number
  readonly isTiers: boolean
}
const ownPots = ({ watered, isTiers }: Pick<OwnPots, 'watered' | 'isTiers'>): string => (isTiers ? `its own pots, the top one up to ${ownPotText(watered)}` : `its own pot of up to ${ownPotText(watered)}`)

/** How the place stands with the heaviest pot, or only with its own, kg. */
export function placeVerdictText(heaviest: Verdict, own: OwnPots | null): string {
  if (heaviest === 'holds') return 'There it holds with the heaviest pot.'
  if (heaviest === 'just holds') return 'There it just holds with the heaviest pot.'
  if (own === null || own.verdict === 'fails' || own.verdict === 'not enough known') return ''
  return `There it ${own.verdict} with ${ownPots(own)}, watered. Hang no heavier one there.`
}

/** What the maker is told to find out and enter, as a customer may do it. */
const ASKED_OF_CUSTOMER: Readonly<Partial<Record<FindingCode, string>>> = {
  BRANCH_UNTESTED: 'No figure is known for a branch: see that it is living and sound, and pull it as the second step says.',
  RAIL_NEEDS_RATING: 'What a rail carries depends on its brackets: ask what they are rated for, and pull it as the second step says.',
  PULL_IN_PLACE: 'One screw overhead is trusted less until it was pulled as the second step says.',
  GO_ROUND_INSTEAD: 'No figure is known for a fixing there: take a cord or strap round it, or use what is made and rated for it.',
}
/** What was found of a place, for the customer. */
export const placeFindingText = (finding: Finding): string => ASKED_OF_CUSTOMER[finding.code] ?? findingText(finding)
/** A part of the place that carries less than is asked. */
export const placeUsedText = (link: LinkCode, utilisation: number): string => `${LINK_NAMES[link]}: asked ${percentText(utilisation)} of what it may carry.`

export const NEEDS_TITLE = 'What each place needs'
export const NEEDS_COLUMNS = ['Place', 'What will do', 'On a packet look for'] as const
const joined = (texts: readonly string[]): string => texts.join(' or ')

/** What the table is reckoned for, and what holds the hanger on a wall. */
export function needsNoteText({ watered, needs }: PlaceNeeds, two: boolean): string {
  const held = [...new Set(needs.flatMap(({ fixings }) => fixings.filter(isFound).flatMap((found) => heldBy(found) ?? [])))]
  const onWalls = held.length === 0 ? '' : ` On walls they hold ${joined(held)}.`
  const each = two ? ' Each of its two hooks needs this.' : ''
  return `For the heaviest pot: hanger and all up to ${massText(watered)} just watered, with swing and time reckoned in.${each}${onWalls} Where no depth is said, as deep as the packet says.`
}

/** What to buy, how many, and how deep it goes. */
function foundText(fixings: readonly FixingOutcome[]): string | null {
  const found = fixings.find(isFound)
  return found === undefined ? null : fixingLine(found)
}
function fixingLine({ form, size, length, count, depth, changes }: FixingFound): string {
  const name = PLACE_FORM_NAMES[form][count === 1 ? 0 : 1]
  if (form === 'tiedRound') return `${capital(name)}; nothing is drilled${changes['fixing.proof'] ? `. First pull it with ${textInUnits(changes['fixing.proof'], 'mass')}` : ''}`
  const latch = form === 'screwHook' && changes['hook.kind'] === 'latched' ? ' with a latch' : ''
  return `${count} × ${size === '' ? '' : `${size} `}${name}${latch}${length === null ? '' : `, ${length.replace(/(\d)-(?=\d+\/)/, '$1 ')} long`}${depth === null ? '' : `, ${lengthText(depth)} of thread in the timber`}`
}

const ratedUp = (newtons: number): string => `${Math.ceil(newtons / STANDARD_GRAVITY - 1e-9)} kg (${Math.ceil(newtons / STANDARD_GRAVITY / POUND - 1e-9)} lb)`
/** What a packet must say at least, each number rounded up. */
function packetLine(rating: PacketRating | null): string {
  if (rating === null) return '–'
  const { fixing, alongToo, holder, count } = rating
  const way = alongToo ? 'straight out and along the wall' : 'straight out'
  return `${ratedUp(fixing)} ${way}${count > 1 ? ', each' : ''}${holder > 0 ? `; ${alongToo ? 'bracket or hook' : 'hook or eye'} ${ratedUp(holder)}` : ''}`
}

const REFUSED_SHORT = 'Nothing: it sags and crumbles. Fix into a joist, or into a timber laid across two.'

/** A row of the table of what each place needs: its place, what will do there, what to look for on a packet. */
export function needRow(need: PlaceNeed, own: ({ readonly need: PlaceNeed } & Pick<OwnPots, 'watered' | 'isTiers'>) | null): { readonly head: string; readonly cells: readonly [string, string] } {
  const head = USUAL_PLACE_NAMES[need.place]
  if (need.refused !== null) return { head, cells: [REFUSED_SHORT, '–'] }
  const found = foundText(need.fixings)
  if (found !== null) return { head, cells: [found, packetLine(need.rating)] }
  const ownFound = own === null ? null : foundText(own.need.fixings)
  if (own === null || ownFound === null) return { head, cells: ['Nothing usual will do.', packetLine(need.rating)] }
  return { head, cells: [`Only with ${ownPots(own)}: ${ownFound}`, packetLine(own.need.rating)] }
}
