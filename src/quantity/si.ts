/**
 * SI quantities as branded numbers. A brand stands at the door of an exported function or on a
 * record's field, so that metres cannot be handed over where newtons are asked; inside a function
 * plain arithmetic is used and the result is branded once, on return.
 */
declare const unit: unique symbol
type Branded<U extends string> = number & { readonly [unit]: U }

export type Metres = Branded<'m'>
export type Kilograms = Branded<'kg'>
export type Newtons = Branded<'N'>
export type NewtonsPerMetre = Branded<'N/m'>
export type Pascals = Branded<'Pa'>
export type Radians = Branded<'rad'>
export type Seconds = Branded<'s'>
export type KilogramsPerMetre = Branded<'kg/m'>
export type KilogramsPerCubicMetre = Branded<'kg/m3'>
export type CubicMetres = Branded<'m3'>
export type MetresPerSecond = Branded<'m/s'>

export const metres = (x: number): Metres => x as Metres
export const kilograms = (x: number): Kilograms => x as Kilograms
export const newtons = (x: number): Newtons => x as Newtons
export const newtonsPerMetre = (x: number): NewtonsPerMetre => x as NewtonsPerMetre
export const pascals = (x: number): Pascals => x as Pascals
export const radians = (x: number): Radians => x as Radians
export const seconds = (x: number): Seconds => x as Seconds
export const kilogramsPerMetre = (x: number): KilogramsPerMetre => x as KilogramsPerMetre
export const kilogramsPerCubicMetre = (x: number): KilogramsPerCubicMetre => x as KilogramsPerCubicMetre
export const cubicMetres = (x: number): CubicMetres => x as CubicMetres
export const metresPerSecond = (x: number): MetresPerSecond => x as MetresPerSecond

/** Standard acceleration of free fall, m/s2, exact (3rd General Conference on Weights and Measures, 1901). */
export const STANDARD_GRAVITY = 9.80665
/** International inch, m, exact (international yard and pound agreement, 1959). */
export const INCH = 0.0254
/** International avoirdupois pound, kg, exact (international yard and pound agreement, 1959). */
export const POUND = 0.45359237
