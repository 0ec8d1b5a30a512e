import { range, value, type Range, type Value } from './basis'

/** What a nylon plug is set into, as tables of plugs tell them apart. */
export const PLUG_BASES = ['concrete', 'solidBrick', 'perforatedBrick', 'aerated', 'board'] as const
export type PlugBase = (typeof PLUG_BASES)[number]

/** One plug by the diameter of its hole; a base without a figure is null. */
export interface PlugRow {
  readonly id: string
  /** Of the hole, m. */
  readonly diameter: number
  /** Pull-out recommended for one plug with a screw that fits, N. */
  readonly pullOut: Readonly<Record<PlugBase, Range | null>>
}

type Ends = readonly [low: number, high: number]
const kilonewtons = ([low, high]: Ends): Range => range(low * 1000, ((low + high) / 2) * 1000, high * 1000, 'N', 'from memory', 'recommended pull-out of nylon plugs, several makers; likely: the middle; the packet goes before')
const plug = (mm: number, concrete: Ends, solidBrick: Ends, perforatedBrick: Ends, aerated: Ends, board: Ends | null): PlugRow => ({
  id: `${mm} mm`,
  diameter: mm / 1000,
  pullOut: {
    concrete: kilonewtons(concrete), solidBrick: kilonewtons(solidBrick), perforatedBrick: kilonewtons(perforatedBrick), aerated: kilonewtons(aerated),
    board: board === null ? null : kilonewtons(board),
  },
})

/** Nylon plugs: concrete of 20 MPa and up, plasterboard of 12.5 mm. */
export const NYLON_PLUGS: readonly PlugRow[] = [
  plug(5, [0.2, 0.4], [0.2, 0.3], [0.05, 0.1], [0.03, 0.05], [0.04, 0.1]),
  plug(6, [0.4, 0.8], [0.3, 0.5], [0.1, 0.15], [0.05, 0.1], [0.05, 0.1]),
  plug(8, [0.6, 1.2], [0.5, 0.8], [0.15, 0.25], [0.08, 0.15], [0.1, 0.15]),
  plug(10, [1.2, 2], [0.8, 1.2], [0.2, 0.3], [0.15, 0.3], null),
]

const CATALOGUE = 'a European plug maker’s technical catalogue of 2024'
const drawn = (kilonewtons: number): Value => value(kilonewtons * 1000, 'N', 'published', `${CATALOGUE}: printed as admissible, but over its own factor these can only be ultimates`)
/** Pull that draws a plug out, by one catalogue, N. */
export const PLUG_ULTIMATES = {
  mm6: { concrete: drawn(4.9), solidBrick: drawn(2.8) },
  mm8: { concrete: drawn(6), solidBrick: drawn(4.9) },
  mm10: { concrete: drawn(11.2) },
} as const satisfies Readonly<Record<string, Readonly<Partial<Record<PlugBase, Value>>>>>

/** Ultimate over recommended pull-out of plugs. */
export const PLUG_SAFETY: Value = value(6, '1', 'published', `${CATALOGUE}: recommended is a sixth of the ultimate`)

const PUSHED = `${CATALOGUE}: push-in insulation plug`
/** A push-in insulation plug, for comparison: never to hang from. */
export const INSULATION_PLUG: Readonly<Record<'solid' | 'hollow', Value>> = {
  solid: value(30, 'N', 'published', `${PUSHED}, concrete and solid brick`),
  hollow: value(20, 'N', 'published', `${PUSHED}, perforated brick and aerated concrete`),
}

/** Length of screw or plug that aerated block needs, m, and the least distance from its edge. */
export const AERATED_DEPTH: Value = value(0.05, 'm', 'published', 'a block maker’s notes on fixings (AZoBuild 7845): 50 mm into the block, as far from its edge at least')
