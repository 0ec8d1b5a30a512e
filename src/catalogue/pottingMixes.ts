import { range, value, type Range, type Value } from './basis'

/** Density of water, kg/m3. */
export const WATER_DENSITY: Value = value(1000, 'kg/m3', 'from memory', 'water 998 kg/m3 at 20 degrees, rounded up')

/** Density of the solids of a mix, at most, kg/m3: what is left of its volume for pores. */
export const SOLIDS_DENSITY: Value = value(2650, 'kg/m3', 'published', 'mineral soil solids 2.65 g/cm3 (soil science texts); organic solids are lighter')

/** What is left solid of a weighed pot, at least, when its water is taken off: pot, roots and dry mix. */
export const LEAST_SOLID_SHARE: Value = value(0.1, '1', 'computed', 'dry soilless mix is about a seventh of the mix watered (table below); pot and roots add to it')

/** Densities of a potting mix in a filled pot, kg/m3 of mix, in its three states. */
export interface PottingMix {
  /** Bulk density when dry. */
  readonly dry: Range
  /** Just watered and drained: dry bulk density plus 1000 x container capacity. */
  readonly watered: Range
  /** All pores full: dry bulk density plus 1000 x total porosity. */
  readonly flooded: Range
}

export const MIX_KINDS = [
  'soilless', 'peat', 'peatPerlite', 'coir', 'bark', 'compost', 'cactus', 'pumice', 'expandedClay', 'orchidBark', 'sphagnum',
  'gardenSoil', 'sand', 'unknown',
] as const
export type MixKind = (typeof MIX_KINDS)[number]

type Three = readonly [number, number, number]
const mix = (dry: Three, watered: Three, flooded: Three, basis: 'published' | 'computed' | 'from memory', source: string): PottingMix => ({
  dry: range(...dry, 'kg/m3', basis, source),
  watered: range(...watered, 'kg/m3', basis, source),
  flooded: range(...flooded, 'kg/m3', basis, source),
})

const AGRONOMY = 'Int. J. Agronomy 2012, 978528, table 1 (bulk density, container capacity, total porosity)'
const FRONTIERS = 'Front. Plant Sci. 2014, 5:625, table 4'
const GROWERS = "Pacific Bulb Society wiki, growing media (members' own single measurements)"

/**
 * Densities of potting mixes. The wet states follow the definitions of container capacity and total
 * porosity in Int. J. Agronomy 2012, 978528, table 1, footnotes: watered = BD + 1000 CC,
 * flooded = BD + 1000 TP.
 */
export const POTTING_MIXES: Readonly<Record<MixKind, PottingMix>> = {
  soilless: mix([80, 130, 220], [610, 950, 1100], [950, 1080, 1100], 'computed', `envelope of the peat, coir and bark mixes below; safe cap 1100 kg/m3; after ${AGRONOMY}`),
  peat: mix([90, 130, 160], [900, 950, 980], [1040, 1080, 1100], 'computed', `${AGRONOMY}; ${FRONTIERS}`),
  peatPerlite: mix([100, 110, 140], [780, 850, 920], [1040, 1080, 1100], 'computed', `linear mix of peat (${AGRONOMY}) and perlite (${FRONTIERS})`),
  coir: mix([80, 120, 160], [820, 900, 950], [950, 1020, 1050], 'computed', `${GROWERS}, coir fines`),
  bark: mix([180, 200, 220], [610, 750, 800], [970, 1030, 1090], 'computed', `${AGRONOMY}, pine bark and chip residual`),
  compost: mix([270, 330, 400], [1010, 1050, 1080], [1130, 1140, 1150], 'computed', `${GROWERS}, aged sieved compost`),
  cactus: mix([650, 720, 800], [900, 1000, 1100], [1250, 1350, 1400], 'computed', `equal parts bark (${AGRONOMY}), calcined clay and granite grit (${GROWERS})`),
  pumice: mix([430, 750, 900], [1000, 1100, 1300], [1260, 1400, 1500], 'computed', `${FRONTIERS}, pumice, towards zeolite (vendor sheet)`),
  expandedClay: mix([250, 400, 510], [450, 550, 600], [900, 950, 1000], 'from memory', 'trade densities of expanded clay; absorption and voids from memory'),
  orchidBark: mix([190, 210, 230], [360, 400, 450], [950, 1000, 1020], 'computed', `${GROWERS}, orchid bark`),
  sphagnum: mix([20, 30, 50], [740, 850, 900], [950, 1000, 1020], 'from memory', 'long-fibre sphagnum, orchid growers’ notes; bulk density from memory'),
  gardenSoil: mix([1200, 1320, 1450], [1600, 1750, 1800], [1780, 1900, 2050], 'computed', 'J. Appl. Hort. 14(2):92, 2012, abstract; solids of 2650 kg/m3'),
  sand: mix([1550, 1620, 1700], [1800, 1900, 1950], [1950, 2000, 2050], 'computed', 'Engineering ToolBox, dirt and mud (sand dry and wet); solids of 2650 kg/m3'),
  unknown: mix([20, 130, 1700], [360, 950, 2000], [900, 1080, 2050], 'computed', 'envelope of all mixes; safe cap 2000 kg/m3 where there may be soil or sand'),
}
