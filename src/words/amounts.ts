import { formatFeetInches, formatInches } from '../quantity/formatInches'
import { metres, POUND, STANDARD_GRAVITY } from '../quantity/si'
import { inUnits, withMark, writingHabits } from './writing'

// Numbers as a maker reads them, by the habits set in writing.ts: masses in kg and lb, lengths in mm, cm or m and inches; three figures at most.

const figures = (value: number, count: number): string => {
  if (value === 0) return '0'
  const digits = Math.max(0, count - 1 - Math.floor(Math.log10(Math.abs(value))))
  return withMark(value.toFixed(Math.min(digits, 3)).replace(/(\.\d*?)0+$/, '$1').replace(/\.$/, ''))
}

/** A mass by one way of writing its number, kg and lb. */
const massBy = (kilograms: number, write: (value: number) => string): string =>
  inUnits(() => `${write(kilograms)} kg`, () => `${write(kilograms / POUND)} lb`)

/**
 * A mass, kg and lb.
 * @example massText(5.5) // '5.5 kg (12.1 lb)'
 */
export const massText = (kilograms: number): string => massBy(kilograms, (value) => figures(value, 3))

/**
 * A mass known as a range, kg and lb.
 * @example massRangeText({ low: 4.9, high: 6.25 }) // '4.9 to 6.25 kg (10.8 to 13.8 lb)'
 */
export function massRangeText({ low, high }: { readonly low: number; readonly high: number }): string {
  const range = (unit: number): string => `${figures(low / unit, 3)} to ${figures(high / unit, 3)}`
  return massText(low) === massText(high) ? massText(low) : inUnits(() => `${range(1)} kg`, () => `${range(POUND)} lb`)
}

/**
 * A mass nothing may be heavier than: both numbers rounded down to a tenth.
 * @example massLimitText(13.58) // '13.5 kg (29.9 lb)'
 */
export const massLimitText = (kilograms: number): string => massBy(kilograms, (value) => withMark((Math.floor(value * 10 + 1e-9) / 10).toFixed(1)))

/**
 * A mass that must at least be reached: both numbers rounded up to a tenth.
 * @example massLeastText(12.04) // '12.1 kg (26.6 lb)'
 */
export const massLeastText = (kilograms: number): string => massBy(kilograms, (value) => withMark(String(Math.ceil(value * 10 - 1e-9) / 10)))

/**
 * A mass in whole numbers, rounded up: what must be reached with something to spare.
 * @example massWholeText(11.2) // '12 kg (25 lb)'
 */
export const massWholeText = (kilograms: number): string => massBy(kilograms, (value) => String(Math.ceil(value - 1e-9)))

/** The unit in which a scale of masses is marked, and how many kilograms it is. */
export const massUnit = (): { readonly name: 'kg' | 'lb'; readonly kilograms: number } =>
  (writingHabits().units === 'imperial' ? { name: 'lb', kilograms: POUND } : { name: 'kg', kilograms: 1 })

/**
 * A force, N, as the mass that would pull as hard.
 * @example forceText(98.0665) // '10 kg (22 lb)'
 */
export const forceText = (newtons: number): string => massText(newtons / STANDARD_GRAVITY)

/** Length from which metres, and feet, are easier to picture. */
const METRES_FROM = 1.5
/** Below half an inch a sixteenth is too coarse where nothing else is said. */
const FINE_BELOW = 0.0127

/**
 * A length in the metric unit a maker would use for its size, and in inches as on a tape.
 * @example lengthText(0.1318) // '132 mm (5 3/16 in)'
 */
export const lengthText = (length: number): string => inUnits(() => metricText(length), () => inchText(length))

/**
 * A length in the reader's first unit alone, without brackets.
 * @example plainLengthText(0.01) // '10 mm'
 */
export const plainLengthText = (length: number): string => (writingHabits().units === 'imperial' ? inchText(length) : metricText(length))

/**
 * A length rounded up to a whole step, m, so that it is enough: where only inches are read, to a quarter of one, from
 * centimetres on to half of one.
 * @example lengthUpText(0.1312, 0.005) // '135 mm (5 5/16 in)'
 */
export function lengthUpText(length: number, step: number): string {
  if (writingHabits().units !== 'imperial') return lengthText(upTo(length, step))
  return lengthText(upTo(length, step < 0.01 ? INCH / 4 : INCH / 2))
}

const INCH = 0.0254
const upTo = (length: number, step: number): number => Math.ceil(length / step - 1e-9) * step

function inchText(length: number): string {
  const isFine = writingHabits().units === 'imperial' && Math.abs(length) < FINE_BELOW
  return withMark((Math.abs(length) >= METRES_FROM ? formatFeetInches : formatInches)(metres(length), isFine ? 64 : 16))
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
export const speedText = (speed: number): string => inUnits(() => `${Math.round(speed * 3.6)} km/h`, () => `${Math.round(speed / 0.44704)} mph`)

/** One ounce a yard, kg/m. */
const OUNCE_PER_YARD = POUND / 16 / 0.9144

/**
 * Mass per length of cord, kg/m, as it is weighed: grams per metre, or ounces per yard where only those are read.
 * @example linearDensityText(0.00465) // '4.65 g/m'
 */
export const linearDensityText = (perMetre: number): string =>
  (writingHabits().units === 'imperial' ? `${figures(perMetre / OUNCE_PER_YARD, 3)} oz/yd` : `${figures(perMetre * 1000, 3)} g/m`)

/**
 * A plain number with up to three figures.
 * @example numberText(0.08714) // '0.087'
 */
export const numberText = (value: number): string => figures(value, 3)
