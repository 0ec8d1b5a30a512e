import { usualFormat } from '#core'

/**
 * Paper for a page whose print styles name none: that of sheets.
 *
 * @param country two letters, as the system knows it; empty where it does not
 */
export const pageSizeFor = (country: string): 'A4' | 'Letter' => (usualFormat(country) === 'letter' ? 'Letter' : 'A4')
