import { range, value, type Range, type Value } from './basis'

export const FIBRES = ['cotton', 'linen', 'hemp', 'jute', 'manila', 'sisal', 'polyester', 'polypropylene', 'nylon', 'viscose', 'unknown'] as const
export type Fibre = (typeof FIBRES)[number]

/** How the cord is made: loose single-strand string, three-ply twisted, braided, or three-strand rope made to a published table. */
export const CORD_MAKES = ['loose', 'twisted', 'braided', 'rope', 'unknown'] as const
export type CordMake = (typeof CORD_MAKES)[number]

export interface FibreProperties {
  readonly natural: boolean
  /** Tenacity of the made-up cord by its make, N per (kg/m); null where no figure with a basis was found. 1 cN/tex = 1e4 N/(kg/m). */
  readonly tenacity: { readonly loose: Value; readonly tight: Value } | null
  /** Strength soaked over strength dry. */
  readonly wet: Value
  /** k in F(t) = F(10 s) (1 - k log10(t / 10 s)). */
  readonly duration: Value
  /** Elongation at break, as a ratio; with the breaking force it gives the secant stiffness. */
  readonly strainAtBreak: Value
  /** Friction of cord on cord, low value. */
  readonly onItself: Value
  /** Friction of cord on a pot, low value. */
  readonly onPot: Value
}

const cNtex = (x: number, basis: Value['basis'], source: string): Value => value(x * 1e4, 'N/(kg/m)', basis, source)
/** Twisted or braided cord as given; of loose string of that fibre no figure was found, so it counts as loose cotton. */
const twisted = (x: number, basis: Value['basis'], source: string): { loose: Value; tight: Value } =>
  ({ loose: cNtex(4, 'from memory', 'loose string of this fibre: no figure found, as loose cotton'), tight: cNtex(x, basis, source) })
const TWINE_STRAIN = 'jute twine about 3 % at break, from memory; the fibre itself 1.8 to 3 % (Morton and Hearle, table 13.1)'
const memory = (x: number, source: string): Value => value(x, '1', 'from memory', source)
const computed = (x: number, source: string): Value => value(x, '1', 'computed', source)

const MEREDITH = 'Meredith’s relation for yarns under lasting load, from memory'
const FLAGGED = `${MEREDITH}; no figure for this fibre, that of cotton taken`
const MORTON = 'Morton and Hearle, Physical Properties of Textile Fibres, 4th ed., table 13.1'
const SLICK = memory(0.12, 'slick synthetic cord, kinetic polyester value 0.12')

const natural = { onItself: memory(0.3, 'cotton on cotton 0.26 kinetic to 0.51 static (lecture notes); 0.3 taken as low'), onPot: memory(0.24, 'cotton yarn on ceramic guide, Morton and Hearle ch. 25, from memory') }

/** What is known of each fibre. Strengths are of new, dry, unknotted cord under a short pull. */
export const FIBRE_PROPERTIES: Readonly<Record<Fibre, FibreProperties>> = {
  cotton: {
    natural: true,
    tenacity: {
      loose: cNtex(4, 'computed', 'loose cotton string: low end of yarn-to-cord realisation of rotor yarn (10.8 cN/tex, spinning-machine maker), kept low for want of tests'),
      tight: cNtex(6, 'computed', 'tightly plied or braided cotton: 6 to 10 cN/tex of its own mass from fibre-to-yarn and yarn-to-cord figures; low end'),
    },
    wet: memory(1, 'cotton wet over dry 1.0 to 1.2'),
    duration: memory(0.088, MEREDITH),
    strainAtBreak: value(0.17, '1', 'published', 'rope elongation table: cotton 15 to 20 % at break'),
    ...natural,
  },
  linen: { natural: true, tenacity: null, wet: memory(1, 'flax wet over dry 1.0 to 1.2'), duration: memory(0.088, `${MEREDITH}; 0.083 by some, that of cotton kept`), strainAtBreak: memory(0.03, TWINE_STRAIN), ...natural },
  hemp: {
    natural: true,
    tenacity: twisted(8.8, 'computed', 'natural-fibre rope 8.8 to 10.4 cN/tex of its own mass (manila, Cordage Institute CI 1308-96); low end'),
    wet: memory(1, 'hemp wet over dry about 1.0'),
    duration: memory(0.088, FLAGGED),
    strainAtBreak: memory(0.03, TWINE_STRAIN),
    ...natural,
  },
  jute: {
    natural: true,
    tenacity: twisted(8.5, 'computed', 'GB 2696-1987, jute twine, minimum break over mass of the dry fibre 9.7 to 10.4 cN/tex; a cord on a scale holds water besides, 13.75 % (ASTM D1909); low end'),
    wet: computed(0.8, 'jute 0.9 to 1.0 wet over dry from memory; 0.8 kept for mildew'),
    duration: memory(0.088, FLAGGED),
    strainAtBreak: memory(0.03, TWINE_STRAIN),
    ...natural,
  },
  manila: {
    natural: true,
    tenacity: twisted(8.8, 'computed', 'manila rope 8.8 to 10.2 cN/tex of its own mass (Cordage Institute CI 1308-96); low end'),
    wet: computed(0.8, 'hard leaf fibres: no figure found; 0.8 kept for mildew, as jute'),
    duration: memory(0.088, FLAGGED),
    strainAtBreak: memory(0.03, TWINE_STRAIN),
    ...natural,
  },
  sisal: {
    natural: true,
    tenacity: twisted(7, 'computed', '0.80 of manila (US Army FM 5-125, relative strengths)'),
    wet: computed(0.8, 'hard leaf fibres: no figure found; 0.8 kept for mildew, as jute'),
    duration: memory(0.088, FLAGGED),
    strainAtBreak: memory(0.03, TWINE_STRAIN),
    ...natural,
  },
  polyester: {
    natural: false,
    tenacity: twisted(19.5, 'computed', 'three-strand polyester rope 19.7 to 21 cN/tex (rope table by diameter, minimum break); 19.5 taken'),
    wet: memory(1, 'polyester wet over dry 1.0'),
    duration: memory(0.07, MEREDITH),
    strainAtBreak: value(0.2, '1', 'published', 'rope elongation table: polyester 15 to 25 % at break'),
    onItself: SLICK,
    onPot: SLICK,
  },
  polypropylene: {
    natural: false,
    tenacity: twisted(24, 'computed', 'three-strand polypropylene rope 24 to 31 cN/tex (federal-specification style rope table)'),
    wet: memory(1, 'polypropylene wet over dry 1.0'),
    duration: memory(0.095, MEREDITH),
    strainAtBreak: value(0.22, '1', 'published', 'rope elongation table: polypropylene 20 to 25 % at break'),
    onItself: SLICK,
    onPot: SLICK,
  },
  nylon: {
    natural: false,
    tenacity: twisted(26, 'computed', 'three-strand nylon rope 26 to 30 cN/tex (federal-specification style rope table)'),
    wet: value(0.8, '1', 'published', 'Flory, Hearle and Goksoy, MTS 1990: about 20 % lost wet with ordinary yarn finish'),
    duration: memory(0.088, FLAGGED),
    strainAtBreak: value(0.3, '1', 'published', 'rope elongation table: nylon 25 to 35 % at break'),
    onItself: SLICK,
    onPot: SLICK,
  },
  viscose: { natural: true, tenacity: null, wet: memory(0.45, 'viscose wet over dry 0.45 to 0.6'), duration: memory(0.088, FLAGGED), strainAtBreak: value(0.16, '1', 'published', `${MORTON}: viscose staple 16 %`), ...natural },
  unknown: { natural: true, tenacity: null, wet: memory(0.45, 'the weakest wet value of the listed fibres'), duration: memory(0.095, 'the largest value of the listed fibres'), strainAtBreak: memory(0.17, 'as cotton'), onItself: SLICK, onPot: SLICK },
}

/**
 * Breaking force by diameter alone: F = 15 d^2 N with d in mm, here per m2 of d^2. A floor for every
 * fibre and make: published cotton values at similar size differ sixfold (17 to 103 N/mm2).
 */
export const BREAK_BY_DIAMETER: Value = value(15e6, 'N/m2', 'computed', 'below the weakest published cotton cord found: hollow 8 mm braid, 16.7 N/mm2 of d2 (rope vendor, mean of 5 tests)')

/** Mass per metre over diameter squared, kg/m3: pi/4 x packing (0.35, 0.45, 0.55) x 1520 kg/m3. */
export const MASS_BY_DIAMETER: Range = range((Math.PI / 4) * 0.35 * 1520, (Math.PI / 4) * 0.45 * 1520, (Math.PI / 4) * 0.55 * 1520, 'kg/m3', 'computed', 'packing 0.35 to 0.55 of cotton fibre of 1520 kg/m3')

/** Diameter a cord is drawn and weighed with where it was not measured, m; no strength is reckoned from it. */
export const UNMEASURED_DIAMETER: Value = value(0.004, 'm', 'common practice', 'the usual cord of a plant hanger')

/** Diameter of a rated cord of which nothing else is said, for its bends, m: the thicker, the worse it bends. */
export const THICKEST_DIAMETER: Value = value(0.01, 'm', 'common practice', 'thicker than any cord hangers are knotted from')

/** Share of a cord's round section that its fibre fills, at most. */
const TIGHTEST = 0.85
const packed = (solid: number): Value =>
  value(TIGHTEST * solid, 'kg/m3', 'from memory', `solid fibre at most ${solid} kg/m3, of which it fills ${TIGHTEST} of the section at most: ropes by their printed sizes and weights 0.6 to 0.76, loose string about half`)

/** Density no cord of a fibre can exceed, kg/m3; of an unknown one that of the heaviest. Weighed doubled, or not divided by its length, a cord seems heavier. */
export const DENSEST_CORD: Readonly<Record<Fibre, Value>> = {
  cotton: packed(1550), linen: packed(1540), hemp: packed(1500), jute: packed(1500), manila: packed(1500), sisal: packed(1500),
  polyester: packed(1390), polypropylene: packed(910), nylon: packed(1140), viscose: packed(1520), unknown: packed(1550),
}

/** Secant stiffness EA of a strand whose breaking force is not known, N. */
export const DEFAULT_STIFFNESS: Value = value(2900, 'N', 'computed', '4 mm cotton cord, 0.5 kN at 17 % elongation')

/** How much stiffer a cord is once bedded in than at its first load. */
export const BEDDED_STIFFNESS: Value = value(3, '1', 'from memory', 'two to three times the first-load stiffness after bedding in')

/** A cord of the catalogue that a maker without a hanger may start from. */
export interface CatalogueCord {
  readonly id: string
  readonly fibre: Fibre
  readonly make: CordMake
  /** m */
  readonly diameter: number
}

/** Cords to choose from, thinnest first; known by diameter only until the maker weighs them. */
export const CATALOGUE_CORDS: readonly CatalogueCord[] = [2, 3, 4, 5, 6, 8, 10, 12].map((mm) => ({
  id: `cotton-loose-${mm}`,
  fibre: 'cotton',
  make: 'loose',
  diameter: mm / 1000,
}))
