import type { Puller } from '../catalogue/jolts'
import type { Refusal } from '../catalogue/refusals'
import type { Answers, FieldPath } from '../hanger/fields'

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
  /** Angles in degrees; reach from the plumb line, m; `strikes`: the wall it hangs by is nearer than that. */
  | { readonly code: 'LEANS_IN_WIND'; readonly speed: number; readonly lean: number; readonly swing: number; readonly reach: number | null; readonly strikes: boolean }
  | { readonly code: 'WIND_THROWS'; readonly speed: number; readonly force: number }
  | { readonly code: 'TUG_RECKONED'; readonly who: Puller; readonly pull: number; readonly assumed: boolean }
  | { readonly code: 'WEIGHED_TOO_LIGHT' }
  | { readonly code: 'LEG_TOO_SHORT'; readonly strand: number; readonly least: number }
  | { readonly code: 'LEG_ANGLE_WIDE'; readonly degrees: number; readonly longer: number }
  | { readonly code: 'LEG_ANGLE_REFUSED'; readonly degrees: number; readonly longer: number }
  | { readonly code: 'SLING_UNSTABLE' }
  | { readonly code: 'SLING_LOST_SUPPORT' }
  | { readonly code: 'SLING_NOT_CONVERGED' }
  | { readonly code: 'NEARLY_SLACK'; readonly legs: number; readonly millimetres: number }
  | { readonly code: 'LOW_OVERALL_FACTOR'; readonly factor: number; readonly least: number }
  | { readonly code: 'SHAPE_NOT_RECKONED'; readonly shape: 'square' | 'trough' }
  /** Legs, from 1: strands up to so much shorter than the longest, m. */
  | { readonly code: 'STRANDS_UNEQUAL'; readonly legs: readonly number[]; readonly shorter: number }
  | { readonly code: 'STRANDS_SLIP_ALONG'; readonly legs: readonly number[]; readonly atCorners: boolean; readonly held: boolean }
  | { readonly code: 'VESSEL_ASSUMED'; readonly vessel: 'cover' | 'saucer' }
  | { readonly code: 'SEAT_LOCKED' }
  | { readonly code: 'SEAT_LOWER_OUT' }
  | { readonly code: 'LOWER_NOT_WEIGHED'; readonly pots: number; readonly watered: number }
  | { readonly code: 'TIERS_OWN_CORDS' }
  | { readonly code: 'TIERS_HELD_BY_WRAPS'; readonly assumed: boolean }
  | { readonly code: 'SEAT_ON_FRICTION' }
  | { readonly code: 'SEAT_SLIDES' }
  | { readonly code: 'SEAT_TOPPLES' }
  | { readonly code: 'CRADLE_UNDER_BASE'; readonly first: number; readonly least: number }
  | { readonly code: 'CRADLE_ABOVE_RIM'; readonly first: number; readonly most: number }
  | { readonly code: 'CRADLE_LOW'; readonly first: number; readonly needed: number | null }
  | { readonly code: 'CRADLE_GAPS'; readonly gap: number; readonly base: number }
  | { readonly code: 'CRADLE_SECOND_LOW'; readonly first: number; readonly second: number }
  | { readonly code: 'BASE_ON_KNOT'; readonly bundle: number; readonly base: number }
  | { readonly code: 'NET_TOO_NARROW'; readonly girth: number; readonly opens: number; readonly second: number }
  | { readonly code: 'GRIP_UNTESTED'; readonly testMass: number }
  | { readonly code: 'WRAPPING_CORD_SHORT'; readonly length: number; readonly makes: number; readonly wraps: number; readonly needed: number }
  | { readonly code: 'TEST_HANG_TOO_SHORT'; readonly time: number; readonly least: number }
  | { readonly code: 'TEST_HANG_SLIPPED'; readonly slip: number; readonly most: number }
  | { readonly code: 'TEST_HANG_SLIP_UNSAID'; readonly most: number }
  | { readonly code: 'RING_UNRATED'; readonly testMass: number }
  | { readonly code: 'RING_LEVEL_UNTESTED'; readonly testMass: number }
  | { readonly code: 'RING_CORDS_WIDE'; readonly degrees: number; readonly refused: boolean }
  | { readonly code: 'RING_MAY_OPEN'; readonly force: number }
  | { readonly code: 'HOOK_OPEN_OVER_PEOPLE' }
  | { readonly code: 'HOOK_UNMARKED'; readonly testMass: number }
  | { readonly code: 'HOOK_MAY_OPEN'; readonly force: number }
  | { readonly code: 'HOOK_MAY_UNSCREW' }
  | { readonly code: 'CONNECTOR_OPEN_OVER_PEOPLE'; readonly kind: Answers['connector.kind'] }
  | { readonly code: 'CONNECTOR_UNRATED'; readonly testMass: number }
  | { readonly code: 'CHAIN_NOT_FOR_LIFTING' }
  | { readonly code: 'CHAIN_UNWELDED' }
  | { readonly code: 'RING_ACROSS_GRAIN'; readonly asked: number; readonly bears: number }
  | { readonly code: 'STICK_TIPS' }
  | { readonly code: 'ROW_TIPS' }
  | { readonly code: 'ROW_LEANS'; readonly degrees: number; readonly runs: boolean }
  | { readonly code: 'ROW_BEYOND_STICK'; readonly least: number }
  | { readonly code: 'ROW_TESTED' }
  | { readonly code: 'ROW_TOUCHES'; readonly least: number }
  | { readonly code: 'STICK_UNRATED'; readonly testMass: number }
  | { readonly code: 'STICK_DIAMETER_NEEDED'; readonly diameter: number }
  | { readonly code: 'STICK_NONE_THICK_ENOUGH'; readonly most: number }
  | { readonly code: 'STICK_WET_OUTDOORS' }
  | { readonly code: 'STICK_SAGS'; readonly sag: number; readonly lasting: number }
  | { readonly code: 'BAMBOO_SPLITS' }
  | { readonly code: 'BAMBOO_HOLLOW_UNKNOWN' }
  | { readonly code: 'TOP_CORD_TOO_SHORT'; readonly cord: number; readonly least: number }
  | { readonly code: 'TOP_CORD_SHALLOW'; readonly degrees: number; readonly refused: boolean }
  | { readonly code: 'TOP_CORD_OFFSET'; readonly most: number }
  /** `ratio`: of the pulls of its two halves. */
  | { readonly code: 'TOP_CORD_RUNS'; readonly offset: number; readonly most: number; readonly ratio: number }
  | { readonly code: 'TOP_CORD_LEANS'; readonly degrees: number; readonly ratio: number }
  | { readonly code: 'TOP_CORD_PARTS'; readonly strands: number }
  | { readonly code: 'SUBSTRATE_UNKNOWN' }
  | { readonly code: 'FIXING_REFUSED'; readonly what: Refusal }
  | { readonly code: 'FIXING_KIND_UNKNOWN' }
  | { readonly code: 'FIXING_NOT_FOR_TIMBER'; readonly kind: Answers['fixing.kind'] }
  | { readonly code: 'GO_ROUND_INSTEAD'; readonly substrate: Answers['place.substrate'] }
  | { readonly code: 'NOTHING_TO_GO_ROUND' }
  | { readonly code: 'BEAM_CARRIES' }
  | { readonly code: 'CORD_OVER_EDGE' }
  | { readonly code: 'RAIL_NEEDS_RATING'; readonly testMass: number }
  | { readonly code: 'BRANCH_UNTESTED'; readonly testMass: number }
  | { readonly code: 'RATING_FOR_SHEAR'; readonly rated: number }
  | { readonly code: 'RATING_WAY_UNSAID'; readonly capped: boolean }
  | { readonly code: 'LOW_TABLE_FIGURE' }
  | { readonly code: 'AERATED_DEPTH'; readonly given: number | null; readonly least: number }
  | { readonly code: 'BOARD_NEEDS_RATING' }
  | { readonly code: 'WALL_LEAN_UNKNOWN' }
  | { readonly code: 'BRACKET_NO_LEVER' }
  | { readonly code: 'BRACKET_TURNS' }
  | { readonly code: 'BRACKET_UNRATED' }
  | { readonly code: 'TOLD_BY_CUSTOMER' }
  | { readonly code: 'SCREW_LONGER_THAN_TIMBER'; readonly length: number; readonly depth: number }
  | { readonly code: 'LEAD_HOLE'; readonly diameter: number }
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
  /** Means, N: strands as tied that bore more than straight ones. */
  | { readonly code: 'PULL_TESTS_TIED_STRONGER'; readonly tied: number; readonly straight: number }
  | { readonly code: 'PULL_TEST_HELD'; readonly tests: number }
  | { readonly code: 'PULL_TEST_IN_MASS'; readonly force: number }
  | { readonly code: 'PULL_TESTS_WOULD_SETTLE'; readonly tests: number; readonly mean: number }
  | { readonly code: 'OUTSIDE_ROPE_TABLE'; readonly diameter: number; readonly least: number; readonly most: number }
  | { readonly code: 'CORD_LIGHTER_THAN_TABLE'; readonly perMetre: number; readonly least: number }
  | { readonly code: 'JOIN_UNKNOWN' }
  | { readonly code: 'TEST_HANG_LIFTS'; readonly mass: number; readonly atRest: number; readonly forAMoment: number }
  | { readonly code: 'PANEL_NARROW'; readonly width: number; readonly least: number }
  | { readonly code: 'PANEL_OVER_RIM' }
  | { readonly code: 'PANEL_LOW' }
  | { readonly code: 'PANEL_OFF_BASE' }
  | { readonly code: 'PANEL_CORNERS'; readonly shape: 'square' | 'trough' }
  | { readonly code: 'PANEL_CURVED' }
  | { readonly code: 'PANEL_ANGLE'; readonly degrees: number; readonly refused: boolean }
  | { readonly code: 'PANEL_CORDS_FEW'; readonly cords: number; readonly needed: number }
  | { readonly code: 'PANEL_NET_STRANDS'; readonly knots: number; readonly needed: number; readonly strands: number }
  | { readonly code: 'PANEL_NO_WALL' }
  /** Shares of the weight in front as drawn, and with the strands there longer and shorter by so much, m. */
  | { readonly code: 'PANEL_SHARES'; readonly drawn: number; readonly longer: number; readonly shorter: number; readonly tolerance: number }
  | { readonly code: 'REDUNDANCY_PANEL'; readonly front: Outcome; readonly back: Outcome }
  | { readonly code: 'PANEL_SEAT_PINNED' }
  | { readonly code: 'PANEL_SEAT_LOOSE' }
  | { readonly code: 'REDUNDANCY_LEG'; readonly outcome: Outcome }
  | { readonly code: 'REDUNDANCY_STRAND'; readonly outcome: Outcome }
  /** Damage in the inspection log that was not mended. */
  | { readonly code: 'INSPECTION_OPEN'; readonly what: 'frayed' | 'thinned' | 'slipped'; readonly date: string | null; readonly leg: number | null }
  /** `reckoned`: whether the leg is reckoned without them. */
  | { readonly code: 'INSPECTION_STRAND_GONE'; readonly strands: number; readonly leg: number | null; readonly reckoned: boolean }
  | { readonly code: 'UNKNOWN_KEYS'; readonly names: readonly string[] }

export type FindingCode = Finding['code']
