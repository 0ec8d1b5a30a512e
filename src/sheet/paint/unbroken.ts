import type { Element } from '../element'

/** Between a number and its unit, and between a whole and its fraction. */
const WITHIN = /(?<=\d) (?=(?:kg|lb|g|N|Pa|rad|mm|cm|m|in|ft|litres?|quarts?|s|h|hours?|days?|months?|years?|%)(?![\p{L}\p{N}])|\d+\/\d)/gu

/**
 * A text whose amounts stay in one line each: half of one could be read as another.
 * @example unbroken('34.6 mm (1 3/8 in)') // '34.6\u00a0mm (1\u00a03/8\u00a0in)'
 */
export const unbroken = (text: string): string => text.replace(WITHIN, '\u00a0')

/** What is set in lines of its own measure. */
const RUNNING: ReadonlySet<string> = new Set(['p', 'li', 'td', 'dd', 'figcaption'])

/** The same of the running text of an element and of all within it; names and headings stay as they are. */
export const withUnbroken = (of: Element): Element => ({
  ...of,
  children: of.children.map((child) => (typeof child !== 'string' ? withUnbroken(child) : RUNNING.has(of.tag) && of.attributes['class']?.startsWith('value') !== true ? unbroken(child) : child)),
})
