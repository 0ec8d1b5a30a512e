import type { PlaceForm, UsualPlace } from '../advice/usualPlaces'
import type { FixingFound, FixingOutcome, NoFixing } from '../advice/findFixing'
import type { PacketRating } from '../advice/packetRating'
import type { PlaceNeed, PlaceNeeds } from '../advice/placeNeeds'
import type { LinkCode } from '../check/linkResult'
import type { Grade } from '../catalogue/basis'
import { readQuantity } from '../quantity/readQuantity'
import { STANDARD_GRAVITY } from '../quantity/si'
import { lengthText, massText, massWholeText, percentText } from './amounts'
import { FIELD_WORDS } from './fields'
import { findingText } from './findings'
import { LINK_NAMES } from './names'
import { REFUSAL_TEXTS } from './refusals'

export const USUAL_PLACE_NAMES: Readonly<Record<UsualPlace, string>> = {
  joistOverhead: 'Timber joist overhead',
  studInWall: 'Timber stud in a wall',
  solidBrickWall: 'Wall of solid brick',
  perforatedBrickWall: 'Wall of brick with holes',
  denseBlockWall: 'Wall of dense block',
  aeratedBlockWall: 'Wall of aerated (light) block',
  concreteCeiling: 'Concrete ceiling',
  concreteWall: 'Concrete wall',
  boardWall: 'Plasterboard wall, hollow behind',
  boardCeiling: 'Plasterboard ceiling, between joists',
  steelBeam: 'Steel beam',
  branch: 'Branch of a tree',
}

export const PLACE_FORM_NAMES: Readonly<Record<PlaceForm, readonly [one: string, several: string]>> = {
  screwEye: ['closed screw eye', 'closed screw eyes'],
  screwHook: ['screw hook', 'screw hooks'],
  lagEye: ['closed eye with a lag (coach) screw thread', 'closed eyes with a lag (coach) screw thread'],
  gaugeScrews: ['wood screw', 'wood screws'],
  metricScrews: ['wood screw', 'wood screws'],
  lagScrews: ['lag (coach) screw', 'lag (coach) screws'],
  plug: ['plastic plug with its screw', 'plastic plugs with their screws'],
  toggle: ['toggle or other board fixing', 'toggles or other board fixings'],
  ratedToggle: ['board fixing rated on its packet', 'board fixings rated on their packet'],
  anchorEye: ['closed eye on a metal anchor, both rated on their packet', 'closed eyes on metal anchors, rated on their packet'],
  metalAnchor: ['metal anchor rated on its packet', 'metal anchors rated on their packet'],
  ratedPlug: ['plug or anchor rated on its packet for this very material', 'plugs or anchors rated on their packet for this very material'],
  tiedRound: ['cord or strap taken round it', 'cords or straps taken round it'],
}

const HOW_KNOWN: Readonly<Record<Grade, string>> = {
  tested: 'known by a test', rated: 'known by the packet, once you have read it there', weighed: 'known by weighing', table: 'known by published formulas', diameter: 'known by its thickness only', model: 'known by a sum nobody has tested', fit: 'known by its measures',
}

/** A rating that a packet must reach: as a mass and in newtons, each rounded up. */
export function ratingText(newtons: number): string {
  const force = `${Math.ceil(newtons - 1e-9)} N`
  const mass = massWholeText(newtons / STANDARD_GRAVITY)
  return mass.endsWith(')') ? `${mass.slice(0, -1)}, ${force})` : `${mass} (${force})`
}

/** A part within a sentence; of a wall too the fixing is no more than that. */
function linkName(link: LinkCode): string {
  if (link === 'fixing') return 'the fixing'
  return link === 'pin' ? 'what stands out of the wall' : `the ${LINK_NAMES[link].toLowerCase()}`
}

const WITH_HOOK: ReadonlySet<PlaceForm> = new Set<PlaceForm>(['screwEye', 'screwHook', 'lagEye'])

/** A length, or a mass rounded up, that stands in the file as text, in the reader's units. */
export function textInUnits(text: string, kind: 'length' | 'mass'): string {
  const read = readQuantity(text, kind)
  return !read.ok ? text : kind === 'length' ? lengthText(read.value) : massWholeText(read.value)
}

/** What holds the hanger where the fixing itself does not; null where it does. */
export const heldBy = ({ form, changes }: FixingFound): string | null => {
  const support = changes['place.support']
  if (support === 'bracket' || support === 'swingArm') return `${FIELD_WORDS['place.support'].choices[support] ?? ''} with a reach of ${textInUnits(changes['bracket.reach'] ?? '', 'length')}`
  return support === 'wallHook' && !WITH_HOOK.has(form) ? `a closed hook of ${textInUnits(changes['hook.wire'] ?? '', 'length')} in the wall` : null
}

const latched = ({ form, changes }: FixingFound): string => (form === 'screwHook' && changes['hook.kind'] === 'latched' ? ' with a latch' : '')

/** What to buy: its kind and size as sold, and what it holds. */
export function fixingText(found: FixingFound): string {
  const { form, size, length, count } = found
  const name = PLACE_FORM_NAMES[form][count === 1 ? 0 : 1]
  const thick = size === '' ? '' : `${size} `
  const holds = heldBy(found)
  return `${thick}${name}${latched(found)}${length === null ? '' : `, ${length} long`}${holds === null ? '' : `, for ${holds}`}`
}

/** How many, and how deep their thread sits in the timber. */
export function numberAndDepthText({ count, depth, form, changes }: FixingFound): string {
  if (form === 'tiedRound') return `nothing is drilled${changes['fixing.proof'] ? `; first pull it where it hangs with ${textInUnits(changes['fixing.proof'], 'mass')}` : ''}`
  if (depth === null) return `${count}, as deep as ${count === 1 ? 'its' : 'their'} packet says`
  return `${count}, ${lengthText(depth)} of thread in the timber${form === 'lagScrews' ? ', the tip not counted' : ''}`
}

/** How its strength is known. */
export const howKnownText = ({ grade, basis }: Pick<FixingFound, 'grade' | 'basis'>): string => {
  if (grade === null) return 'a beam of the building carries far more than a pot'
  return basis === 'from memory' && grade === 'table' ? 'known by the low figure of a table, from memory' : HOW_KNOWN[grade]
}

/** What decides, and how far it is used; null where nothing is reckoned. */
export const usedText = ({ utilisation, link }: Pick<FixingFound, 'utilisation' | 'link'>): string | null =>
  (utilisation === null || link === null ? null : `${linkName(link)} used to ${percentText(utilisation)}`)

/** Why no fixing of a form will do. */
export function noFixingText({ form, largest, count, verdict, utilisation, link, findings }: NoFixing): string {
  const name = PLACE_FORM_NAMES[form][1]
  const most = `${count === 1 ? 'one' : `${count}`}${largest === '' ? '' : ` of ${largest}`}`
  const said = findings.map(findingText)[0]
  const much = utilisation !== null && utilisation > 1 && link !== null
    ? `Even with ${most}, ${linkName(link)} would be used to ${percentText(utilisation)} of what it may carry.`
    : null
  return `No ${name} will do. ${much ?? said ?? `With ${most} it is ${verdict}.`}`
}

/** The lines of a row that has no fixing at all. */
export function refusedText({ refused }: PlaceNeed): string | null {
  return refused === null ? null : REFUSAL_TEXTS[refused]
}

/** What to look for on the packet of the fixing, and on that of what it holds. */
export function packetTexts({ fixing, alongToo, holder, count }: PacketRating): readonly string[] {
  const each = count > 1 ? ' for each' : ''
  return [
    `Straight out: ${ratingText(fixing)}${each}`,
    ...(alongToo ? ['Along the wall: the same'] : []),
    ...(holder > 0 ? [`${alongToo ? 'Bracket or hook' : 'Hook or eye'}: ${ratingText(holder)}`] : []),
  ]
}

export const isFound = (fixing: FixingOutcome): fixing is FixingFound => fixing.found

/** What hangs there, and by which pot. */
export const hangsText = ({ watered, heaviest, pot }: PlaceNeeds): string => {
  const whose = pot === 'own' ? 'With its pot' : 'No pot yet: with the heaviest pot it may carry,'
  const more = heaviest > watered * 1.005 ? `, and up to ${massText(heaviest)} standing in water` : ''
  return `${whose} it weighs up to ${massText(watered)} just watered${more}. All is reckoned with swing, set-down and time besides.`
}

export const NO_WEIGHT_TEXT = 'There is no pot yet, and not enough is said of the hanger to know the heaviest it may carry. Say how many legs and strands it has and what the cord is, or put a pot in it.'
