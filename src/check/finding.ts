import type { FieldPath } from '../hanger/fields'

/** What happens to the pot if something gives way. */
export type Outcome = 'stays' | 'tips' | 'falls' | 'unknown'

/** One coded statement by a check, with its numbers in SI. Sentences: words/findings.ts. */
export type Finding =
  | { readonly code: 'NO_POT_YET' }
  | { readonly code: 'NO_HANGER_YET' }
  | { readonly code: 'ANSWER_NEEDED'; readonly path: FieldPath; readonly assumed: string }
  | { readonly code: 'ASSUMED_PART_HOLDS'; readonly path: FieldPath; readonly assumed: string }
  | { readonly code: 'ASSUMED_PART_FAILS'; readonly path: FieldPath; readonly assumed: string }
  | { readonly code: 'WEIGHED_STATE_ASSUMED' }
  | { readonly code: 'FORCE_FROM_MASS'; readonly path: FieldPath; readonly force: number }
  | { readonly code: 'CORD_UNKNOWN' }
  | { readonly code: 'CORD_BY_DIAMETER'; readonly linearDensityKnown: boolean }
  | { readonly code: 'NATURAL_CORD_OUTDOORS_OVER_PEOPLE' }
  | { readonly code: 'NATURAL_CORD_OUTDOORS'; readonly tooLong: boolean }
  | { readonly code: 'OUTDOOR_LOSS_UNKNOWN' }
  | { readonly code: 'WIND_NOT_RECKONED' }
  | { readonly code: 'WEIGHED_TOO_LIGHT' }
  | { readonly code: 'LEG_TOO_SHORT'; readonly strand: number; readonly least: number }
  | { readonly code: 'LEG_ANGLE_WIDE'; readonly degrees: number }
  | { readonly code: 'LEG_ANGLE_REFUSED'; readonly degrees: number }
  | { readonly code: 'SLING_UNSTABLE' }
  | { readonly code: 'SLING_LOST_SUPPORT' }
  | { readonly code: 'SLING_NOT_CONVERGED' }
  | { readonly code: 'NEARLY_SLACK'; readonly legs: number; readonly millimetres: number }
  | { readonly code: 'LOW_OVERALL_FACTOR'; readonly factor: number; readonly least: number }
  | { readonly code: 'SHAPE_NOT_RECKONED'; readonly shape: 'square' | 'trough' }
  | { readonly code: 'VESSEL_ASSUMED'; readonly vessel: 'cover' | 'saucer' }
  | { readonly code: 'SEAT_LOCKED' }
  | { readonly code: 'SEAT_ON_FRICTION' }
  | { readonly code: 'SEAT_SLIDES' }
  | { readonly code: 'SEAT_TOPPLES' }
  | { readonly code: 'CRADLE_UNDER_BASE'; readonly first: number; readonly least: number }
  | { readonly code: 'CRADLE_ABOVE_RIM'; readonly first: number; readonly most: number }
  | { readonly code: 'GRIP_UNTESTED'; readonly testMass: number }
  | { readonly code: 'TEST_HANG_TOO_SHORT'; readonly time: number; readonly least: number }
  | { readonly code: 'TEST_HANG_SLIPPED'; readonly slip: number; readonly most: number }
  | { readonly code: 'TEST_HANG_SLIP_UNSAID'; readonly most: number }
  | { readonly code: 'RING_UNRATED'; readonly testMass: number }
  | { readonly code: 'RING_MAY_OPEN'; readonly force: number }
  | { readonly code: 'HOOK_OPEN_OVER_PEOPLE' }
  | { readonly code: 'HOOK_UNMARKED'; readonly testMass: number }
  | { readonly code: 'SUBSTRATE_UNKNOWN' }
  | { readonly code: 'PLASTERBOARD_REFUSED' }
  | { readonly code: 'MASONRY_NEEDS_RATING' }
  | { readonly code: 'PENETRATION_TOO_SHORT'; readonly given: number; readonly least: number }
  | { readonly code: 'PULL_IN_PLACE'; readonly mass: number }
  | { readonly code: 'STRAND_PARTS_AND_FALLS' }
  | { readonly code: 'STRAND_PARTS_UNKNOWN' }
  | { readonly code: 'CORD_TOO_HEAVY'; readonly perMetre: number; readonly most: number }
  | { readonly code: 'JUTE_DAMP' }
  | { readonly code: 'JUTE_NEVER_DRY'; readonly lost: number; readonly holeKnown: boolean }
  | { readonly code: 'UNDER_LIFE_LINE_FACTOR'; readonly factor: number; readonly least: number; readonly most: number }
  | { readonly code: 'RESERVE_CHANGED'; readonly own: number; readonly usual: number; readonly reason: string }
  | { readonly code: 'RESERVE_NEEDS_REASON'; readonly own: number; readonly usual: number }
  | { readonly code: 'RESERVE_LOW_OVER_PEOPLE'; readonly own: number; readonly usual: number }
  | { readonly code: 'FEW_PULL_TESTS'; readonly tests: number; readonly wanted: number }
  | { readonly code: 'PULL_TEST_OUTLIER'; readonly row: number }
  | { readonly code: 'PULL_TEST_HELD'; readonly tests: number }
  | { readonly code: 'PULL_TEST_IN_MASS'; readonly force: number }
  | { readonly code: 'PULL_TESTS_WOULD_SETTLE'; readonly tests: number; readonly mean: number }
  | { readonly code: 'OUTSIDE_ROPE_TABLE'; readonly diameter: number; readonly least: number; readonly most: number }
  | { readonly code: 'CORD_LIGHTER_THAN_TABLE'; readonly perMetre: number; readonly least: number }
  | { readonly code: 'JOIN_UNKNOWN' }
  | { readonly code: 'TEST_HANG_LIFTS'; readonly mass: number; readonly atRest: number; readonly forAMoment: number }
  | { readonly code: 'REDUNDANCY_LEG'; readonly outcome: Outcome }
  | { readonly code: 'REDUNDANCY_STRAND'; readonly outcome: Outcome }
  | { readonly code: 'UNKNOWN_KEYS'; readonly names: readonly string[] }

export type FindingCode = Finding['code']
