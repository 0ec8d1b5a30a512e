import type { CatalogueEntry } from '../catalogue/collectEntries'
import type { CatalogueSubject } from '../catalogue/entries'
import { CATALOGUE_CODES, SUBJECT_NAMES, type CodeKind } from './catalogueCodes'

/**
 * The name of each entry by its id. `{fibre}` and the like stand for any code of that kind and are
 * replaced by its words; `{size}` stands for a row that is named by its size.
 */
export const CATALOGUE_NAMES: Readonly<Record<string, string>> = {
  'ageing.INDOORS.{roof}': '{roof}: strength left at the end of the service life',
  'ageing.NATURAL_OUTDOORS': 'natural cord outdoors: strength left after one season',
  'ageing.POLYESTER_YEAR_OUTDOORS': 'polyester outdoors: strength left of each year’s start',
  'ageing.UNDER_DRAIN_HOLE': 'gathering knot under a drain hole: strength left',
  'cordTests.JUTE_TWINE.{size}.breaking': 'jute twine, {size}: least breaking force',
  'cordTests.JUTE_TWINE.{size}.linearDensity': 'jute twine, {size}: grams per metre',
  'cordTests.NATURAL_CORD_BREAKS.{cord}': '{cord}: breaking force',
  'cords.BEDDED_STIFFNESS': 'stiffness of a bedded-in cord over that of a new one',
  'cords.BREAK_BY_DIAMETER': 'breaking force by diameter alone, over diameter squared',
  'cords.DEFAULT_STIFFNESS': 'stiffness (EA) of a strand of unknown strength',
  'cords.DENSEST_CORD': 'density that no cord can exceed',
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
  'knotEfficiencies.KNOT_EFFICIENCIES.{knot}.{tester}': '{knot}, {tester}: strength kept',
  'knots.BEND.points': 'bend over a bar: strength kept, by bar over cord diameter',
  'knots.FILLER_IN_KNOTS': 'filler cord inside its square knots: strength kept',
  'knots.FILLER_SHARE': 'filler cords among the strands of a sinnet',
  'knots.KNOT_TAKE_UP': 'cord in a knotted leg over its length',
  'knots.MOST_DROP_SLIP': 'slip of the gathering knot that a drop may cost, at most',
  'knots.LARKS_HEAD': 'lark’s head, each strand: strength kept',
  'knots.PLAIN_STRAND': 'plain strands side by side: strength kept',
  'knots.TIED_STRAND': 'carrying strand that is itself tied (overhand, join, square knot): strength kept',
  'knots.TURN_INTO_WRAPS': 'turn from the pot’s base into the gathering knot: strength kept',
  'knots.WRAP_RELAXATION': 'tension left in the wraps once relaxed',
  'knots.WRAP_TENSION': 'tension of a hand-pulled wrap of a new gathering knot',
  'lateral.BENDING_YIELD.lag.steps': 'lag screw: yield stress in bending, by diameter in m up to which it holds',
  'lateral.BENDING_YIELD.nail.steps': 'nail, or screw at its root: yield stress in bending, by diameter in m up to which it holds',
  'lateral.DOWEL_BEARING': 'wood crushed by a thin nail or screw: stress at a gravity of 1 (c of c G^n)',
  'lateral.DOWEL_BEARING_POWER': 'wood crushed by a thin nail or screw: power of gravity (n of c G^n)',
  'lateral.LAG_ACROSS_GRAIN.steps': 'lag screw loaded across the grain over along it, by diameter in m',
  'lateral.LATERAL_LIMIT.{fastening}.{woodKind}.steps': '{fastening} in {woodKind}: side load at the limit, K of K D^n, by gravity from which it counts',
  'lateral.LATERAL_POWER.{fastening}': '{fastening}: side load at the limit, n of K D^n',
  'lateral.LATERAL_ULTIMATE_OVER_LIMIT.{woodKind}': '{woodKind}: ultimate side load over that at the limit',
  'lateral.SCREW_LATERAL_PENETRATION': 'wood screw: thread for its full side load, over its diameter',
  'lateral.STEEL_BEARING': 'thin steel plate: stress at which it yields round a screw',
  'lateral.YIELD_REDUCTION.offset': 'yield over allowable of a thicker nail or screw, slope x D + offset: offset',
  'lateral.YIELD_REDUCTION.slope': 'yield over allowable of a thicker nail or screw, slope x D + offset: slope',
  'lateral.YIELD_REDUCTION.thin': 'yield over allowable of a thin nail or screw',
  'lateral.YIELD_REDUCTION.thinUpTo': 'yield over allowable: diameter up to which a nail or screw is thin',
  'lateral.YIELD_REDUCTION.upTo': 'yield over allowable: diameter from which another rule holds',
  'legs.COUNTED_LEGS': 'legs that may be counted on, at most',
  'legs.NEARLY_SLACK': 'leg called nearly slack: its share of an even tension',
  'legs.REFUSED_ANGLE': 'legs from the vertical: angle above which no number is trusted',
  'legs.WIDE_ANGLE': 'legs from the vertical: angle above which a warning is given',
  'metals.STEEL_DENSITY': 'steel: density',
  'metals.YIELD_STRESS.{metal}': '{metal} wire of hooks and rings: yield stress',
  'plants.PLANT_BY_SIZE.{plantSize}': 'leafy plant {plantSize}: fresh mass',
  'plants.PLANT_GROWTH': 'mass of a plant left to grow over its mass today',
  'plants.SUCCULENT_OVER_LEAFY': 'mass of a succulent over that of a leafy plant of its size',
  'plants.PLANT_CENTRE_SHARE': 'centre of gravity of a plant over its height above the rim',
  'plants.PLANT_SHARE_OF_MIX': 'mass of the plant over that of the watered mix',
  'potMaterials.LEAST_WALL_SHARE': 'wall of a small pot over that at a rim of 20 cm, at least',
  'potMaterials.POT_MATERIALS.{pot}.density': '{pot}: density, dry',
  'potMaterials.POT_MATERIALS.{pot}.uptake': '{pot}: water the wall takes up over its dry mass',
  'potMaterials.POT_MATERIALS.{pot}.wall': '{pot}: thickness of the wall at a rim of 20 cm',
  'pottingMixes.LEAST_SOLID_SHARE': 'dry part of a pot weighed wet, at least',
  'pottingMixes.POTTING_MIXES.{mix}.dry': '{mix}: dry',
  'pottingMixes.POTTING_MIXES.{mix}.flooded': '{mix}: standing in water',
  'pottingMixes.POTTING_MIXES.{mix}.watered': '{mix}: just watered and drained',
  'pottingMixes.WATER_DENSITY': 'water: density',
  'reserves.HOLDS_LIMIT.{grade}': '{grade}: largest use that counts as “holds”',
  'reserves.LEAST_OVERALL_FACTOR': 'overall factor below which cord never “holds”',
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
  'screws.METRIC_ROOT_SHARE': 'metric wood screw: diameter at the root of its thread over that outside',
  'screws.SCREW_GAUGES.{size}.outside': 'wood screw {size}: diameter outside the thread',
  'screws.SCREW_GAUGES.{size}.root': 'wood screw {size}: diameter at the root of the thread',
  'screws.THREAD_SHARE': 'wood screw: thread over its length',
  'seat.CENTRE_MARGIN': 'margin on the height of the centre of gravity where the pot may tip',
  'seat.LEAST_OFFSET': 'least offset of the weight from the axis',
  'seat.SOFT_LEGS': 'stiffness of the legs over that reckoned where the pot may tip',
  'seat.TIPS_ABOVE': 'tilt above which a pot slides out of its seat',
  'sticks.BAMBOO.elasticity': 'bamboo: modulus of elasticity',
  'sticks.BAMBOO.rupture': 'bamboo: modulus of rupture (bending strength)',
  'sticks.BAMBOO.shear': 'bamboo: shear strength along it',
  'sticks.BAMBOO.splitDiaphragm': 'bamboo, diaphragm: tension round the culm',
  'sticks.BAMBOO.splitNode': 'bamboo, at a node: tension round the culm',
  'sticks.BAMBOO.splitWall': 'bamboo, wall of the culm: tension round it',
  'sticks.CLEAR_WOOD_DIVISOR.{woodKind}': '{woodKind} stick, clear and straight: low bending strength over what it may bear for ten years',
  'sticks.CREEP': 'lasting bend of a loaded stick over its first one',
  'sticks.LOWER_TAIL': 'standard deviations from the mean to the low (5 %) value',
  'sticks.MOISTURE_OF_TABLES': 'moisture at which the tables give the strength of dry wood',
  'sticks.MOISTURE_POINT.{woodOrOther}': '{woodOrOther}: moisture from which strength no longer falls',
  'sticks.NATURAL_STICK_DIVISOR': 'natural stick or driftwood: mean bending strength over what it may bear',
  'sticks.SLOPE_OF_GRAIN.points': 'bending strength left, by slope of grain (rise over length)',
  'sticks.UNKNOWN_JOINT': 'wooden ring with a joint of unknown make: strength left',
  'sticks.UNKNOWN_WOOD': 'stick of unknown wood: mean bending strength',
  'sticks.WARM_WOOD': 'bending strength at 50 °C over that at 20 °C',
  'sticks.WOOD_SCATTER.crushing': 'clear wood: scatter of crushing strength, over its mean',
  'sticks.WOOD_SCATTER.elasticity': 'clear wood: scatter of stiffness, over its mean',
  'sticks.WOOD_SCATTER.gravity': 'clear wood: scatter of specific gravity, over its mean',
  'sticks.WOOD_SCATTER.rupture': 'clear wood: scatter of bending strength, over its mean',
  'sticks.WOOD_SCATTER.shear': 'clear wood: scatter of shear strength, over its mean',
  'sticks.WOOD_SCATTER.tensionAcross': 'clear wood: scatter of strength across the grain, over its mean',
  'testHang.LEAST_TEST_TIME': 'least time of a test hang that counts',
  'testHang.MOST_TEST_SLIP': 'slip from which a test hang no longer counts',
  'testHang.TEST_SHARE_AT_REST': 'share of the test mass that may hang for good',
  'timber.ALLOWABLE_DURATION.steps': 'allowable in timber over that of ten years, by time under load',
  'timber.LAG_IN_END_GRAIN': 'lag screw pulled out of end grain over out of side grain',
  'timber.PERMANENT_IN_TIMBER': 'allowable in timber under a permanent load',
  'timber.TIMBER_DURATION.a': 'timber under lasting load, share left a + b t^-n (t in s): a',
  'timber.TIMBER_DURATION.b': 'timber under lasting load, share left a + b t^-n (t in s): b',
  'timber.TIMBER_DURATION.n': 'timber under lasting load, share left a + b t^-n (t in s): n',
  'timber.TIMBER_DURATION_1947.a': 'timber under lasting load by an older line, share left a - b lg t (t in hours): a',
  'timber.TIMBER_DURATION_1947.b': 'timber under lasting load by an older line, share left a - b lg t (t in hours): b',
  'timber.TIMBER_GRAVITY.{timber}.handbook': '{timber}: specific gravity, at 12 % moisture',
  'timber.TIMBER_GRAVITY.{timber}.specification': '{timber}: specific gravity, oven-dry',
  'timber.WET_SERVICE.{fastening}': '{fastening} pulled out of timber that is wet in service: allowable over dry',
  'withdrawal.LAG_BREAKS_FIRST.denseWood': 'lag screw in dense wood: depth over diameter from which it breaks before it pulls out',
  'withdrawal.LAG_BREAKS_FIRST.lightWood': 'lag screw in light wood: depth over diameter from which it breaks before it pulls out',
  'withdrawal.LEAD_HOLE.{woodKind}': 'lead hole of a wood screw in {woodKind}, over the diameter at its root',
  'withdrawal.LEAST_PENETRATION.{fastening}': '{fastening}: length that must be in the timber, over its diameter',
  'withdrawal.TAPPING_OVER_WOOD_SCREW': 'sheet-metal screw pulled out of wood over a wood screw',
  'withdrawal.WITHDRAWAL_ALLOWABLE.{fastening}': '{fastening} pulled out: allowable, c of c G^a D^b L',
  'withdrawal.WITHDRAWAL_LOSS_PER_MOISTURE': 'pull-out strength lost for each 1 % of moisture',
  'withdrawal.WITHDRAWAL_POWERS.{fastening}.diameter': '{fastening} pulled out: power of diameter, b of c G^a D^b L',
  'withdrawal.WITHDRAWAL_POWERS.{fastening}.gravity': '{fastening} pulled out: power of gravity, a of c G^a D^b L',
  'withdrawal.WITHDRAWAL_SCATTER': 'wood screws pulled out: low (5 %) value over the mean',
  'withdrawal.WITHDRAWAL_ULTIMATE.{fastening}': '{fastening} pulled out: ultimate, c of c G^a D^b L',
  'woods.WOODS.{wood}.elasticity': '{wood}: modulus of elasticity',
  'woods.WOODS.{wood}.gravity': '{wood}: specific gravity at 12 % moisture',
  'woods.WOODS.{wood}.rupture': '{wood}: modulus of rupture (bending strength), mean',
  'woods.WOODS.{wood}.ruptureGreen': '{wood}, green: modulus of rupture (bending strength), mean',
  'woods.WOODS.{wood}.shear': '{wood}: shear strength along the grain, mean',
  'woods.WOODS.{wood}.tensionAcross': '{wood}: tension across the grain, mean',
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

/** The key of CATALOGUE_NAMES that names an entry and the name it gives; null if it has none. */
export function catalogueName({ subject, path }: CatalogueEntry): { readonly pattern: string; readonly name: string } | null {
  for (const [pattern, template] of Object.entries(CATALOGUE_NAMES)) {
    const name = fillIn(pattern, template, [subject, ...path])
    if (name !== null) return { pattern, name }
  }
  return null
}

/** The entry with its names; an entry without words keeps its id. */
export const nameEntry = (entry: CatalogueEntry<CatalogueSubject>): NamedEntry => ({ ...entry, name: catalogueName(entry)?.name ?? entry.id, subjectName: SUBJECT_NAMES[entry.subject] })
