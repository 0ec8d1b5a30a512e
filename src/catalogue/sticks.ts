import { range, value, type Basis, type Range, type Value } from './basis'
import type { Points } from './readCurve'
import type { WoodCode, WoodKind } from './woods'

const remembered = (x: number, source: string): Value => value(x, '1', 'from memory', source)

/** Standard deviations from the mean down to the value that 5 % of pieces fall below. */
export const LOWER_TAIL: Value = value(1.645, '1', 'computed', '5 % point of the normal distribution')

const SCATTER = 'USDA Wood Handbook, table 5-6: coefficient of variation of clear wood'
/** Coefficient of variation of clear wood, standard deviation over mean. */
export const WOOD_SCATTER = {
  rupture: remembered(0.16, SCATTER),
  elasticity: remembered(0.22, SCATTER),
  shear: remembered(0.14, SCATTER),
  tensionAcross: remembered(0.25, SCATTER),
  crushing: remembered(0.18, SCATTER),
  gravity: remembered(0.1, SCATTER),
} as const satisfies Readonly<Record<string, Value>>

/** Moisture at which the tables of clear wood give dry strengths, as a share of the oven-dry mass. */
export const MOISTURE_OF_TABLES: Value = value(0.12, '1', 'published', 'USDA Wood Handbook FPL-GTR-282 (2021), table 5-3a')

const meets = (share: number): Value => value(share, '1', 'published', 'USDA Wood Handbook FPL-GTR-282 (2021), table 5-13, second-hand transcription')
/** Moisture Mp from which strength no longer changes, as a share; `other` for all that are not listed. */
export const MOISTURE_POINT = {
  whiteAsh: meets(0.24), yellowBirch: meets(0.27), douglasFir: meets(0.24), loblollyPine: meets(0.21), longleafPine: meets(0.21), sitkaSpruce: meets(0.27), other: meets(0.25),
} as const satisfies Readonly<Partial<Record<WoodCode | 'other', Value>>>

/** Bending strength left by slope of grain (rise over length). */
export const SLOPE_OF_GRAIN: { readonly points: Points; readonly basis: Basis; readonly source: string } = {
  points: [[1 / 25, 0.96], [1 / 20, 0.93], [1 / 15, 0.89], [1 / 10, 0.81], [1 / 5, 0.55]],
  basis: 'from memory',
  source: 'USDA Wood Handbook, table 5-12: modulus of rupture by slope of grain',
}

const D245 = 'ASTM D245: divisor of the 5 % bending strength of clear wood, for ten years and safety'
/** What the 5 % value of the modulus of rupture is divided by for an allowable under ten years of load. */
export const CLEAR_WOOD_DIVISOR: Readonly<Record<WoodKind, Value>> = { hardwood: remembered(2.3, D245), softwood: remembered(2.1, D245) }

/** How far the grain is taken to run out of a stick, rise over length, by what is said of it. */
export const GRAIN_SLOPE: Readonly<Record<'straight' | 'unknown' | 'sloping', Value>> = {
  straight: value(0, '1', 'common practice', 'lines that stay in the stick from end to end'),
  unknown: value(0.1, '1', 'common practice', 'a judgement: dowels are sold with as much'),
  sloping: value(0.2, '1', 'common practice', 'a judgement: the steepest that the table knows; small knots turn the grain as far'),
}

/** Strength and stiffness of green or soaked wood over those of dry wood, where the table has none. */
export const GREEN_SHARE: Value = value(0.5, '1', 'computed', 'the lowest of the woods listed both ways: 0.50 to 0.65 of the modulus of rupture')

/** What the 5 % value of the shear strength is divided by for an allowable under ten years of load. */
export const SHEAR_DIVISOR: Readonly<Record<WoodKind, Value>> = {
  hardwood: remembered(4.5, 'ASTM D245, older editions: divisor of the shear strength of clear wood, which allows for splits'),
  softwood: remembered(4.1, 'ASTM D245, older editions: divisor of the shear strength of clear wood, which allows for splits'),
}

/** Dowels as they are usually sold, the thinnest first. */
export const USUAL_DOWELS: readonly { readonly id: string; readonly diameter: Value }[] = [8, 10, 12, 16, 20, 22, 25, 28, 32]
  .map((mm) => ({ id: `${mm} mm`, diameter: value(mm / 1000, 'm', 'common practice', 'dowels as they are usually sold') }))

/** Bamboo's hollow over its width where it was not measured. */
export const BAMBOO_HOLLOW: Value = value(0.85, '1', 'common practice', 'a judgement: a thin wall, for thin ones are weaker')

/** Sag over the span from which it is told. */
export const SAG_TOLD: Value = value(0.01, '1', 'common practice', 'a judgement: the eye sees a bend of a hundredth of the span')

/** Bending strength of air-dry wood at 50 degrees C over that at 20. */
export const WARM_WOOD: Value = value(0.8, '1', 'published', 'USDA Wood Handbook FPL-GTR-282 (2021), table 5-15: 20 % less at 11 to 15 % moisture, second-hand transcription')

/** Lasting deflection of a loaded stick over its first one. */
export const CREEP: Range = range(1.5, 1.75, 2, '1', 'from memory', 'EN 1995-1-1, table 3.2: k_def 0.6 to 2.0 on the lasting part')

/** Mean bending strength taken for a stick of unknown wood, Pa. */
export const UNKNOWN_WOOD: Value = value(50e6, 'Pa', 'common practice', 'as the weakest woods listed')

const JUDGED = 'a judgement: nothing published was found; juvenile wood, checks, decay and salt all act'
/** What the mean bending strength of a natural stick is divided by where no test hang is recorded. Driftwood takes the high figure. */
export const NATURAL_STICK_DIVISOR: Range = range(6, 7, 8, '1', 'common practice', JUDGED)

const CULM = 'typical figures of bamboo culms; ISO 22156 and ISO 22157 are the standards'
const SPLITTING = 'Journal of Renewable Materials 2022, doi 10.32604/jrm.2022.019882: tension round the culm at 15 % moisture'
/** Bamboo, a tube: strength along it in bending and shear, stiffness, and tension round the culm, which splits it. All Pa. */
export const BAMBOO = {
  rupture: range(50e6, 75e6, 100e6, 'Pa', 'from memory', CULM),
  elasticity: range(10e9, 13.5e9, 17e9, 'Pa', 'from memory', CULM),
  shear: range(6e6, 7.5e6, 9e6, 'Pa', 'from memory', CULM),
  splitWall: value(3.24e6, 'Pa', 'published', `${SPLITTING}, culm wall`),
  splitNode: value(3.67e6, 'Pa', 'published', `${SPLITTING}, at a node`),
  splitDiaphragm: value(8.85e6, 'Pa', 'published', `${SPLITTING}, diaphragm`),
} as const satisfies Readonly<Record<string, Value | Range>>

/** Mean strength across the grain taken for a ring of unknown wood, Pa. */
export const WEAKEST_ACROSS: Value = value(1.5e6, 'Pa', 'published', 'western redcedar, the weakest listed across the grain: USDA Wood Handbook FPL-GTR-282 (2021), table 5-3a, second-hand transcription')

/** What a wooden ring with a finger joint or glue line of unknown make keeps. */
export const UNKNOWN_JOINT: Value = value(0.5, '1', 'common practice', 'a judgement: the joint may be anything')
