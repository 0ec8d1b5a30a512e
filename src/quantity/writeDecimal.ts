import type { Decimal } from './roundRatio'

export type DecimalMark = '.' | ','

/**
 * Writes a decimal number so that the reader takes it back. With a decimal comma, three decimals
 * after one to three digits look like a group of thousands ("1,250") and would be refused: a zero
 * is put behind them. `spaced`: thousands parted by blanks.
 * @example writeDecimal({ digits: 1250n, decimals: 3 }, ',', false) // '1,2500'
 */
export function writeDecimal({ digits, decimals }: Decimal, mark: DecimalMark, spaced: boolean): string {
  if (decimals < 0) return writeDecimal({ digits: digits * 10n ** BigInt(-decimals), decimals: 0 }, mark, spaced)
  const all = (digits < 0n ? -digits : digits).toString().padStart(decimals + 1, '0')
  const whole = all.slice(0, all.length - decimals)
  const sign = digits < 0n ? '-' : ''
  const grouped = spaced ? whole.replace(/\B(?=(?:\d{3})+$)/g, ' ') : whole
  if (decimals === 0) return sign + grouped
  const looksGrouped = mark === ',' && decimals === 3 && whole !== '0' && whole.length <= 3
  return `${sign}${grouped}${mark}${all.slice(all.length - decimals)}${looksGrouped ? '0' : ''}`
}
