import { ratio, type Ratio } from './ratio'

const VULGAR: ReadonlyMap<string, Ratio> = new Map([
  ['½', ratio(1n, 2n)],
  ['⅓', ratio(1n, 3n)], ['⅔', ratio(2n, 3n)],
  ['¼', ratio(1n, 4n)], ['¾', ratio(3n, 4n)],
  ['⅕', ratio(1n, 5n)], ['⅖', ratio(2n, 5n)], ['⅗', ratio(3n, 5n)], ['⅘', ratio(4n, 5n)],
  ['⅙', ratio(1n, 6n)], ['⅚', ratio(5n, 6n)],
  ['⅐', ratio(1n, 7n)],
  ['⅛', ratio(1n, 8n)], ['⅜', ratio(3n, 8n)], ['⅝', ratio(5n, 8n)], ['⅞', ratio(7n, 8n)],
  ['⅑', ratio(1n, 9n)],
  ['⅒', ratio(1n, 10n)],
])

/** The vulgar-fraction character at a place in a text, as the fraction it shows, or null. */
export function readVulgar(text: string, at: number): Ratio | null {
  return text.charCodeAt(at) < 128 ? null : VULGAR.get(text.charAt(at)) ?? null
}
