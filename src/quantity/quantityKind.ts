import type {
  CubicMetres, KilogramsPerCubicMetre, KilogramsPerMetre, Kilograms, Metres, MetresPerSecond,
  Newtons, Pascals, Radians, Seconds,
} from './si'

/** What the reader hands back for each kind of quantity: a number in SI, under its brand. */
export interface SiValue {
  length: Metres
  mass: Kilograms
  force: Newtons
  angle: Radians
  speed: MetresPerSecond
  linearDensity: KilogramsPerMetre
  time: Seconds
  volume: CubicMetres
  density: KilogramsPerCubicMetre
  pressure: Pascals
  /** A whole number of things. */
  count: number
  /** A plain number, never a percentage. */
  number: number
  /** A plain number or a percentage: "0.3" and "30 %" are the same. */
  ratio: number
}

/** The kinds of quantity a field can ask for. */
export type QuantityKind = keyof SiValue
