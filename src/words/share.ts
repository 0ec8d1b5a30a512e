import { percentText } from './amounts'

/**
 * How much of what a part may bear is asked of it; where lengths are compared, as in whether a pot fits,
 * nothing is carried.
 * @example shareText(0.54, 'N') // 'at 54 % of what it may carry'
 * @example shareText(0.54, 'm') // 'at 54 % of its limit'
 */
export const shareText = (share: number, unit: string): string => `at ${percentText(share)} of ${unit === 'm' ? 'its limit' : 'what it may carry'}`
