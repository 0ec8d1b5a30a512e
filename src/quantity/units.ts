import type { QuantityKind } from './quantityKind'

/**
 * How a unit is written and what it is worth.
 * `exact`: further spellings, case and all, because in SI symbols case carries meaning (mm, Mm).
 * `words`: spellings taken in any case, for words and customary symbols, where it carries none.
 */
interface UnitRow {
  readonly symbol: string
  readonly kind: QuantityKind
  /** The unit in SI, exactly: numerator and denominator. */
  readonly size: readonly [bigint, bigint]
  readonly exact: readonly string[]
  readonly words: readonly string[]
}

/** Pi to 60 decimals: far beyond a double, so that degrees too are rounded once. */
const PI = 3141592653589793238462643383279502884197169399375105820974945n
const PI_SCALE = 10n ** 60n
/** Pound, kg x 1e8, and pound-force, N x 1e13: 0.45359237 kg, and that times 9.80665 m/s2. */
const LB = 45359237n
const LBF = LB * 980665n

/**
 * Every unit the reader knows, in the order in which a person is told of them.
 * Inch, foot, yard and pound: international yard and pound agreement, 1959. Pound-force and
 * kilogram-force: with the standard acceleration of free fall, 9.80665 m/s2. US gallon: 231 cubic
 * inches. Tex: 1 g/km (ISO 1144). Year: 365.25 days, month: its twelfth.
 */
export const UNITS = [
  { symbol: 'mm', kind: 'length', size: [1n, 1000n], exact: [], words: ['millimetre', 'millimetres', 'millimeter', 'millimeters'] },
  { symbol: 'cm', kind: 'length', size: [1n, 100n], exact: [], words: ['centimetre', 'centimetres', 'centimeter', 'centimeters'] },
  { symbol: 'm', kind: 'length', size: [1n, 1n], exact: [], words: ['metre', 'metres', 'meter', 'meters'] },
  { symbol: 'in', kind: 'length', size: [127n, 5000n], exact: ['"'], words: ['in', 'in.', 'inch', 'inches'] },
  { symbol: 'ft', kind: 'length', size: [381n, 1250n], exact: ['\''], words: ['ft', 'ft.', 'foot', 'feet'] },
  { symbol: 'yd', kind: 'length', size: [1143n, 1250n], exact: [], words: ['yd', 'yd.', 'yds', 'yard', 'yards'] },

  { symbol: 'kg', kind: 'mass', size: [1n, 1n], exact: ['Kg', 'KG'], words: ['kilogram', 'kilograms'] },
  { symbol: 'g', kind: 'mass', size: [1n, 1000n], exact: [], words: ['gram', 'grams'] },
  { symbol: 'lb', kind: 'mass', size: [LB, 10n ** 8n], exact: [], words: ['lb', 'lb.', 'lbs', 'lbs.', 'pound', 'pounds'] },
  { symbol: 'oz', kind: 'mass', size: [LB, 16n * 10n ** 8n], exact: [], words: ['oz', 'oz.', 'ounce', 'ounces'] },

  { symbol: 'N', kind: 'force', size: [1n, 1n], exact: [], words: ['newton', 'newtons'] },
  { symbol: 'daN', kind: 'force', size: [10n, 1n], exact: [], words: [] },
  { symbol: 'kN', kind: 'force', size: [1000n, 1n], exact: [], words: ['kilonewton', 'kilonewtons'] },
  { symbol: 'kgf', kind: 'force', size: [980665n, 100000n], exact: [], words: ['kgf'] },
  { symbol: 'lbf', kind: 'force', size: [LBF, 10n ** 13n], exact: [], words: ['lbf'] },

  { symbol: 'deg', kind: 'angle', size: [PI, 180n * PI_SCALE], exact: ['°', 'º'], words: ['deg', 'degree', 'degrees'] },
  { symbol: 'rad', kind: 'angle', size: [1n, 1n], exact: [], words: ['radian', 'radians'] },

  { symbol: 'm/s', kind: 'speed', size: [1n, 1n], exact: [], words: [] },
  { symbol: 'km/h', kind: 'speed', size: [5n, 18n], exact: [], words: ['km/h'] },
  { symbol: 'mph', kind: 'speed', size: [1397n, 3125n], exact: [], words: ['mph'] },

  { symbol: 'g/m', kind: 'linearDensity', size: [1n, 1000n], exact: [], words: [] },
  { symbol: 'kg/m', kind: 'linearDensity', size: [1n, 1n], exact: [], words: [] },
  { symbol: 'tex', kind: 'linearDensity', size: [1n, 10n ** 6n], exact: [], words: ['tex'] },
  { symbol: 'ktex', kind: 'linearDensity', size: [1n, 1000n], exact: [], words: ['ktex'] },
  { symbol: 'lb/100 ft', kind: 'linearDensity', size: [LB, 3048n * 10n ** 6n], exact: [], words: ['lb/100 ft', 'lb/100ft', 'lbs/100 ft', 'lbs/100ft'] },
  { symbol: 'oz/yd', kind: 'linearDensity', size: [LB, 16n * 9144n * 10n ** 4n], exact: [], words: ['oz/yd'] },

  { symbol: 's', kind: 'time', size: [1n, 1n], exact: [], words: ['second', 'seconds'] },
  { symbol: 'min', kind: 'time', size: [60n, 1n], exact: [], words: ['min', 'minute', 'minutes'] },
  { symbol: 'h', kind: 'time', size: [3600n, 1n], exact: [], words: ['hour', 'hours'] },
  { symbol: 'day', kind: 'time', size: [86400n, 1n], exact: ['d'], words: ['day', 'days'] },
  { symbol: 'week', kind: 'time', size: [604800n, 1n], exact: [], words: ['week', 'weeks'] },
  { symbol: 'month', kind: 'time', size: [2629800n, 1n], exact: [], words: ['month', 'months'] },
  { symbol: 'year', kind: 'time', size: [31557600n, 1n], exact: [], words: ['year', 'years'] },

  { symbol: 'l', kind: 'volume', size: [1n, 1000n], exact: ['L'], words: ['litre', 'litres', 'liter', 'liters'] },
  { symbol: 'ml', kind: 'volume', size: [1n, 10n ** 6n], exact: ['mL'], words: ['millilitre', 'millilitres', 'milliliter', 'milliliters'] },
  { symbol: 'cm3', kind: 'volume', size: [1n, 10n ** 6n], exact: [], words: [] },
  { symbol: 'm3', kind: 'volume', size: [1n, 1n], exact: [], words: [] },
  { symbol: 'US gal', kind: 'volume', size: [231n * 127n ** 3n, 5000n ** 3n], exact: [], words: ['us gal', 'us gallon', 'us gallons'] },
  { symbol: 'in3', kind: 'volume', size: [127n ** 3n, 5000n ** 3n], exact: [], words: ['in3'] },

  { symbol: 'kg/m3', kind: 'density', size: [1n, 1n], exact: [], words: [] },
  { symbol: 'kg/l', kind: 'density', size: [1000n, 1n], exact: ['kg/L'], words: [] },
  { symbol: 'g/l', kind: 'density', size: [1n, 1n], exact: ['g/L'], words: [] },
  { symbol: 'g/cm3', kind: 'density', size: [1000n, 1n], exact: [], words: [] },
  { symbol: 'lb/ft3', kind: 'density', size: [LB * 1250n ** 3n, 10n ** 8n * 381n ** 3n], exact: [], words: ['lb/ft3', 'lbs/ft3'] },

  { symbol: 'Pa', kind: 'pressure', size: [1n, 1n], exact: [], words: ['pascal', 'pascals'] },
  { symbol: 'kPa', kind: 'pressure', size: [1000n, 1n], exact: [], words: [] },
  { symbol: 'MPa', kind: 'pressure', size: [10n ** 6n, 1n], exact: ['N/mm2'], words: [] },
  { symbol: 'GPa', kind: 'pressure', size: [10n ** 9n, 1n], exact: [], words: [] },
  { symbol: 'psi', kind: 'pressure', size: [LBF * 5000n ** 2n, 10n ** 13n * 127n ** 2n], exact: [], words: ['psi'] },

  { symbol: '%', kind: 'ratio', size: [1n, 100n], exact: [], words: ['percent', 'per cent'] },
] as const satisfies readonly UnitRow[]

/** A unit as the project writes it, whatever way it was typed. */
export type UnitSymbol = (typeof UNITS)[number]['symbol']
