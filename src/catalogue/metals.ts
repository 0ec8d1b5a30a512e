import { value, type Value } from './basis'

export const METALS = ['steel', 'brass', 'unknown'] as const
export type Metal = (typeof METALS)[number]

/** Density of steel, kg/m3: the low figure of its range. */
export const STEEL_DENSITY: Value = value(7852, 'kg/m3', 'published', 'EN 1991-1-1:2002, table A.4: steel 77.0 kN/m3')

/** Yield stress of wire for hooks and rings, Pa. */
export const YIELD_STRESS: Readonly<Record<Metal, Value>> = {
  steel: value(250e6, 'Pa', 'from memory', 'annealed mild steel wire; cold drawn 400 MPa and more'),
  brass: value(100e6, 'Pa', 'from memory', 'annealed brass wire, 100 to 200 MPa'),
  unknown: value(100e6, 'Pa', 'from memory', 'as soft brass, the weakest usual metal'),
}
