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

/** How stiff metals are, Pa: for how far parts bend, which decides nothing. */
export const METAL_STIFFNESS: Readonly<Record<Metal, Value>> = {
  steel: value(210e9, 'Pa', 'published', 'EN 1993-1-1:2005, 3.2.6: E = 210 000 N/mm2'),
  brass: value(100e9, 'Pa', 'from memory', 'brass, 97 to 110 GPa'),
  unknown: value(70e9, 'Pa', 'published', 'as aluminium, the least stiff usual metal (EN 1999-1-1:2007, 3.2.5: E = 70 000 N/mm2)'),
}
