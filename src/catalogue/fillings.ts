import { range, type Range } from './basis'

/** What lies under the mix for drainage, or on top of it for looks. */
export const FILLING_KINDS = ['gravel', 'expandedClay', 'lava', 'orchidBark', 'sphagnum'] as const
export type FillingKind = (typeof FILLING_KINDS)[number]

/** Densities of a filling in its three states, kg/m3. */
export interface Filling {
  readonly dry: Range
  readonly watered: Range
  readonly flooded: Range
}

type Three = readonly [number, number, number]
const filling = (dry: Three, watered: Three, flooded: Three, basis: 'published' | 'computed' | 'from memory', source: string): Filling => ({
  dry: range(...dry, 'kg/m3', basis, source),
  watered: range(...watered, 'kg/m3', basis, source),
  flooded: range(...flooded, 'kg/m3', basis, source),
})

const GROWERS = "Pacific Bulb Society wiki, growing media (members' own single measurements)"

/** Drainage layers and top dressings by kind. */
export const FILLINGS: Readonly<Record<FillingKind, Filling>> = {
  gravel: filling([1390, 1500, 1700], [1490, 1600, 2000], [1830, 1900, 2000], 'computed', `${GROWERS}, gravel of 6 to 12 mm; Engineering ToolBox, dirt and mud (gravel dry and wet)`),
  expandedClay: filling([250, 400, 510], [450, 550, 600], [900, 950, 1000], 'from memory', 'trade densities of expanded clay; absorption and voids from memory'),
  lava: filling([700, 810, 900], [850, 960, 1050], [1400, 1480, 1550], 'computed', `${GROWERS}, crushed lava; range about it from memory`),
  orchidBark: filling([190, 210, 230], [360, 400, 450], [950, 1000, 1020], 'computed', `${GROWERS}, orchid bark`),
  sphagnum: filling([20, 30, 50], [740, 850, 900], [950, 1000, 1020], 'from memory', 'long-fibre sphagnum, orchid growers’ notes; bulk density from memory'),
}
