import { formatFeetInches, formatInches } from '../quantity/formatInches'
import { metres, POUND, STANDARD_GRAVITY } from '../quantity/si'

// Numbers as a maker reads them: masses in kg and lb, lengths in mm, cm or m; three figures at most.

const figures = (value: number, count: number): string => {
  if (value === 0) return '0'
  const digits = Math.max(0, count - 1 - Math.floor(Math.log10(Math.abs(value))))
  return value.toFixed(Math.min(digits, 3)).replace(/(\.\d*?)0+$/, '$1').replace(/\.$/, '')
}

/**
 * A mass, kg and lb.
 * @example massText(5.5) // '5.5 kg (12.1 lb)'
 */
export const massText = (kilograms: number): string => `${figures(kilograms, 3)} kg (${figures(kilograms / POUND, 3)} lb)`

/**
 * A mass known as a range, kg and lb.
 * @example massRangeText({ low: 4.9, high: 6.25 }) // '4.9 to 6.25 kg (10.8 to 13.8 lb)'
 */
export const massRangeText = ({ low, high }: { readonly low: number; readonly high: number }): string =>
  (massText(low) === massText(high) ? massText(low) : `${figures(low, 3)} to ${figures(high, 3)} kg (${figures(low / POUND, 3)} to ${figures(high / POUND, 3)} lb)`)

/**
 * A mass nothing may be heavier than: both numbers rounded down to a tenth.
 * @example massLimitText(13.58) // '13.5 kg (29.9 lb)'
 */
export const massLimitText = (kilograms: number): string => {
  const down = (value: number): string => (Math.floor(value * 10 + 1e-9) / 10).toFixed(1)
  return `${down(kilograms)} kg (${down(kilograms / POUND)} lb)`
}

/**
 * A mass that must at least be reached: both numbers rounded up to a tenth.
 * @example massLeastText(12.04) // '12.1 kg (26.6 lb)'
 */
export const massLeastText = (kilograms: number): string => {
  const up = (value: number): string => String(Math.ceil(value * 10 - 1e-9) / 10)
  return `${up(kilograms)} kg (${up(kilograms / POUND)} lb)`
}

/**
 * A force, N, as the mass that would pull as hard.
 * @example forceText(98.0665) // '10 kg (22 lb)'
 */
export const forceText = (newtons: number): string => massText(newtons / STANDARD_GRAVITY)

/** Length from which metres, and feet, are easier to picture. */
const METRES_FROM = 1.5

/**
 * A length in the metric unit a maker would use for its size, and in inches as on a tape.
 * @example lengthText(0.1318) // '132 mm (5 3/16 in)'
 */
export function lengthText(length: number): string {
  const inches = Math.abs(length) >= METRES_FROM ? formatFeetInches : formatInches
  return `${metricText(length)} (${inches(metres(length), 16)})`
}

function metricText(length: number): string {
  const size = Math.abs(length)
  if (size >= METRES_FROM) return `${figures(length, 3)} m`
  if (size >= 0.3) return `${figures(length * 100, 3)} cm`
  return `${figures(length * 1000, 3)} mm`
}

/**
 * A share in whole per cent, rounded up so that it never looks better than it is.
 * @example percentText(0.6201) // '63 %'
 */
export const percentText = (share: number): string => `${Math.ceil(share * 100 - 1e-9)} %`

const MONTH_UNIT = [2629800, 'month'] as const
/** Months are said of whole and half ones only: of other times nobody thinks in them. */
const isHalfMonths = (seconds: number): boolean => Math.abs((seconds / MONTH_UNIT[0]) * 2 - Math.round((seconds / MONTH_UNIT[0]) * 2)) < 1e-6

/**
 * A time, s, in the largest unit that keeps it readable.
 * @example timeText(5400) // '1.5 hours'
 */
export function timeText(seconds: number): string {
  const units: readonly (readonly [number, string])[] = [[31557600, 'year'], ...(isHalfMonths(seconds) ? [MONTH_UNIT] : []), [86400, 'day'], [3600, 'hour'], [60, 'minute'], [1, 'second']]
  const [size, name] = units.find(([length]) => seconds >= length * 0.999) ?? [1, 'second']
  const count = figures(seconds / size, 2)
  return `${count} ${name}${count === '1' ? '' : 's'}`
}

/**
 * A speed of the wind, m/s, as weather reports give it.
 * @example speedText(18) // '65 km/h (40 mph)'
 */
export const speedText = (speed: number): string => `${Math.round(speed * 3.6)} km/h (${Math.round(speed / 0.44704)} mph)`

/**
 * A plain number with up to three figures.
 * @example numberText(0.08714) // '0.087'
 */
export const numberText = (value: number): string => figures(value, 3)
