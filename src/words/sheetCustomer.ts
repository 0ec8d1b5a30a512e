import type { PotMaterialKind } from '../catalogue/potMaterials'
import type { Verdict } from '../check/verdict'
import type { Answers } from '../hanger/fields'
import { massLeastText, massLimitText, massText, timeText } from './amounts'
import { dayText } from './care'
import { BENEATH_TEXTS } from './sheetFoot'
import { ownPotText, potWidthText, potWidthUpToText, waterText } from './sheetAmounts'

// What the front of a customer sheet says: short, for somebody who never tied a knot.

export const NO_NAME_TEXT = 'Plant hanger'
export const sheetName = (name: string): string => (name.trim() === '' ? NO_NAME_TEXT : name.trim())
export const customerTitle = (name: string): string => `${sheetName(name)}: how to hang it`

export const HEAVIEST_LABEL = 'Heaviest pot when watered'
export const CALCULATED_TEXT = 'Calculated. It has not been test-hung.'
/** A test hang lighter than the weight that is told does not bear it out. */
export const testedLessText = (mass: number): string => `Calculated. Its test hang was lighter: ${massLimitText(mass)}.`
/** Nor one before strands were lost or mended, or one that left a pot’s place lighter than it may be. */
export const TESTED_BEFORE_TEXT = 'Calculated. It was damaged or mended after its test hang, or no day says which came first.'
export const TESTED_FIRST_TEXT = 'Calculated. Its test hang was in the top pot’s place alone.'
export const testedSharedText = (mass: number): string => `Calculated. Its test hang of ${massText(mass)} was shared among its pots, and was lighter in one of them.`
/** How long it hung: in hours up to three days, for a day and a bit says less. */
export const hungFor = (seconds: number): string => (seconds < 3 * 86_400 ? `${Math.floor(seconds / 3600)} hours` : timeText(seconds))
export const testHungText = ({ mass, time, date }: { readonly mass: number; readonly time: number; readonly date: string | null }): string =>
  `Test-hung with ${massText(mass)} for ${hungFor(time)}${date === null ? '' : ` on ${dayText(date)}`}.`

/** What the weight is meant for where several pots hang. */
export const tiersNoteText = (others: readonly number[]): string =>
  `The top pot. Under it no more than ${others.map((mass) => massLimitText(mass)).join(', and under that ')}.`
export const rowNoteText = (count: number, others: number | null): string =>
  (others === null ? `Each of the ${count} pots of the row.` : `This pot of the row; each of the others no more than ${massLimitText(others)} with its hanger.`)

/** Shown where no weight may be told; a draft is printed all the same. */
export const NO_WEIGHT_TOLD: Readonly<Record<'fails' | 'not enough known', string>> = {
  fails: 'No weight may be told: the hanger fails.',
  'not enough known': 'No weight may be told: not enough is known of the hanger.',
}

export const potsTitle = (isTiers: boolean): string => (isTiers ? 'Top pots that fit, across the rim' : 'Pots that fit, across the rim')
export const POT_NAMES: Readonly<Record<PotMaterialKind, string>> = {
  terracotta: 'Clay', stoneware: 'Glazed stoneware', porcelain: 'Porcelain', plastic: 'Plastic', concrete: 'Concrete', fibreCement: 'Fibre cement', glass: 'Glass', steel: 'Steel', wood: 'Wood',
}
/** One line of the pots that fit; `smallest`: rim of the smallest usual pot, m. */
export const potsText = (material: PotMaterialKind, runs: readonly PotRun[], smallest: number): string => `${POT_NAMES[material]}: ${potSizesText(runs, smallest)}`

/** Rims from the smallest to the largest of a run, m. */
interface PotRun {
  readonly from: number
  readonly to: number
}

/** Sizes that fit, as runs; `smallest`: as above. */
export function potSizesText(runs: readonly PotRun[], smallest: number): string {
  const sizes = runs.map((run) => (run.from === smallest && run.to > smallest ? potWidthUpToText(run.to) : potWidthText(run)))
  return sizes.length === 0 ? 'none of the usual sizes' : sizes.join(' and ')
}
export const POTS_NOTE = 'Round pots of usual shape, with its mix and a plant of their size. Weigh what you hang: the weight above counts.'

/** Parts that are named beside the picture. */
export type LabelledPart = 'hook' | 'bracket' | 'tie' | 'ring' | 'stick' | 'bunch' | 'cradle' | 'gathering'
export const PART_LABELS: Readonly<Record<LabelledPart, string>> = {
  hook: 'Hook and its fixing', bracket: 'Bracket and its screws', tie: 'Cord taken round', ring: 'Ring', stick: 'Stick', bunch: 'Cords over the hook', cradle: 'Cradle round the pot', gathering: 'Gathering knot',
}
export const pictureText = (name: string): string => `${sheetName(name)}, drawn to scale from the front, its parts named.`

type Support = Answers['place.support']
const INTO_TIMBER: Readonly<Record<Support, string>> = {
  ceilingHook: 'Screw the hook up to its shoulder into the middle of the timber, through a lead hole.',
  wallHook: 'Screw it up to its shoulder into the middle of the timber, through a lead hole.',
  bracket: 'Screw the bracket through lead holes into the middle of the timber.',
  swingArm: 'Screw the swing arm through lead holes into the middle of the timber.',
  overBeam: 'Take it round the beam, over padding; nothing is drilled.',
}
const BY_PACKET: Readonly<Record<Support, string>> = {
  ceilingHook: 'Set the fixing as its packet says, and screw the hook in up to its shoulder.',
  wallHook: 'Set the fixing as its packet says, and screw the hook in up to its shoulder.',
  bracket: 'Set the fixings as their packet says, and screw the bracket tight.',
  swingArm: 'Set the fixings as their packet says, and screw the arm tight.',
  overBeam: 'Take it round, over padding; nothing is drilled.',
}
const TWO_INTO_TIMBER = 'Screw each of the two hooks up to its shoulder into the middle of the timber, through a lead hole.'
const TWO_BY_PACKET = 'Set the fixings as their packet says, and screw each of the two hooks in up to its shoulder.'
/** What the place is like for the first step: unknown, or as told with what it is fixed into, and whether it hangs from two hooks. */
export type PlaceToFix = { readonly known: false; readonly two: boolean } | { readonly known: true; readonly two: boolean; readonly support: Support; readonly timber: boolean }

const fixText = (place: PlaceToFix): string => {
  if (!place.known) return 'Ask first. Then fix it as the back of this sheet says for your wall or ceiling.'
  if (place.two && (place.support === 'ceilingHook' || place.support === 'wallHook')) return place.timber ? TWO_INTO_TIMBER : TWO_BY_PACKET
  return (place.timber ? INTO_TIMBER : BY_PACKET)[place.support]
}

/** What the place is tried with, kg: its pull, and the weight of the pot it is for; that of the hanger's own where the place carries no more. */
export interface Trial {
  readonly pull: number
  readonly watered: number
  /** Pots under it, from the top. */
  readonly below: readonly number[]
  readonly pot: 'own' | 'heaviest'
}

/** The bucket of a test hang, or one for each of several pots. */
function bucketText(trial: Trial | null): string {
  if (trial === null) return 'Hang a bucket of water as heavy as the watered pot in the cradle for 24 hours, low over a cushion.'
  if (trial.below.length > 0) return `Hang buckets of water in the cradles for 24 hours, low over a cushion; from the top ${[trial.watered, ...trial.below].map(waterText).join(', ')}, each less what its bucket weighs.`
  const most = trial.pot === 'own' ? 'that of its own pot' : 'the weight above'
  return `Hang a bucket with ${waterText(trial.watered)} of water, less what the bucket weighs: both together no more than ${most}, in the cradle for 24 hours, low over a cushion.`
}

/** The five steps; `trial` null where no weight may be told. */
export function stepTexts(place: PlaceToFix, trial: Trial | null): readonly { readonly title: string; readonly text: string }[] {
  const pulled = trial === null ? 'one and a half times all that will hang' : massLeastText(trial.pull)
  return [
    { title: 'Fix.', text: fixText(place) },
    { title: 'Pull.', text: `Pull ${place.two ? 'each hook' : 'it'} in place with ${pulled}. Nothing may move, crack or open.` },
    { title: 'Test.', text: bucketText(trial) },
    { title: 'Set in.', text: 'Set the pot in with both hands, upright and in the middle, and let go slowly.' },
    { title: 'Look.', text: 'Water it, let it drain, and look: level, nothing slipped, the hook as it was.' },
  ]
}
export const STEPS_TITLE = 'Hang it in five steps'

function neverHeavier(trial: Trial | null): string {
  if (trial === null) return 'Never before it is changed and checked again.'
  if (trial.pot === 'heaviest') return 'Never heavier than the weight above, watered.'
  return `Never ${trial.below.length > 0 ? 'a top pot heavier' : 'heavier'} there than ${ownPotText(trial.watered)}, watered.`
}

/** What must never be done; what is beneath was reckoned with, and a told place that carries no more than its own pot. `trial` null where no weight may be told. */
export function neverTexts(beneath: Answers['place.beneath'], trial: Trial | null): readonly string[] {
  const people = beneath === 'people' || beneath === 'public'
  return [
    neverHeavier(trial),
    people ? 'Never over a bed, a cot or a seat without a second tie.' : 'Never where people sit, sleep or play beneath.',
    'Never for a person, a swing or a hammock.',
  ]
}

const EXPOSURE_TEXTS: Readonly<Record<Answers['place.exposure'], string>> = { indoors: 'hung indoors and dry', steamy: 'hung in a steamy room', outdoors: 'hung outdoors' }

/** What the weight was reckoned for. */
export const reckonedText = (answers: Pick<Answers, 'place.beneath' | 'place.exposure' | 'place.life'>): string =>
  `Reckoned for ${BENEATH_TEXTS[answers['place.beneath']]}, ${EXPOSURE_TEXTS[answers['place.exposure']]}, for ${timeText(answers['place.life'])}.`

/** What marks every page of a draft. */
export function draftText(verdict: Verdict): string {
  if (verdict === 'fails') return 'DRAFT: the hanger fails. Do not hang by this sheet.'
  if (verdict === 'not enough known') return 'DRAFT: not enough is known of the hanger. Do not hang by this sheet.'
  return 'DRAFT: not to be given away.'
}
