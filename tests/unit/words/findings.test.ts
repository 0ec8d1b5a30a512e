import { describe, expect, test } from 'vitest'
import { checkOf, hangerOf, ORDINARY } from '../hanger/hangerOf'
import { randomPatch } from '../check/randomPatch'
import { without } from '../hanger/without'
import { FIELD_PATHS, FIELD_WORDS, fieldOf, findingText, type FieldPath, type Finding, type Patch } from '#core'
import type { FindingCode } from '../../../src/check/finding'
import { FINDING_CODES_WITH_WORDS } from '../../../src/words/findings'
import { sentenceFaultsOf } from './cleanSentence'

type Of<C extends FindingCode> = Extract<Finding, { code: C }>
type Numbers<C extends FindingCode> = Omit<Of<C>, 'code'>

/** Samples of every finding with numbers of many digits, and what its sentence must say. The type asks for every code. */
const SAMPLES: { readonly [C in FindingCode]: readonly (readonly [Numbers<C>, ...string[]])[] } = {
  NO_POT_YET: [[{}]],
  NO_HANGER_YET: [[{}]],
  ANSWER_NEEDED: [[{ path: 'pot.material', assumed: 'terracotta' }, 'terracotta, unglazed'], [{ path: 'make.legs', assumed: '4' }, 'Number of legs', '4']],
  ASSUMED_PART_HOLDS: [[{ path: 'ring.wire', assumed: '4 mm' }, 'Thickness of the ring', '4 mm'], [{ path: 'hook.kind', assumed: 'open' }, 'open hook']],
  ASSUMED_PART_FAILS: [[{ path: 'hook.kind', assumed: 'open' }, 'open hook'], [{ path: 'fixing.penetration', assumed: '30 mm' }, '30 mm']],
  WEIGHED_STATE_ASSUMED: [[{}]],
  FORCE_FROM_MASS: [[{ path: 'hook.rated', force: 147.1 }, 'Rated load of the hook', '147 N']],
  CORD_UNKNOWN: [[{}, '10 m']],
  CORD_BY_DIAMETER: [[{ linearDensityKnown: false }, '10 m'], [{ linearDensityKnown: true }, 'fibre']],
  NATURAL_CORD_OUTDOORS_OVER_PEOPLE: [[{}]],
  NATURAL_CORD_OUTDOORS: [[{ tooLong: true }], [{ tooLong: false }]],
  OUTDOOR_LOSS_UNKNOWN: [[{}]],
  LEANS_IN_WIND: [[{ speed: 18, lean: 34, swing: 68, reach: 0.92, strikes: false }, '92 cm'], [{ speed: 26, lean: 61, swing: 122, reach: null, strikes: false }, '90°'], [{ speed: 12, lean: 14, swing: 28, reach: 0.45, strikes: true }, 'strike the wall']],
  WIND_THROWS: [[{ speed: 26, force: 58 }, '94 km/h (58 mph)']],
  TUG_RECKONED: [[{ who: 'child', pull: 250, assumed: true }, 'say so'], [{ who: 'cat', pull: 98, assumed: false }, 'cat']],
  WEIGHED_TOO_LIGHT: [[{}]],
  LEG_TOO_SHORT: [[{ strand: 0.3050000001, least: 0.36327777 }, '30.5 cm (12 in)', '36.3 cm (14 5/16 in)', 'at least 60 mm'], [{ strand: -0.0312, least: 0.2 }, '0 mm', 'at least 235 mm', 'fringe shorter']],
  LEG_ANGLE_WIDE: [[{ degrees: 61.23456789, longer: 0.0123456 }, '61°', 'at least 15 mm']],
  LEG_ANGLE_REFUSED: [[{ degrees: 78.6000001, longer: 0.101 }, '79°', 'at least 105 mm']],
  SLING_UNSTABLE: [[{}]],
  SLING_LOST_SUPPORT: [[{}]],
  SLING_NOT_CONVERGED: [[{}]],
  NEARLY_SLACK: [[{ legs: 1, millimetres: 10 }, '10 mm', '1 leg '], [{ legs: 3, millimetres: 9.524999999999999 }, '9.52 mm', '3 legs']],
  LOW_OVERALL_FACTOR: [[{ factor: 4.123456789, least: 5 }, '4.12 times', '5 to 12']],
  STRANDS_UNEQUAL: [[{ legs: [2], shorter: 0.0312345 }, 'Leg 2 has', '31.2 mm'], [{ legs: [2, 4, 5], shorter: 0.1 }, 'Legs 2, 4 and 5 have'], [{ legs: [1, 2, 3, 4, 5, 6, 7], shorter: 0.1 }, 'Some legs']],
  STRANDS_SLIP_ALONG: [[{ legs: [1], atCorners: true, held: true }, 'hold them there'], [{ legs: [1], atCorners: true, held: false }, 'middle of the sides'], [{ legs: [2, 3], atCorners: false, held: false }, 'four legs']],
  RING_LEVEL_UNTESTED: [[{ testMass: 12.0412345 }, '12.1 kg']],
  RING_CORDS_WIDE: [[{ degrees: 61.23456789, refused: false }, '61°'], [{ degrees: 76.7, refused: true }, '77°']],
  SHAPE_NOT_RECKONED: [[{ shape: 'square' }, 'square pot'], [{ shape: 'trough' }, 'trough']],
  VESSEL_ASSUMED: [[{ vessel: 'cover' }, 'cover pot'], [{ vessel: 'saucer' }, 'saucer']],
  SEAT_LOCKED: [[{}]],
  SEAT_LOWER_OUT: [[{}]],
  LOWER_NOT_WEIGHED: [[{ pots: 1, watered: 4.6 }, '4.6 kg', 'The lower pot was'], [{ pots: 2, watered: 9.3 }, '9.3 kg', 'together']],
  TIERS_OWN_CORDS: [[{}, 'just holds']],
  TIERS_HELD_BY_WRAPS: [[{ assumed: true }, 'not said'], [{ assumed: false }, 'hangs on cords']],
  SEAT_ON_FRICTION: [[{}]],
  SEAT_SLIDES: [[{}]],
  SEAT_TOPPLES: [[{}]],
  CRADLE_UNDER_BASE: [[{ first: 0.0612345, least: 0.0701 }, '61.2 mm', '70.1 mm', 'at least 10 mm', 'further up']],
  CRADLE_ABOVE_RIM: [[{ first: 0.2612345, most: 0.2582828 }, '261 mm', '258 mm', 'at least 5 mm', 'further down']],
  CRADLE_LOW: [[{ first: 0.0721234, needed: 0.15 }, '150 mm', 'at least 80 mm', 'second row'], [{ first: 0.2, needed: null }, 'second row']],
  CRADLE_GAPS: [[{ gap: 0.1812345, base: 0.1401234 }, '181 mm', '140 mm']],
  CRADLE_SECOND_LOW: [[{ first: 0.1512345, second: 0.12 }, '151 mm', '120 mm']],
  BASE_ON_KNOT: [[{ bundle: 0.0451234, base: 0.04 }, '45.1 mm', '40 mm']],
  NET_TOO_NARROW: [[{ girth: 0.6601234, opens: 0.4, second: 0.1976 }, '66 cm', '40 cm', '200 mm']],
  GRIP_UNTESTED: [[{ testMass: 12.0412345 }, '12.1 kg', '26.6 lb']],
  WRAPPING_CORD_SHORT: [[{ length: 0.6, makes: 4, wraps: 8, needed: 0.95123456 }, '60 cm', '4 wraps', '8 were said', '96 cm'], [{ length: 0.3, makes: 1, wraps: 2, needed: 0.413 }, '1 wrap ']],
  TEST_HANG_TOO_SHORT: [[{ time: 3600, least: 86400 }, '1 hour', '1 day'], [{ time: 82800, least: 86400 }, '23 hours']],
  TEST_HANG_SLIPPED: [[{ slip: 0.0045, most: 0.003 }, '4.5 mm', '3 mm']],
  TEST_HANG_SLIP_UNSAID: [[{ most: 0.003 }, '3 mm']],
  RING_UNRATED: [[{ testMass: 15.0412345 }, '15.1 kg']],
  RING_MAY_OPEN: [[{ force: 98.0665 }, '10 kg']],
  HOOK_OPEN_OVER_PEOPLE: [[{}]],
  HOOK_UNMARKED: [[{ testMass: 15.0412345 }, '15.1 kg']],
  HOOK_MAY_OPEN: [[{ force: 117.6798 }, '12 kg', 'open slightly']],
  HOOK_MAY_UNSCREW: [[{}, 'swivel']],
  CONNECTOR_OPEN_OVER_PEOPLE: [[{ kind: 'sHook' }, 'S-hook is refused'], [{ kind: 'chain' }, 'chain of open links is refused']],
  CONNECTOR_UNRATED: [[{ testMass: 23.123456 }, '23.2 kg', 'rating']],
  CHAIN_NOT_FOR_LIFTING: [[{}]],
  CHAIN_UNWELDED: [[{}]],
  RING_ACROSS_GRAIN: [[{ asked: 8.59e6, bears: 0.9e6 }, '9.54 times']],
  STICK_TIPS: [[{}]],
  ROW_TIPS: [[{}]],
  ROW_LEANS: [[{ degrees: 7.6543, runs: false }, '8°', 'holds it there'], [{ degrees: 31.2, runs: true }, 'two hooks']],
  ROW_BEYOND_STICK: [[{ least: 0.8012345 }, '80.1 cm']],
  ROW_TESTED: [[{}]],
  ROW_TOUCHES: [[{ least: 0.2012345 }, '201 mm']],
  STICK_UNRATED: [[{ testMass: 17.123456 }, '17.2 kg']],
  STICK_DIAMETER_NEEDED: [[{ diameter: 0.022 }, '22 mm']],
  STICK_NONE_THICK_ENOUGH: [[{ most: 0.032 }, '32 mm']],
  STICK_WET_OUTDOORS: [[{}]],
  STICK_SAGS: [[{ sag: 0.00612345, lasting: 0.0122469 }, '6.12 mm', '12.2 mm']],
  BAMBOO_SPLITS: [[{}]],
  BAMBOO_HOLLOW_UNKNOWN: [[{}]],
  TOP_CORD_TOO_SHORT: [[{ cord: 0.25, least: 0.2712345 }, '250 mm', '271 mm']],
  TOP_CORD_SHALLOW: [[{ degrees: 24.56789, refused: false }, '25°'], [{ degrees: 11.23456, refused: true }, '11°', 'below 15°']],
  TOP_CORD_OFFSET: [[{ most: 0.01581234 }, '15.8 mm']],
  TOP_CORD_RUNS: [[{ offset: 0.0212345, most: 0.0158, ratio: 1.4234 }, '21.2 mm', '15.8 mm', '1.42 times']],
  TOP_CORD_LEANS: [[{ degrees: 5.7345, ratio: 1.2234 }, '6°', '1.22 times']],
  TOP_CORD_PARTS: [[{ strands: 1 }, 'one strand'], [{ strands: 3 }, 'each is tied by itself']],
  SUBSTRATE_UNKNOWN: [[{}]],
  FIXING_REFUSED: [[{ what: 'plasterboardCeiling' }, 'plasterboard ceiling', 'joist'], [{ what: 'smoothNailPulledOut' }, 'nail']],
  FIXING_KIND_UNKNOWN: [[{}]],
  FIXING_NOT_FOR_TIMBER: [[{ kind: 'boardFixing' }, 'toggle']],
  GO_ROUND_INSTEAD: [[{ substrate: 'steelBeam' }, 'a steel beam'], [{ substrate: 'branch' }, 'a branch']],
  NOTHING_TO_GO_ROUND: [[{}]],
  BEAM_CARRIES: [[{}]],
  CORD_OVER_EDGE: [[{}]],
  RAIL_NEEDS_RATING: [[{ testMass: 15.0412345 }, '15.1 kg']],
  BRANCH_UNTESTED: [[{ testMass: 15.0412345 }, '15.1 kg']],
  RATING_FOR_SHEAR: [[{ rated: 392.266 }, '40 kg', 'straight pull']],
  RATING_WAY_UNSAID: [[{ capped: true }, 'just holds'], [{ capped: false }, 'straight pull']],
  LOW_TABLE_FIGURE: [[{}, 'just holds']],
  AERATED_DEPTH: [[{ given: null, least: 0.05 }, '50 mm', 'Say how long'], [{ given: 0.0312345, least: 0.05 }, '50 mm', '31.2 mm'], [{ given: -0.002, least: 0.05 }, '0 mm']],
  BOARD_NEEDS_RATING: [[{}]],
  WALL_LEAN_UNKNOWN: [[{}]],
  BRACKET_NO_LEVER: [[{}]],
  BRACKET_TURNS: [[{}]],
  BRACKET_UNRATED: [[{}]],
  TOLD_BY_CUSTOMER: [[{}]],
  SCREW_LONGER_THAN_TIMBER: [[{ length: 0.0798765, depth: 0.038 }, '79.9 mm', '38 mm']],
  LEAD_HOLE: [[{ diameter: 0.00233333 }, '2.33 mm']],
  MASONRY_NEEDS_RATING: [[{}]],
  PENETRATION_TOO_SHORT: [[{ given: 0.0123456, least: 0.028575 }, '12.3 mm', '28.6 mm'], [{ given: 0, least: 0.024 }, '0 mm']],
  PULL_IN_PLACE: [[{ mass: 12.3412345 }, '12.4 kg', '27.3 lb']],
  STRAND_PARTS_AND_FALLS: [[{}]],
  STRAND_PARTS_UNKNOWN: [[{}]],
  CORD_TOO_HEAVY: [[{ perMetre: 0.048, most: 0.01131 }, '48 g/m', '11.3 g/m']],
  JUTE_DAMP: [[{}]],
  JUTE_NEVER_DRY: [[{ lost: 6574500, holeKnown: true }, '2.5 months', 'refused'], [{ lost: 6574500, holeKnown: false }, '2.5 months', 'Say whether']],
  UNDER_LIFE_LINE_FACTOR: [[{ factor: 9.87654321, least: 12, most: 15 }, '12 to 15', '9.88 times']],
  RESERVE_CHANGED: [[{ own: 2.25, usual: 3, reason: 'a test hang with the shop’s crane' }, '2.25', 'usual 3', '“a test hang with the shop’s crane”']],
  RESERVE_NEEDS_REASON: [[{ own: 4.123456789, usual: 1.5 }, '4.12', 'usual 1.5']],
  RESERVE_LOW_OVER_PEOPLE: [[{ own: 2, usual: 3 }, 'reserve is 2', 'usual 3', 'just holds']],
  FEW_PULL_TESTS: [[{ tests: 1, wanted: 5 }, 'One pull test', '5 tests'], [{ tests: 2, wanted: 5 }, 'Two pull tests']],
  PULL_TEST_OUTLIER: [[{ row: 2 }, 'Pull test 3']],
  PULL_TESTS_TIED_STRONGER: [[{ tied: 840, straight: 212 }, '85.7 kg', '21.6 kg', 'several strands']],
  PULL_TEST_HELD: [[{ tests: 1 }, 'One pull test'], [{ tests: 4 }, '4 pull tests']],
  PULL_TEST_IN_MASS: [[{ force: 117.6798 }, '12 kg', '118 N']],
  PULL_TESTS_WOULD_SETTLE: [[{ tests: 5, mean: 233.123456 }, 'Pull 5 single strands', '23.8 kg']],
  OUTSIDE_ROPE_TABLE: [[{ diameter: 0.00412345, least: 0.0047625, most: 0.014 }, 'begins', '4.12 mm', '4.76 mm'], [{ diameter: 0.0182, least: 0.0047625, most: 0.014 }, 'ends', '18.2 mm', '14 mm']],
  CORD_LIGHTER_THAN_TABLE: [[{ perMetre: 0.0171234, least: 0.01834567 }, '17.1 g/m', '18.3 g/m']],
  JOIN_UNKNOWN: [[{}]],
  TEST_HANG_LIFTS: [[{ mass: 17.3, atRest: 8.65, forAMoment: 17.3 }, '17.3 kg', '8.6 kg'], [{ mass: 20, atRest: 6.6666, forAMoment: 13.3333 }, '6.6 kg', '13.3 kg']],
  PANEL_NARROW: [[{ width: 0.21, least: 0.264 }, '210 mm', '264 mm']],
  PANEL_OVER_RIM: [[{}]],
  PANEL_LOW: [[{}]],
  PANEL_OFF_BASE: [[{}]],
  PANEL_CORNERS: [[{ shape: 'square' }, 'square pot'], [{ shape: 'trough' }, 'trough']],
  PANEL_CURVED: [[{}]],
  PANEL_ANGLE: [[{ degrees: 63.4, refused: false }, '63°'], [{ degrees: 78.2, refused: true }, '78°']],
  PANEL_CORDS_FEW: [[{ cords: 5, needed: 13 }, '5 cords', '10 strands', '13', '7 cords']],
  PANEL_NET_STRANDS: [[{ knots: 1, needed: 4, strands: 6 }, '1 knot ', '4 strands', '6'], [{ knots: 3, needed: 12, strands: 10 }, '3 knots', '12 strands', '10']],
  PANEL_NO_WALL: [[{}]],
  PANEL_SHARES: [[{ drawn: 0.726, longer: 0.648, shorter: 0.811, tolerance: 0.008 }, '73 %', '65 %', '81 %', '8 mm']],
  REDUNDANCY_PANEL: [[{ front: 'stays', back: 'tips' }], [{ front: 'falls', back: 'unknown' }]],
  PANEL_SEAT_PINNED: [[{}]],
  PANEL_SEAT_LOOSE: [[{}]],
  REDUNDANCY_LEG: [[{ outcome: 'stays' }], [{ outcome: 'tips' }], [{ outcome: 'falls' }], [{ outcome: 'unknown' }]],
  REDUNDANCY_STRAND: [[{ outcome: 'stays' }], [{ outcome: 'tips' }], [{ outcome: 'falls' }], [{ outcome: 'unknown' }]],
  INSPECTION_OPEN: [[{ what: 'frayed', date: '2027-03-09', leg: 3 }, 'Leg 3', 'frayed', '9 March 2027', 'gone'], [{ what: 'slipped', date: null, leg: null }, 'slipped', 'anew']],
  INSPECTION_STRAND_GONE: [[{ strands: 1, leg: 2, reckoned: true }, 'One strand of leg 2 is', 'reckoned'], [{ strands: 3, leg: null, reckoned: false }, '3 strands of a leg are', 'panel']],
  UNKNOWN_KEYS: [[{ names: ['pot.colour', 'notes'] }, 'pot.colour, notes']],
}

const samples = Object.entries(SAMPLES).flatMap(([code, list]) => list.map(([numbers, ...says]) => ({ code, finding: { code, ...numbers } as Finding, says })))

test.each(samples)('$code says it in a clean sentence: $finding', ({ finding, says }) => {
  const text = findingText(finding)
  expect(sentenceFaultsOf(text), text).toEqual([])
  for (const part of says) expect(text).toContain(part)
})

test('words and findings have the same codes', () => {
  expect([...FINDING_CODES_WITH_WORDS].sort()).toEqual(Object.keys(SAMPLES).sort())
})

test('a finding without words is not silent', () => {
  expect(() => findingText({ code: 'MADE_UP' } as unknown as Finding)).toThrow(TypeError)
})

describe('any field that was only assumed can be named in a sentence', () => {
  // What may be assumed is any choice or any quantity with a default.
  const paths = FIELD_PATHS.filter((path) => ['choice', 'quantity'].includes(fieldOf(path).type))
  test.each(paths)('%s', (path: FieldPath) => {
    const { assumed } = hangerOf({})
    const text = assumed.find((a) => a.path === path)?.text ?? ''
    for (const code of ['ANSWER_NEEDED', 'ASSUMED_PART_HOLDS', 'ASSUMED_PART_FAILS'] as const) {
      const sentence = findingText({ code, path, assumed: text })
      expect(sentenceFaultsOf(sentence), sentence).toEqual([])
      expect(sentence).toContain(FIELD_WORDS[path].choices[text] ?? text)
    }
  })
})

test('what is found in hangers of all kinds is said in clean sentences', () => {
  const faults = Array.from({ length: 80 }, (_, i) => checkOf(randomPatch(i + 500))).flatMap((check) =>
    [...check.findings, ...check.links.flatMap((l) => l.findings)].map(findingText).filter((text) => sentenceFaultsOf(text).length > 0))
  expect([...new Set(faults)]).toEqual([])
})

describe('what a sentence asks for settles it', () => {
  const massIn = (text: string): string => text.match(/[\d.]+ kg/)?.[0] ?? ''
  const found = (patch: Patch, code: FindingCode): string | null => {
    const finding = checkOf(patch).links.flatMap((l) => l.findings).find((f) => f.code === code)
    return finding ? findingText(finding) : null
  }

  test.each([['5.13 kg', 'furniture'], ['6.02 kg', 'people'], ['7.77 kg', 'nothing'], ['8.03 kg', 'public']])('a pot of %s over %s: the test hang and the pull that are asked for are enough', (mass, beneath) => {
    const untested: Patch = { ...without(ORDINARY, 'fixing.proof'), 'weighed.mass': mass, 'place.beneath': beneath }
    const hang = massIn(found(untested, 'GRIP_UNTESTED') ?? '')
    const tested: Patch = { ...untested, 'testHang.mass': hang, 'testHang.time': '24 h', 'testHang.slip': '1 mm' }
    expect(found(tested, 'GRIP_UNTESTED')).toBeNull()
    const pull = massIn(found(tested, 'PULL_IN_PLACE') ?? '')
    expect(found({ ...tested, 'fixing.proof': pull }, 'PULL_IN_PLACE')).toBeNull()
  })
})
