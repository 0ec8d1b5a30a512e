import { range, value, type Range, type Value } from './basis'
import { STEEL_DENSITY } from './metals'

/** What an empty pot is made of. */
export interface PotMaterial {
  /** Density of the dry material, kg/m3. */
  readonly density: Range
  /** Water taken up by the soaked wall as a share of its dry mass. */
  readonly uptake: Range
  /** Wall thickness, m, at a rim of WALLS_AT_RIM. */
  readonly wall: Range
  /** How much thicker the wall is per metre of rim beyond WALLS_AT_RIM (m/m). */
  readonly wallPerRim: number
}

/** Width of rim that the wall thicknesses are given for, m. */
export const WALLS_AT_RIM = 0.2
/** Wall of a small pot, at least, as a share of that. */
export const LEAST_WALL_SHARE: Value = value(0.5, '1', 'from memory', 'small pots are thinner, but not without end')

export const POT_MATERIALS_KINDS = ['terracotta', 'stoneware', 'porcelain', 'plastic', 'concrete', 'fibreCement', 'glass', 'steel', 'wood'] as const
export type PotMaterialKind = (typeof POT_MATERIALS_KINDS)[number]

const EN_1991 = 'EN 1991-1-1:2002, tables A.4 and A.5 (national adoption)'
const WALLS = 'wall thickness from memory'
const walls = (low: number, likely: number, high: number): Range => range(low / 1000, likely / 1000, high / 1000, 'm', 'from memory', WALLS)
const dry = (): Range => range(0, 0, 0, '1', 'from memory', 'takes up no water')

/** Pot materials; a thrown or cast base is taken as thick as the wall. */
export const POT_MATERIALS: Readonly<Record<PotMaterialKind, PotMaterial>> = {
  terracotta: {
    density: range(1700, 1850, 2000, 'kg/m3', 'from memory', 'unglazed terracotta; common red brick 1922 kg/m3 (120 lb/ft3) for comparison'),
    uptake: range(0.1, 0.12, 0.15, '1', 'published', 'tertiary pages on terracotta: 10 to 12 % by mass common, 15 % for design'),
    wall: walls(8, 9.5, 12),
    wallPerRim: 0.032,
  },
  stoneware: {
    density: range(2100, 2250, 2400, 'kg/m3', 'from memory', 'glazed stoneware'),
    uptake: range(0.01, 0.025, 0.035, '1', 'published', 'clay vendor, cone 6 body 2.5 +/- 1 %'),
    wall: walls(6, 7, 10),
    wallPerRim: 0,
  },
  porcelain: {
    density: range(2300, 2400, 2500, 'kg/m3', 'from memory', 'porcelain'),
    uptake: range(0, 0.003, 0.005, '1', 'published', 'tile trade definition of porcelain, at most 0.5 %'),
    wall: walls(3, 5, 6),
    wallPerRim: 0,
  },
  plastic: { density: range(900, 950, 1050, 'kg/m3', 'from memory', 'PP, HDPE, PS'), uptake: dry(), wall: walls(1, 2, 4), wallPerRim: 0 },
  concrete: {
    density: range(2323, 2360, 2403, 'kg/m3', 'published', 'normal concrete 145 to 150 lb/ft3 (civil engineering tables)'),
    uptake: range(0.04, 0.06, 0.08, '1', 'from memory', 'normal concrete'),
    wall: walls(15, 20, 30),
    wallPerRim: 0,
  },
  fibreCement: {
    density: range(1300, 1550, 1800, 'kg/m3', 'from memory', 'fibre cement'),
    uptake: range(0.1, 0.18, 0.25, '1', 'from memory', 'fibre cement'),
    wall: walls(8, 10, 12),
    wallPerRim: 0,
  },
  glass: { density: range(2500, 2549, 2563, 'kg/m3', 'published', `${EN_1991}: 25.0 kN/m3`), uptake: dry(), wall: walls(3, 4, 6), wallPerRim: 0 },
  steel: { density: range(STEEL_DENSITY.value, STEEL_DENSITY.value, 8005, 'kg/m3', 'published', `${EN_1991}: 77.0 to 78.5 kN/m3`), uptake: dry(), wall: walls(0.5, 0.65, 0.8), wallPerRim: 0 },
  wood: {
    density: range(465, 545, 753, 'kg/m3', 'published', 'spruce-pine-fir 29 lb/ft3 to oak 47 lb/ft3 at about 10 % moisture (civil engineering tables)'),
    uptake: range(0.2, 0.4, 0.6, '1', 'from memory', 'wet wood'),
    wall: walls(12, 15, 20),
    wallPerRim: 0,
  },
}
