import type { CatalogueEntry } from '../catalogue/collectEntries'
import type { CatalogueSubject } from '../catalogue/entries'
import { CATALOGUE_CODES, SUBJECT_NAMES, type CodeKind } from './catalogueCodes'
import { CATALOGUE_NAMES_OF_CHANCE } from './catalogueNamesOfChance'
import { CATALOGUE_NAMES_OF_PLACE } from './catalogueNamesOfPlace'

/**
 * The name of each entry by its id. `{fibre}` and the like stand for any code of that kind and are
 * replaced by its words; `{size}` stands for a row that is named by its size.
 */
export const CATALOGUE_NAMES: Readonly<Record<string, string>> = {
  ...CATALOGUE_NAMES_OF_PLACE,
  ...CATALOGUE_NAMES_OF_CHANCE,
  'ageing.INDOORS.{roof}': '{roof}: strength left at the end of the service life',
  'ageing.JUTE_NEVER_DRY': 'jute that stays damp: time in which it loses all its strength',
  'ageing.NATURAL_OUTDOORS': 'natural cord outdoors: strength left after one season',
  'ageing.OFTEN_WET_LIFE': 'natural cord that is often wet: replaced after',
  'ageing.SEASON': 'natural cord outdoors: replaced after',
  'ageing.SYNTHETIC_OUTDOORS.{fibre}.firstYear': '{fibre} outdoors: strength left after the first year',
  'ageing.SYNTHETIC_OUTDOORS.{fibre}.furtherYear': '{fibre} outdoors: strength left of each further year’s start',
  'ageing.SYNTHETIC_SEASONS': 'synthetic cord outdoors: replaced after',
  'ageing.UNDER_DRAIN_HOLE': 'gathering knot under a drain hole: strength left',
  'cordTests.JUTE_TWINE.{size}.breaking': 'jute twine, {size}: least breaking force',
  'cordTests.JUTE_TWINE.{size}.linearDensity': 'jute twine, {size}: grams per metre',
  'cordTests.NATURAL_CORD_BREAKS.{cord}': '{cord}: breaking force',
  'cords.BEDDED_STIFFNESS': 'stiffness of a bedded-in cord over that of a new one',
  'cords.BREAK_BY_DIAMETER': 'breaking force by diameter alone, over diameter squared',
  'cords.DEFAULT_STIFFNESS': 'stiffness (EA) of a strand of unknown strength',
  'cords.DENSEST_CORD.{fibre}': '{fibre}: density that no cord can exceed',
  'cords.FIBRE_PROPERTIES.{fibre}.duration': '{fibre}: strength lost per tenfold time under load (k)',
  'cords.FIBRE_PROPERTIES.{fibre}.onItself': '{fibre}: friction of cord on cord, low',
  'cords.FIBRE_PROPERTIES.{fibre}.onPot': '{fibre}: friction of cord on a pot, low',
  'cords.FIBRE_PROPERTIES.{fibre}.strainAtBreak': '{fibre}: stretch at break',
  'cords.FIBRE_PROPERTIES.{fibre}.tenacity.loose': '{fibre}, loose string: breaking force over mass per metre (tenacity)',
  'cords.FIBRE_PROPERTIES.{fibre}.tenacity.tight': '{fibre}, tightly twisted or braided: breaking force over mass per metre (tenacity)',
  'cords.FIBRE_PROPERTIES.{fibre}.wet': '{fibre}: strength soaked over dry',
  'cords.MASS_BY_DIAMETER': 'mass per metre by diameter alone, over diameter squared',
  'cords.THICKEST_DIAMETER': 'rated cord of unknown thickness: diameter taken for its bends',
  'cords.UNMEASURED_DIAMETER': 'cord not measured: diameter taken',
  'duration.FLOODED_TIME': 'time standing in water, with a hole that may clog',
  'duration.MOMENT': 'length of a jolt',
  'duration.STANDING_WATER_TIME': 'time standing in water, without a hole',
  'duration.TEST_TIME': 'length of the pull that breaking forces are quoted for',
  'duration.UNNOTICED_TIME': 'time an accident may go unnoticed',
  'duration.WATERED_SHARE': 'share of its life that a pot is just watered',
  'fillings.FILLINGS.{filling}.dry': '{filling}: dry',
  'fillings.FILLINGS.{filling}.flooded': '{filling}: standing in water',
  'fillings.FILLINGS.{filling}.watered': '{filling}: just watered and drained',
  'frictionPairs.FRICTION_PAIRS.{pair}.{motion}': '{pair}, {motion}: coefficient of friction',
  'jolts.BUMP_ANGLE': 'bump: angle from which the pot swings',
  'jolts.DROP_HEIGHT': 'accidental drop: height',
  'jolts.TUG_ANGLE': 'tug: how far aside from straight down',
  'jolts.TUG_PULL.{puller}': 'tug by {puller}: pull',
  'knotEfficiencies.KNOT_EFFICIENCIES.{knot}.{tester}': '{knot}, {tester}: strength kept',
  'knots.BEND.points': 'bend over a bar: strength kept, by bar over cord diameter',
  'knots.BUNDLE_PACKING': 'strands gathered for the wraps: share of the bundle that cord fills',
  'knots.FILLER_IN_KNOTS': 'filler cord inside its square knots: strength kept',
  'knots.FILLER_SHARE': 'filler cords among the strands of a sinnet',
  'knots.LEAST_KNOTTED': 'fewest strands that can be knotted',
  'knots.KNOT_TAKE_UP': 'cord in a knotted leg over its length',
  'knots.MOST_DROP_SLIP': 'slip of the gathering knot that a drop may cost, at most',
  'knots.LARKS_HEAD.points': 'lark’s head, each strand: strength kept, by bar over cord diameter',
  'knots.PLAIN_STRAND': 'plain strands side by side: strength kept',
  'knots.SHARP_EDGE': 'sharp edge of a pot: as a bar of this diameter',
  'knots.SPLICED_STRAND': 'carrying strand that is spliced: strength kept',
  'knots.STRANDS_OF_FOLD': 'loop of a wrapping cord: thicknesses of cord it adds to the bundle',
  'knots.TIED_STRAND': 'carrying strand that is itself tied (overhand, join, square knot): strength kept',
  'knots.TIED_TO_STICK': 'top cord tied to its stick (clove hitch, lark’s head): strength kept',
  'knots.TURN_INTO_WRAPS': 'turn from the pot’s base into the gathering knot: strength kept',
  'knots.USUAL_WRAPS': 'wraps of a gathering knot, as makers usually tie them',
  'knots.WRAP_RELAXATION': 'tension left in the wraps once relaxed',
  'knots.WRAP_TENSION': 'tension of a hand-pulled wrap of a new gathering knot',
  'legs.COUNTED_LEGS': 'legs that may be counted on, at most',
  'legs.NEARLY_SLACK': 'leg called nearly slack: its share of an even tension',
  'legs.REFUSED_ANGLE': 'legs from the vertical: angle above which no number is trusted',
  'legs.WIDE_ANGLE': 'legs from the vertical: angle above which a warning is given',
  'plants.PLANT_BY_SIZE.{plantSize}': 'leafy plant {plantSize}: fresh mass',
  'plants.PLANT_GROWTH': 'mass of a plant left to grow over its mass today',
  'plants.SUCCULENT_OVER_LEAFY': 'mass of a succulent over that of a leafy plant of its size',
  'plants.PLANT_CENTRE_SHARE': 'centre of gravity of a plant over its height above the rim',
  'plants.PLANT_SHARE_KEPT': 'mass of a plant kept at its size over that of the watered mix',
  'plants.PLANT_SHARE_OF_MIX': 'mass of the plant over that of the watered mix',
  'potMaterials.LEAST_WALL_SHARE': 'wall of a small pot over that at a rim of 20 cm, at least',
  'potMaterials.POT_MATERIALS.{pot}.density': '{pot}: density, dry',
  'potMaterials.POT_MATERIALS.{pot}.uptake': '{pot}: water the wall takes up over its dry mass',
  'potMaterials.POT_MATERIALS.{pot}.wall': '{pot}: thickness of the wall at a rim of 20 cm',
  'pottingMixes.LEAST_SOLID_SHARE': 'dry part of a pot weighed wet, at least',
  'pottingMixes.POTTING_MIXES.{mix}.dry': '{mix}: dry',
  'pottingMixes.POTTING_MIXES.{mix}.flooded': '{mix}: standing in water',
  'pottingMixes.POTTING_MIXES.{mix}.watered': '{mix}: just watered and drained',
  'pottingMixes.SOLIDS_DENSITY': 'solids of a mix: density, at most',
  'pottingMixes.WATER_DENSITY': 'water: density',
  'reinspection.FIRST_LOOK': 'time to the first look at a hung hanger',
  'reinspection.LOOK_AGAIN.alwaysWet': 'time between looks, pot always wet',
  'reinspection.LOOK_AGAIN.indoors': 'time between looks, indoors and dry',
  'reinspection.LOOK_AGAIN.juteDamp': 'time between looks, jute that gets wet',
  'reinspection.LOOK_AGAIN.outdoors': 'time between looks, outdoors',
  'reinspection.LOOK_AGAIN.peopleBeneath': 'time between looks, people beneath',
  'reinspection.LOOK_AGAIN.steamy': 'time between looks, in a steamy room',
  'pullTests.CAUTIOUS_SCATTER': 'scatter taken for one or two pull tests',
  'pullTests.GRUBBS_CRITICAL.points': 'outlying test: distance from the mean in standard deviations that chance explains, by number of tests',
  'pullTests.K_SCATTER_KNOWN.points': 'allowance k for few tests, scatter known beforehand, by number of tests',
  'pullTests.K_SCATTER_UNKNOWN.points': 'allowance k for few tests, scatter shown by the tests alone, by number of tests',
  'pullTests.LEAST_SCATTER': 'scatter of pull tests, at least',
  'pullTests.SOAKED_OVER_DRY': 'cord tested soaked: its strength over that when dry, at most',
  'pullTests.TESTS_THAT_SHOW_SCATTER': 'pull tests from which their own scatter counts',
  'pullTests.TESTS_WORTH_MAKING': 'pull tests worth making',
  'pullTests.UNTIMED_PULL': 'pull that was not timed: time taken',
  'reserves.HOLDS_LIMIT.{grade}': '{grade}: largest use that counts as “holds”',
  'reserves.LEAST_OVERALL_FACTOR': 'overall factor below which cord never “holds”',
  'reserves.LIFE_LINE_FACTOR.least': 'overall factor asked of life lines, at least',
  'reserves.LIFE_LINE_FACTOR.most': 'overall factor asked of life lines, at most',
  'reserves.MOST_OVERALL_FACTOR': 'overall factor asked of fibre rope, at most',
  'reserves.PROOF_PULL': 'pull in place that lifts the doubt about a screw, over the load',
  'reserves.RATED_FOR_A_MOMENT': 'what a rated part may be asked for a moment, over its rated load',
  'reserves.RATED_IN_ACCIDENT': 'what a rated part may be asked in an accident, over its rated load',
  'reserves.RESERVE.{beneath}': 'beneath: {beneath}; reserve on strengths',
  'reserves.RESERVE_IN_ACCIDENT': 'reserve in an accident',
  'reserves.RESERVE_ON_ALLOWABLE.{beneath}': 'beneath: {beneath}; reserve on rated loads and published allowables',
  'reserves.RESERVE_ON_UNPROVED_SCREW.{beneath}': 'beneath: {beneath}; reserve on a wood screw not yet pulled in place',
  'ropeTables.MANILA_MASS_TOLERANCE.from10': 'manila rope of 10 mm and more: tolerance of its mass per metre',
  'ropeTables.MANILA_MASS_TOLERANCE.to8': 'manila rope up to 8 mm: tolerance of its mass per metre',
  'ropeTables.MANILA_ROPE.{size}.breaking': 'manila rope, {size}: least breaking force',
  'ropeTables.MANILA_ROPE.{size}.linearDensity': 'manila rope, {size}: grams per metre',
  'ropeTables.NYLON_ROPE.{size}.breaking': 'nylon rope, {size}: least breaking force',
  'ropeTables.NYLON_ROPE.{size}.linearDensity': 'nylon rope, {size}: grams per metre',
  'ropeTables.POLYESTER_ROPE.{size}.breaking': 'polyester rope, {size}: least breaking force',
  'ropeTables.POLYESTER_ROPE.{size}.linearDensity': 'polyester rope, {size}: grams per metre',
  'ropeTables.POLYPROPYLENE_ROPE.{size}.breaking': 'polypropylene rope, {size}: least breaking force',
  'ropeTables.POLYPROPYLENE_ROPE.{size}.linearDensity': 'polypropylene rope, {size}: grams per metre',
  'ropeTables.SISAL_OVER_MANILA': 'sisal rope: strength over that of manila',
  'ropeTables.SISAL_ROPE.{size}.breaking': 'sisal rope, {size}: least breaking force',
  'seat.CENTRE_MARGIN': 'margin on the height of the centre of gravity where the pot may tip',
  'seat.LEAST_OFFSET': 'least offset of the weight from the axis',
  'seat.SOFT_LEGS': 'stiffness of the legs over that reckoned where the pot may tip',
  'seat.TILT_BY_HAND': 'tilt by which a pot may be pushed in its cradle',
  'seat.TIPS_ABOVE': 'tilt above which a pot slides out of its seat',
  'soaking.CORD_DRIPPING': 'water in dripping cord over its dry mass',
  'soaking.CORD_WETTED': 'water in wetted cord over its dry mass',
  'takeUp.FILLER_TAKE_UP': 'filler cord: cord over finished length',
  'takeUp.FRINGE_TRIM': 'fringe: cut off to make it even',
  'takeUp.LARKS_HEAD_TURNS': 'lark’s head: turns of each half round the bar',
  'takeUp.OWN_TAKE_UP_DOUBT': 'own sample: how much more or less the same hands take',
  'takeUp.ROWS_TAKE_UP': 'alternating square knots or a panel: cord over finished length',
  'takeUp.SINNET_TAKE_UP': 'square-knot sinnet, working cord: cord over finished length',
  'takeUp.SPIRAL_TAKE_UP': 'half-knot spiral, working cord: cord over finished length',
  'takeUp.SQUARE_KNOT_HEIGHT': 'square knot: height in thicknesses of its cord',
  'takeUp.TIED_END': 'knot at an end: cord for it',
  'tenacities.COTTON_YARN.{spinning}': 'cotton yarn, {spinning}: breaking force over mass per metre (tenacity)',
  'tenacities.RECYCLED_COTTON_YARN': 'yarn of recycled cotton: breaking force over mass per metre (tenacity)',
  'tenacities.TENACITY_SPREAD.{fibre}.loose': '{fibre}, loose string: between what tenacities it may lie',
  'tenacities.TENACITY_SPREAD.{fibre}.tight': '{fibre}, tightly twisted or braided: between what tenacities it may lie',
  'tenacities.YARN_TO_CORD': 'strength of a cord over that of its yarns',
  'testHang.LEAST_TEST_TIME': 'least time of a test hang that counts',
  'testHang.MOST_TEST_SLIP': 'slip from which a test hang no longer counts',
  'testHang.TEST_SHARE_AT_REST': 'share of the test mass that may hang for good',
  'vessels.COVER_OVER_POT': 'cover pot not measured: width inside over the pot’s widest part',
  'vessels.COVER_WATER': 'water left in a cover pot after watering, at most: depth',
  'vessels.SAUCER_DEPTH': 'saucer not measured: depth',
  'vessels.SAUCER_OVER_RIM': 'saucer not measured: width over the pot’s rim',
  'weighing.LENGTH_DOUBT': 'length of cord laid out by hand: how far it may be out',
  'weighing.SCALE_STEP': 'weight read off a kitchen scale: how far it may be out',
}

/** A catalogue entry with its name and that of its subject. */
export interface NamedEntry extends CatalogueEntry<CatalogueSubject> {
  readonly name: string
  readonly subjectName: string
}

const wordsFor = (kind: string, code: string): string | undefined => (kind === 'size' ? code : (CATALOGUE_CODES[kind as CodeKind] as Readonly<Record<string, string>>)[code])

/** The name filled in, if the pattern is that of the path. */
function fillIn(pattern: string, name: string, path: readonly string[]): string | null {
  const parts = pattern.split('.')
  if (parts.length !== path.length) return null
  let text = name
  for (const [i, part] of parts.entries()) {
    const code = path[i] ?? ''
    const kind = /^\{(\w+)\}$/.exec(part)?.[1]
    if (kind === undefined) {
      if (part !== code) return null
      continue
    }
    const words = wordsFor(kind, code)
    if (words === undefined) return null
    text = text.replace(part, words)
  }
  return text
}

/** The patterns by subject and export, which every one of them begins with. */
const PATTERNS = new Map<string, (readonly [pattern: string, name: string])[]>()
for (const named of Object.entries(CATALOGUE_NAMES)) {
  const head = named[0].split('.', 2).join('.')
  PATTERNS.set(head, [...(PATTERNS.get(head) ?? []), named])
}

/** The key of CATALOGUE_NAMES that names an entry and the name it gives; null if it has none. */
export function catalogueName({ subject, path }: CatalogueEntry): { readonly pattern: string; readonly name: string } | null {
  for (const [pattern, template] of PATTERNS.get(`${subject}.${path[0] ?? ''}`) ?? []) {
    const name = fillIn(pattern, template, [subject, ...path])
    if (name !== null) return { pattern, name }
  }
  return null
}

/** The entry with its names; an entry without words keeps its id. */
export const nameEntry = (entry: CatalogueEntry<CatalogueSubject>): NamedEntry => ({ ...entry, name: catalogueName(entry)?.name ?? entry.id, subjectName: SUBJECT_NAMES[entry.subject] })
