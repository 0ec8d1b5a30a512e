import type { PageFormat } from './sheet'

/** Countries whose printers hold Letter; everybody else has A4. */
const LETTER_COUNTRIES: ReadonlySet<string> = new Set(['US', 'CA', 'MX', 'CL', 'CO', 'CR', 'GT', 'NI', 'PA', 'PH', 'PR', 'SV', 'VE'])

/**
 * The paper usual in a country, by its two letters; empty where it is not known.
 * @example usualFormat('MX') // 'letter'
 */
export const usualFormat = (country: string): PageFormat => (LETTER_COUNTRIES.has(country) ? 'letter' : 'a4')
