import { parseQuantity, type ParsedQuantity } from './parseQuantity'
import type { QuantityKind } from './quantityKind'
import type { FoundNumber } from './readNumber'
import { readQuantity } from './readQuantity'
import { writeDecimal } from './writeDecimal'

/**
 * The text with its number one step higher (1) or lower (-1), in its own unit and style: by one in
 * the last digit typed ("4.5 kg" to "4.6 kg"), by one part of a fraction ("3/16 in" to "4/16 in",
 * not reduced, so that the steps stay the same), by an inch in feet and inches, by an ounce in
 * pounds and ounces. Vulgar fractions come back with a stroke, curled primes straight. Null where
 * the text cannot be read, or the step leads out of what can be.
 *
 * @example stepQuantity('4,5 kg', 'mass', 1) // '4,6 kg'
 */
export function stepQuantity(text: string, kind: QuantityKind, direction: 1 | -1): string | null {
  const parsed = parseQuantity(text, kind)
  if (!parsed.ok || !readQuantity(text, kind).ok) return null
  const stepped = parsed.minor === null ? stepNumber(parsed, direction) : stepMinor(parsed, parsed.minor, direction)
  return readQuantity(stepped, kind).ok ? stepped : null
}

function stepNumber({ text, negative, number: { found } }: ParsedQuantity, direction: 1 | -1): string {
  const parts = signed(partsOf(found), negative) + BigInt(direction)
  return sign(parts) + writeParts(found, size(parts)) + text.slice(found.end)
}

function stepMinor({ text, negative, number }: ParsedQuantity, minor: NonNullable<ParsedQuantity['minor']>, direction: 1 | -1): string {
  const { compound, number: { start, found } } = minor
  const perMinor = partsPerOne(found)
  const perMajor = compound.minorsInMajor * perMinor
  const parts = signed(partsOf(number.found) * perMajor + partsOf(found), negative) + BigInt(direction) * perMinor
  const between = text.slice(number.found.end, start)
  return `${sign(parts)}${size(parts) / perMajor}${between}${writeParts(found, size(parts) % perMajor)}${text.slice(found.end)}`
}

/** Into how many parts one was divided by the way the number was typed: 10 in 4.5, 16 in 3/16. */
function partsPerOne({ form }: FoundNumber): bigint {
  return form.style === 'fraction' ? form.denominator : 10n ** BigInt(form.numeral.decimals)
}

function partsOf({ form, value }: FoundNumber): bigint {
  return form.style === 'fraction'
    ? value.numerator * form.denominator / value.denominator
    : BigInt(form.numeral.digits)
}

function writeParts({ form }: FoundNumber, parts: bigint): string {
  if (form.style === 'decimal') {
    const { decimals, mark, spaced } = form.numeral
    const text = writeDecimal({ digits: parts, decimals }, mark === ',' ? ',' : '.', spaced)
    return form.exponent === 0 ? text : `${text}e${form.exponent}`
  }
  const { denominator } = form
  const [whole, rest] = [parts / denominator, parts % denominator]
  if (whole === 0n) return `${rest}/${denominator}`
  // Three digits behind a blank would be taken for a group of thousands.
  return `${whole}${denominator > 100n ? '-' : ' '}${rest}/${denominator}`
}

const signed = (parts: bigint, negative: boolean): bigint => negative ? -parts : parts
const size = (parts: bigint): bigint => parts < 0n ? -parts : parts
const sign = (parts: bigint): string => parts < 0n ? '-' : ''
