import type { PlaceNeeds } from '../advice/placeNeeds'
import type { FieldPath } from '../hanger/fields'
import { massText } from './amounts'
import { FIELD_WORDS } from './fields'
import { fixingText, isFound, numberAndDepthText, packetTexts, USUAL_PLACE_NAMES } from './placeNeeds'

/** One question to the customer, and where its answer is entered. */
export interface CustomerQuestion {
  readonly asks: string
  /** What to pick among, as the customer may say it; empty where they write freely. */
  readonly choices: readonly string[]
  /** What the maker enters for it. */
  readonly enter: string
}

const field = (path: FieldPath): string => `“${FIELD_WORDS[path].label}”`
const choice = (path: FieldPath, value: string): string => `“${FIELD_WORDS[path].choices[value] ?? value}”`
const BENEATH_SAID = ['nothing', 'furniture', 'wayThrough', 'people', 'public'] as const

/** The five questions about a place, in the order they are put. */
export const CUSTOMER_QUESTIONS: readonly CustomerQuestion[] = [
  {
    asks: 'What is above or behind the place where it will hang?',
    choices: ['a wooden beam or joist that can be seen', 'a ceiling or wall of board', 'brick, block or concrete', 'a beam or branch it can go round', 'I don’t know'],
    enter: `Choose it under ${field('place.substrate')}, and under ${field('place.support')} what it will hang from. Where they do not know, choose ${choice('place.substrate', 'unknown')}.`,
  },
  {
    asks: 'Knock along it, and if a small hole may be drilled, drill one: how does it sound, and what comes out?',
    choices: ['hollow all along', 'hollow, but dull at even distances', 'hard everywhere', 'dust: white, red or grey', 'shavings of wood', 'the drill falls into a hollow'],
    enter: `Hollow all along is ${choice('place.substrate', 'plasterboard')}; dull at even distances, or shavings of wood, is ${choice('place.substrate', 'timber')}; red dust is brick, grey dust concrete or block; a hollow behind red dust is ${choice('place.substrate', 'perforatedBrick')}.`,
  },
  {
    asks: 'Does a small magnet find screws or nails in a straight line, or do you know where the joists or studs run? How thick is the board over them?',
    choices: [],
    enter: `The thickness of the board goes under ${field('fixing.between')}; without a line of screws do not choose ${choice('place.substrate', 'timber')}.`,
  },
  {
    asks: 'About when was the house built, and what is over the ceiling or behind the wall: a floor, a loft, a flat roof, another flat, pipes, cables?',
    choices: [],
    enter: 'Old ceilings may hold asbestos or be lath and plaster; pipes, cables or a neighbour’s flat mean asking someone licensed before anything is drilled. Is it rented, the owner says whether it may be drilled at all.',
  },
  {
    asks: 'What is, or happens, beneath it?',
    choices: BENEATH_SAID.map((beneath) => FIELD_WORDS['place.beneath'].choices[beneath] ?? beneath),
    enter: `Choose it under ${field('place.beneath')}: it decides the reserve.`,
  },
]

/** How the answers come into the hanger file as told, not seen. */
export const TOLD_TEXT = `Enter what they say in the form, and choose ${choice('place.known', 'told')} under ${field('place.known')}: it counts, but less than what you saw yourself.`

/** The places a customer most often has, told of what they would need. */
const TOLD_PLACES = ['joistOverhead', 'concreteCeiling', 'studInWall', 'solidBrickWall'] as const

function needLine({ needs }: PlaceNeeds, place: (typeof TOLD_PLACES)[number]): string | null {
  const need = needs.find((n) => n.place === place)
  const found = need?.fixings.find(isFound)
  if (need === undefined || found === undefined) return null
  const rated = need.rating === null ? [] : packetTexts(need.rating)
  const rating = rated[0] === undefined ? '' : `; on a packet look for: ${rated[0].charAt(0).toLowerCase()}${rated[0].slice(1)}`
  return `- ${USUAL_PLACE_NAMES[place]}: ${fixingText(found)} (${numberAndDepthText(found)})${rating}.`
}

/** The whole text to send to a customer about one hanger: its weight, the five questions, and what it would need. */
export function askCustomerText(name: string, needs: PlaceNeeds): string {
  const hanger = name === '' ? 'the plant hanger' : `the plant hanger “${name}”`
  const weight = needs.pot === 'own' ? `With its pot, just watered, it weighs up to ${massText(needs.watered)}` : `With the heaviest pot it may carry, just watered, it weighs up to ${massText(needs.watered)}`
  const lines = TOLD_PLACES.flatMap((place) => needLine(needs, place) ?? [])
  return [
    `Before ${hanger} is hung I need to know the place. ${weight}, and it swings when someone knocks against it. Please answer as well as you can; “I don’t know” is an answer too.`,
    '',
    ...CUSTOMER_QUESTIONS.flatMap(({ asks, choices }, i) => [`${i + 1}. ${asks}`, ...(choices.length === 0 ? [] : [`   (${choices.join(' / ')})`])]),
    '',
    ...(lines.length === 0 ? [] : ['What it would need:', ...lines, '']),
    'Please do not drill before we have spoken: there may be pipes or cables. If you are not sure of the wall, the ceiling or the age of the house, ask someone licensed.',
  ].join('\n')
}
