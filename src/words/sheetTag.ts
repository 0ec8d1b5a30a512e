import type { Care } from '../check/care'
import { lookOftenText } from './sheetCare'
import { sheetName } from './sheetCustomer'

export const tagTitle = (name: string): string => `${sheetName(name)}: tag`
export const TAG_CODE = 'Tag'
export const TAG_MADE = 'Made'
/** What a tag asks for. */
export const tagLine = (inspect: Care['inspect']): string => `${lookOftenText(inspect)}: cord, knots, hook.`
