import { forceText, lengthText, type LinkResult } from '#core'
import { texts } from '../texts/texts'

/** What is asked of a part or what it may carry: a force as the mass that would pull as hard, a length as such. */
export const quantityText = (quantity: LinkResult['demand']): string => {
  if (quantity === null) return texts.charts.notKnown
  return quantity.unit === 'N' ? forceText(quantity.value) : lengthText(quantity.value)
}
