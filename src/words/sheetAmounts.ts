import { formatInches } from '../quantity/formatInches'
import { metres, POUND } from '../quantity/si'
import { withMark } from './writing'

const tenthDown = (value: number): string => withMark((Math.floor(value * 10 + 1e-9) / 10).toFixed(1))

/**
 * A mass nothing may be heavier than, as the one number of a sheet or tag: both rounded down to a tenth.
 * @example massFigure(13.58) // '13.5 kg / 29.9 lb'
 */
export const massFigure = (kilograms: number): string => `${tenthDown(kilograms)} kg / ${tenthDown(kilograms / POUND)} lb`

/** Rounded down, to a hundredth below ten and to a tenth above. */
function finelyDown(value: number): string {
  const parts = value < 10 ? 100 : 10
  return withMark(String(Math.floor(value * parts + 1e-9) / parts))
}

/**
 * The mass of a pot that was weighed or reckoned and that no other may exceed: rounded down, but not so far that the pot
 * itself would be too heavy.
 * @example ownPotText(1.35) // '1.35 kg (2.97 lb)'
 */
export const ownPotText = (kilograms: number): string => `${finelyDown(kilograms)} kg (${finelyDown(kilograms / POUND)} lb)`

/**
 * The mass a sheet tells where the hanger may carry `heaviest` and `tested` hung in it, kg: who hung what the sheet says
 * in either unit, both of which are rounded down, hung the weight that is told.
 * @example toldMass(13.58, 13.5) // 13.5
 */
export function toldMass(heaviest: number, tested: number | null): number {
  const said = (unit: number): number => (Math.floor((heaviest / unit) * 10 + 1e-9) / 10) * unit
  return tested !== null && tested < heaviest && tested >= Math.min(said(1), said(POUND)) - 1e-9 ? tested : heaviest
}

/** Litres in a US quart. */
const QUART = 0.946352946

/** Rounded down, to a tenth below five and to a half above. */
function measureDown(amount: number, one: string, several: string): string {
  const parts = amount < 5 ? 10 : 2
  const down = Math.floor(amount * parts + 1e-9) / parts
  return `${withMark(String(down))} ${down === 1 ? one : several}`
}

/**
 * Water of a mass, kg, as it is measured out.
 * @example waterText(9.81) // '9.5 litres (10 quarts)'
 */
export const waterText = (kilograms: number): string => `${measureDown(kilograms, 'litre', 'litres')} (${measureDown(kilograms / QUART, 'quart', 'quarts')})`

const INCH = 0.0254
const halfInches = (length: number, round: (value: number) => number): string => formatInches(metres((round((length / INCH) * 2) / 2) * INCH), 2)
const centimetres = (length: number): string => withMark(String(Math.round(length * 1000) / 10))

/**
 * Widths of pots from one size to another, m; the half inches lie within them.
 * @example potWidthText({ from: 0.16, to: 0.22 }) // '16 to 22 cm (6 1/2 to 8 1/2 in)'
 */
export function potWidthText({ from, to }: { readonly from: number; readonly to: number }): string {
  if (from === to) return `${centimetres(from)} cm (${formatInches(metres(from), 8)})`
  return `${centimetres(from)} to ${centimetres(to)} cm (${halfInches(from, Math.ceil).replace(' in', '')} to ${halfInches(to, Math.floor)})`
}

/**
 * The same where nothing usual is smaller.
 * @example potWidthUpToText(0.22) // 'up to 22 cm (8 1/2 in)'
 */
export const potWidthUpToText = (to: number): string => `up to ${centimetres(to)} cm (${halfInches(to, Math.floor)})`
