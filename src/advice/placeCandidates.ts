import { peopleBeneath } from '../catalogue/reserves'
import type { FieldPath } from '../hanger/fields'
import type { Hanger } from '../hanger/hanger'
import { formatSi } from '../quantity/formatSi'
import { INCH } from '../quantity/si'
import { PLACE_KINDS, type PlaceForm, type UsualPlace } from './usualPlaces'

/** Texts of the fields of the place: what stood in them is taken back where it is null. */
export type PlaceChanges = Readonly<Partial<Record<FieldPath, string | null>>>

/** One fixing as it is sold, written into the hanger file. */
export interface PlaceCandidate {
  readonly form: PlaceForm
  /** Its thickness as sold, and its whole length; null where it has none to choose. */
  readonly size: string
  readonly length: string | null
  readonly count: number
  readonly changes: PlaceChanges
}

/** Ratings that packets are taken to print, as texts: of the fixing itself, and of the hook or bracket it holds. */
export interface PacketTexts {
  readonly fixing: string
  readonly holder: string
}

/** Answers of another fixing that would be mistaken for those of this one. */
const TAKEN_BACK: readonly FieldPath[] = [
  'fixing.kind', 'fixing.screw', 'fixing.length', 'fixing.timberDepth', 'fixing.grain', 'fixing.count', 'fixing.plugHole', 'fixing.rated', 'fixing.ratedFor', 'fixing.ratedShear', 'fixing.diameter', 'fixing.penetration', 'fixing.proof',
  'hook.kind', 'hook.rated', 'hook.metal', 'hook.wire', 'hook.inside', 'hook.projection', 'bracket.rated', 'bracket.metal', 'bracket.thick', 'bracket.high',
]
/** The document's own answers to these are of the wall or bracket, and are kept. */
const EMPTIED: PlaceChanges = Object.fromEntries(TAKEN_BACK.map((path) => [path, null]))

const mm = (length: number): string => formatSi(Math.round(length * 1000) / 1000, 'mm')
const upTo = (step: number, length: number): number => Math.ceil(length / step - 1e-9) * step

/** Screw hooks and eyes by their wire, mm, which is also the thread; threads of six, eight and ten wires. */
const HOOK_WIRES = [4, 5, 6, 8] as const
const THREADS = [6, 8, 10] as const
/** Bowl and reach of screw hooks as sold, in wires: wide inside, and from the ceiling to the bowl. */
const BOWL = 6
const REACH = { screwHook: 10, screwEye: 6, lagEye: 6 } as const
const LAGS = [['1/4 in', 1 / 4], ['5/16 in', 5 / 16], ['3/8 in', 3 / 8]] as const
const LAG_THREADS = [6, 8, 10] as const

/** Lengths that each thickness is sold in. */
const GAUGE_SCREWS = [['#6', ['1-1/4', '1-1/2', '2']], ['#8', ['1-1/2', '2', '2-1/2']], ['#10', ['2', '2-1/2', '3']], ['#12', ['2', '2-1/2', '3']], ['#14', ['2-1/2', '3', '3-1/2']]] as const
const METRIC_SCREWS = [['3.5', [35, 40, 50]], ['4', [40, 50, 60]], ['4.5', [50, 60, 70]], ['5', [60, 70, 80]], ['6', [70, 80, 100]]] as const
const LAG_SCREWS = [['1/4', ['2', '2-1/2', '3']], ['5/16', ['2-1/2', '3', '4']], ['3/8', ['3', '4', '5']]] as const
const PLUG_HOLES = ['6 mm', '8 mm', '10 mm'] as const
/** Screw of a plug in aerated block, which needs its depth, and the plate it passes. */
const IN_AERATED: PlaceChanges = { 'fixing.length': '60 mm', 'fixing.between': '5 mm' }
/** Eye bolts of anchors, by their wire, mm. */
const EYE_BOLTS = [5, 6, 8, 10] as const

/** How far a hook on a wall stands out. */
const WALL_REACH = '40 mm'
/** Plasterboard and the plate of a bracket, which a screw passes before the stud begins. */
const BOARD_AND_PLATE = '16 mm'
/** Room between the widest part of a pot and the wall. */
const CLEAR = 0.04

/** The forms that are tried at a place: on a wall hook's stud, screw hooks in place of a bracket's screws. */
export const formsAt = (place: UsualPlace, hanger: Hanger): readonly PlaceForm[] =>
  (place === 'studInWall' && onHook(place, hanger) ? PLACE_KINDS.joistOverhead.forms : PLACE_KINDS[place].forms)

/**
 * The fixings of one form at a usual place, each as changes to the hanger file, from the smallest up. `packet`
 * are the ratings of what is bought by them. On a wall the
 * bracket or hook of the document is taken, else a bracket that lets the pot hang clear.
 */
export function placeCandidates(place: UsualPlace, form: PlaceForm, hanger: Hanger, packet: PacketTexts): readonly PlaceCandidate[] {
  const start: PlaceChanges = { ...EMPTIED, ...standing(place, hanger, packet.holder) }
  const make = (size: string, length: string | null, count: number, changes: PlaceChanges): PlaceCandidate => ({ form, size, length, count, changes: { ...start, ...changes } })
  const printed = ratingChanges(place, packet.fixing)
  const counts = countsAt(place, hanger)
  const holders = holdersAt(place, hanger)
  const each = <T>(sizes: readonly T[], of: (size: T, count: number, counted: PlaceChanges) => readonly PlaceCandidate[]): readonly PlaceCandidate[] =>
    counts.flatMap((count) => holders.flatMap((holder) => sizes.flatMap((size) => of(size, count, { ...counted(hanger, count), ...holder }))))
  const bowl = (wire: number, reach: number, kind: string): PlaceChanges => ({ 'hook.kind': kind, 'hook.metal': 'steel', 'hook.wire': mm(wire), 'hook.inside': mm(BOWL * wire), 'hook.projection': mm(reach) })

  switch (form) {
    case 'screwEye':
    case 'screwHook': {
      const open = peopleBeneath(hanger.answers['place.beneath']) ? 'latched' : 'open'
      return HOOK_WIRES.flatMap((size) => THREADS.map((turns) => make(`${size} mm`, null, 1, {
        ...bowl(size / 1000, (REACH[form] * size) / 1000, form === 'screwEye' ? 'closed' : open),
        'fixing.kind': 'screwHook', 'fixing.diameter': `${size} mm`, 'fixing.penetration': mm(upTo(5, turns * size) / 1000),
      })))
    }
    case 'lagEye':
      return LAGS.flatMap(([size, inches]) => LAG_THREADS.map((turns) => make(size, null, 1, {
        ...bowl(inches * INCH, REACH.lagEye * inches * INCH, 'closed'),
        'fixing.kind': 'lagScrew', 'fixing.diameter': size, 'fixing.penetration': mm(upTo(5, turns * inches * INCH * 1000) / 1000),
      })))
    case 'gaugeScrews': return each(GAUGE_SCREWS, ([size, lengths], n, by) => lengths.map((length) => make(size, `${length} in`, n, { ...by, 'fixing.kind': 'woodScrew', 'fixing.screw': `${size} x ${length} in` })))
    case 'metricScrews': return each(METRIC_SCREWS, ([size, lengths], n, by) => lengths.map((length) => make(`${size} mm`, `${length} mm`, n, { ...by, 'fixing.kind': 'woodScrew', 'fixing.screw': `${size} x ${length} mm` })))
    case 'lagScrews': return each(LAG_SCREWS, ([size, lengths], n, by) => lengths.map((length) => make(`${size} in`, `${length} in`, n, { ...by, 'fixing.kind': 'lagScrew', 'fixing.screw': `${size} x ${length} in` })))
    case 'plug': return each(PLUG_HOLES, (size, n, by) => [make(size, null, n, { ...by, 'fixing.kind': 'plug', 'fixing.plugHole': size })])
    case 'toggle': return each([null], (_, n, by) => [make('', null, n, { ...by, 'fixing.kind': 'boardFixing' })])
    case 'ratedToggle': return each([null], (_, n, by) => [make('', null, n, { ...by, ...printed, 'fixing.kind': 'boardFixing' })])
    case 'ratedPlug': return each([null], (_, n, by) => [make('', null, n, { ...by, ...printed, 'fixing.kind': 'plug' })])
    case 'metalAnchor': return each([null], (_, n, by) => [make('', null, n, { ...by, ...printed, 'fixing.kind': 'metalAnchor' })])
    case 'anchorEye': return EYE_BOLTS.map((wire) => make(`${wire} mm`, null, 1, { ...bowl(wire / 1000, (REACH.screwEye * wire) / 1000, 'closed'), ...printed, 'hook.rated': packet.holder, 'fixing.kind': 'metalAnchor' }))
    case 'tiedRound': return [make('', null, 1, {})]
  }
}

/** A rating as it is typed: straight out, on a wall the same along it. */
const ratingChanges = (place: UsualPlace, rated: string): PlaceChanges =>
  ({ 'fixing.rated': rated, 'fixing.ratedFor': 'pullOut', ...(PLACE_KINDS[place].at === 'wall' ? { 'fixing.ratedShear': rated } : {}) })

/** What holds by rated parts alone, to see what their packets would have to say. */
export function ratedThroughout(place: UsualPlace, hanger: Hanger, packet: PacketTexts): PlaceChanges {
  const { at } = PLACE_KINDS[place]
  const [form] = formsAt(place, hanger)
  const first = form === undefined ? null : placeCandidates(place, form, hanger, packet)[0]
  return { ...first?.changes, ...ratingChanges(place, packet.fixing), ...(at === 'overhead' || first?.changes['place.support'] === 'wallHook' ? { 'hook.rated': packet.holder } : {}) }
}

/** What is put there, and into what. */
function standing(place: UsualPlace, { answers, given }: Hanger, rated: string): PlaceChanges {
  const { at, substrate } = PLACE_KINDS[place]
  if (at === 'round') return { 'place.support': 'overBeam', 'place.substrate': substrate }
  if (at === 'overhead') return { 'place.support': 'ceilingHook', 'place.substrate': substrate, 'fixing.grain': 'side' }
  const support = supportOnWall(answers['place.support'])
  const between = given.has('fixing.between') ? {} : { 'fixing.between': BOARD_AND_PLATE }
  const wall: PlaceChanges = {
    'place.support': support, 'place.substrate': substrate,
    ...(substrate === 'timber' ? { 'fixing.grain': 'side', ...between } : {}),
    ...(substrate === 'aeratedBlock' ? IN_AERATED : {}),
  }
  if (support === 'wallHook') return { ...wall, 'hook.kind': 'closed', 'hook.rated': rated, 'hook.metal': 'steel', 'hook.projection': WALL_REACH }
  const widest = Math.max(answers['pot.rim'], answers['pot.shape'] === 'bellied' ? answers['pot.belly'] : 0)
  return {
    ...wall, 'bracket.rated': rated,
    'bracket.reach': given.has('bracket.reach') ? mm(answers['bracket.reach']) : mm(upTo(0.01, Math.max(answers['bracket.reach'], widest / 2 + CLEAR))),
    'bracket.top': mm(answers['bracket.top']), 'bracket.bottom': mm(answers['bracket.bottom']),
  }
}

/** A wall hook or swing arm is kept where the document has one; else a bracket stands for all. */
export const supportOnWall = (support: string): 'wallHook' | 'swingArm' | 'bracket' => (support === 'wallHook' || support === 'swingArm' ? support : 'bracket')

const onHook = (place: UsualPlace, { answers }: Hanger): boolean => PLACE_KINDS[place].at !== 'wall' || supportOnWall(answers['place.support']) === 'wallHook'
/** Closed hooks for a wall, by their wire; a bracket is bought by its rating. */
const holdersAt = (place: UsualPlace, hanger: Hanger): readonly PlaceChanges[] => (onHook(place, hanger) ? EYE_BOLTS.map((wire): PlaceChanges => ({ 'hook.wire': `${wire} mm` })) : [{}])
const countsAt = (place: UsualPlace, hanger: Hanger): readonly number[] => (onHook(place, hanger) ? [1, 2] : hanger.given.has('bracket.screws') ? [hanger.answers['bracket.screws']] : [2, 3, 4])
const counted = ({ answers }: Hanger, count: number): PlaceChanges => (supportOnWall(answers['place.support']) === 'wallHook' ? { 'fixing.count': String(count) } : { 'bracket.screws': String(count) })
