import type { CaseCode } from '../load/loadCases'
import type { Finding } from './finding'
import { hookLoad } from './hookLoad'
import type { Term } from './linkResult'
import type { Solved } from './solved'

/** All that hangs at the place in one case, N, with the symbol of its line: W, or P where other loads hang there too. */
export interface PlaceLoad {
  readonly load: number
  readonly symbol: 'P' | 'W'
  readonly terms: readonly Term[]
}

/** What the place is asked in one case, N: the worst of its fixings, straight out of wall or ceiling and along it. */
export interface PlaceDemand {
  readonly ok: true
  readonly pull: number
  readonly shear: number
  /** All that hangs there. */
  readonly load: number
  /** How they came about, by the symbols E_N and E_V (where they are not nothing). */
  readonly terms: readonly Term[]
}

/** Why it cannot be said; `fails` where that is a fault of the place itself. */
export interface NoPlaceDemand {
  readonly ok: false
  readonly finding: Finding
  readonly fails: boolean
  readonly terms: readonly Term[]
}
export type PlaceDemandOutcome = PlaceDemand | NoPlaceDemand

/**
 * What hangs at the place in a case: the whole weight, or of a stick on two hooks the larger part, with what else hangs
 * from the same hook or bracket, which stays at rest but in a gust.
 */
export function placeLoad(solved: Solved, code: CaseCode): PlaceLoad {
  const { load, terms } = hookLoad(solved, code)
  const before = terms.filter((t) => t.code !== 'demand')
  const last = terms.find((t) => t.code === 'demand')
  return last === undefined || last.formula === 'W' ? { load, symbol: 'W', terms: before } : { load, symbol: 'P', terms: [...before, { ...last, code: 'placeLoad', symbol: 'P' }] }
}
