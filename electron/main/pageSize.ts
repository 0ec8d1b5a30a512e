/** Countries whose printers hold Letter; everybody else has A4. */
const LETTER_COUNTRIES = new Set(['US', 'CA', 'MX', 'CL', 'CO', 'CR', 'GT', 'NI', 'PA', 'PH', 'PR', 'SV', 'VE'])

/**
 * Paper for a page whose print styles name none.
 *
 * @param country two letters, as the system knows it; empty where it does not
 */
export const pageSizeFor = (country: string): 'A4' | 'Letter' => LETTER_COUNTRIES.has(country) ? 'Letter' : 'A4'
