import { value, type Value } from './basis'

export const METALS = ['steel', 'brass', 'unknown'] as const
export type Metal = (typeof METALS)[number]

/** Yield stress of wire for hooks and rings, Pa. */
export const YIELD_STRESS: Readonly<Record<Metal, Value>> = {
  steel: value(250e6, 'Pa', 'from memory', 'annealed mild steel wire; cold drawn 400 MPa and more'),
  brass: value(100e6, 'Pa', 'from memory', 'annealed brass wire, 100 to 200 MPa'),
  unknown: value(100e6, 'Pa', 'from memory', 'as soft brass, the weakest usual metal'),
}
