import type { FixingFound, FixingOutcome } from '../advice/findFixing'
import type { PacketRating } from '../advice/packetRating'
import type { PlaceNeed, PlaceNeeds } from '../advice/placeNeeds'
import type { Verdict } from '../check/verdict'
import type { Answers } from '../hanger/fields'
import { POUND, STANDARD_GRAVITY } from '../quantity/si'
import { lengthText, massLimitText, massText } from './amounts'
import { FIELD_WORDS } from './fields'
import { heldBy, isFound, PLACE_FORM_NAMES, USUAL_PLACE_NAMES } from './placeNeeds'

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

/** How the place stands with the heaviest pot, or only with its own, kg. */
export function placeVerdictText(heaviest: Verdict, own: { readonly verdict: Verdict; readonly watered: number } | null): string {
  if (heaviest === 'holds') return 'There it holds with the heaviest pot.'
  if (heaviest === 'just holds') return 'There it just holds with the heaviest pot.'
  if (own === null || own.verdict === 'fails' || own.verdict === 'not enough known') return ''
  return `There it ${own.verdict} with its own pot of up to ${massLimitText(own.watered)} watered, and not with a heavier one.`
}

export const NEEDS_TITLE = 'What each place needs'
export const NEEDS_COLUMNS = ['Place', 'What will do', 'On a packet look for'] as const
const joined = (texts: readonly string[]): string => texts.join(' or ')

/** What the table is reckoned for, and what holds the hanger on a wall. */
export function needsNoteText({ watered, needs }: PlaceNeeds): string {
  const held = [...new Set(needs.flatMap(({ fixings }) => fixings.filter(isFound).flatMap((found) => heldBy(found) ?? [])))]
  const onWalls = held.length === 0 ? '' : ` On walls they hold ${joined(held)}.`
  return `For the heaviest pot: hanger and all up to ${massText(watered)} just watered, with swing and time reckoned in.${onWalls} Where no depth is said, as deep as the packet says.`
}

/** What to buy, how many, and how deep it goes. */
function foundText(fixings: readonly FixingOutcome[]): string | null {
  const found = fixings.find(isFound)
  return found === undefined ? null : fixingLine(found)
}
function fixingLine({ form, size, length, count, depth, changes }: FixingFound): string {
  const name = PLACE_FORM_NAMES[form][count === 1 ? 0 : 1]
  if (form === 'tiedRound') return `${capital(name)}; nothing is drilled${changes['fixing.proof'] ? `. First pull it with ${changes['fixing.proof']}` : ''}`
  const latch = form === 'screwHook' && changes['hook.kind'] === 'latched' ? ' with a latch' : ''
  return `${count} × ${size === '' ? '' : `${size} `}${name}${latch}${length === null ? '' : `, ${length} long`}${depth === null ? '' : `, ${lengthText(depth)} of thread in the timber`}`
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
export function needRow(need: PlaceNeed, own: { readonly need: PlaceNeed; readonly watered: number } | null): { readonly head: string; readonly cells: readonly [string, string] } {
  const head = USUAL_PLACE_NAMES[need.place]
  if (need.refused !== null) return { head, cells: [REFUSED_SHORT, '–'] }
  const found = foundText(need.fixings)
  if (found !== null) return { head, cells: [found, packetLine(need.rating)] }
  const ownFound = own === null ? null : foundText(own.need.fixings)
  if (own === null || ownFound === null) return { head, cells: ['Nothing usual will do.', packetLine(need.rating)] }
  return { head, cells: [`Only with its own pot, up to ${massLimitText(own.watered)}: ${ownFound}`, packetLine(own.need.rating)] }
}
