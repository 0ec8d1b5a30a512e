import { value, type Value } from './basis'

export const WOOD_KINDS = ['softwood', 'hardwood'] as const
export type WoodKind = (typeof WOOD_KINDS)[number]

/** Means of clear, straight wood; knots, checks and slope of grain all take from it. */
export interface Wood {
  readonly kind: WoodKind
  /** Oven-dry mass over volume at 12 % moisture. Not the oven-dry gravity of the National Design Specification. */
  readonly gravity: Value
  /** Modulus of rupture at 12 % moisture, Pa. */
  readonly rupture: Value
  /** Modulus of rupture green, Pa; null where not carried over. */
  readonly ruptureGreen: Value | null
  /** Modulus of elasticity at 12 % moisture, Pa, centre-loaded at span over depth 14: shear deflection is in it. */
  readonly elasticity: Value
  /** Shear strength along the grain, Pa. */
  readonly shear: Value
  /** Tension across the grain, Pa; null where the table has none. */
  readonly tensionAcross: Value | null
}

const TABLE = 'USDA Wood Handbook FPL-GTR-282 (2021), table 5-3a, second-hand transcription'
const published = (x: number, unit: string): Value => value(x, unit, 'published', TABLE)

interface Printed {
  readonly gravity: number
  /** MPa. */
  readonly rupture: number
  readonly green: number | null
  /** GPa. */
  readonly elasticity: number
  readonly shear: number
  readonly across: number | null
}

const wood = (kind: WoodKind) => ({ gravity, rupture, green, elasticity, shear, across }: Printed): Wood => ({
  kind,
  gravity: published(gravity, '1'),
  rupture: published(rupture * 1e6, 'Pa'),
  ruptureGreen: green === null ? null : published(green * 1e6, 'Pa'),
  elasticity: published(elasticity * 1e9, 'Pa'),
  shear: published(shear * 1e6, 'Pa'),
  tensionAcross: across === null ? null : published(across * 1e6, 'Pa'),
})
const hardwood = wood('hardwood')
const softwood = wood('softwood')

/**
 * Woods for sticks, dowels and rings. White ash: the 2021 edition's 106 MPa, where that of 2010 had
 * 103.
 */
export const WOODS = {
  yellowBirch: hardwood({ gravity: 0.62, rupture: 114, green: 57, elasticity: 13.9, shear: 13, across: 6.3 }),
  paperBirch: hardwood({ gravity: 0.55, rupture: 85, green: 44, elasticity: 11, shear: 8.3, across: null }),
  sweetBirch: hardwood({ gravity: 0.65, rupture: 117, green: null, elasticity: 15, shear: 15.4, across: 6.6 }),
  sugarMaple: hardwood({ gravity: 0.63, rupture: 109, green: 65, elasticity: 12.6, shear: 16.1, across: null }),
  redMaple: hardwood({ gravity: 0.54, rupture: 92, green: null, elasticity: 11.3, shear: 12.8, across: null }),
  northernRedOak: hardwood({ gravity: 0.63, rupture: 99, green: 57, elasticity: 12.5, shear: 12.3, across: 5.5 }),
  southernRedOak: hardwood({ gravity: 0.59, rupture: 75, green: null, elasticity: 10.3, shear: 9.6, across: 3.5 }),
  whiteOak: hardwood({ gravity: 0.68, rupture: 105, green: 57, elasticity: 12.3, shear: 13.8, across: 5.5 }),
  americanBeech: hardwood({ gravity: 0.64, rupture: 103, green: 59, elasticity: 11.9, shear: 13.9, across: 7 }),
  whiteAsh: hardwood({ gravity: 0.6, rupture: 106, green: 66, elasticity: 12, shear: 13.2, across: 6.5 }),
  yellowPoplar: hardwood({ gravity: 0.42, rupture: 70, green: 41, elasticity: 10.9, shear: 8.2, across: 3.7 }),
  basswood: hardwood({ gravity: 0.37, rupture: 60, green: null, elasticity: 10.1, shear: 6.8, across: 2.4 }),
  quakingAspen: hardwood({ gravity: 0.38, rupture: 58, green: null, elasticity: 8.1, shear: 5.9, across: 1.8 }),
  blackWalnut: hardwood({ gravity: 0.55, rupture: 101, green: null, elasticity: 11.6, shear: 9.4, across: 4.8 }),
  shagbarkHickory: hardwood({ gravity: 0.72, rupture: 139, green: null, elasticity: 14.9, shear: 16.8, across: null }),
  easternWhitePine: softwood({ gravity: 0.35, rupture: 59, green: null, elasticity: 8.5, shear: 6.2, across: 2.1 }),
  loblollyPine: softwood({ gravity: 0.51, rupture: 88, green: 50, elasticity: 12.3, shear: 9.6, across: 3.2 }),
  longleafPine: softwood({ gravity: 0.59, rupture: 100, green: null, elasticity: 13.7, shear: 10.4, across: 3.2 }),
  ponderosaPine: softwood({ gravity: 0.4, rupture: 65, green: null, elasticity: 8.9, shear: 7.8, across: 2.9 }),
  douglasFir: softwood({ gravity: 0.48, rupture: 85, green: 53, elasticity: 13.4, shear: 7.8, across: 2.3 }),
  sitkaSpruce: softwood({ gravity: 0.4, rupture: 70, green: null, elasticity: 10.8, shear: 7.9, across: 2.6 }),
  whiteSpruce: softwood({ gravity: 0.36, rupture: 65, green: null, elasticity: 9.6, shear: 6.7, across: 2.5 }),
  engelmannSpruce: softwood({ gravity: 0.35, rupture: 64, green: null, elasticity: 8.9, shear: 8.3, across: 2.4 }),
  westernRedcedar: softwood({ gravity: 0.32, rupture: 51.7, green: null, elasticity: 7.7, shear: 6.8, across: 1.5 }),
} as const satisfies Readonly<Record<string, Wood>>

export type WoodCode = keyof typeof WOODS
