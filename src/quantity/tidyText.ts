const PLAIN: ReadonlyMap<string, string> = new Map([
  ...['\t', '\u00a0', '\u2007', '\u2009', '\u200a', '\u202f'].map(blank => [blank, ' '] as const),
  ...['\u2212', '\u2010', '\u2011', '\u2013'].map(dash => [dash, '-'] as const),
  ...['\u2044', '\u2215'].map(slash => [slash, '/'] as const),
  ...['\u2032', '\u2019', '\u2018'].map(prime => [prime, '\''] as const),
  ...['\u2033', '\u201d', '\u201c'].map(prime => [prime, '"'] as const),
])

/**
 * A typed text with its blanks, dashes, slashes and primes made plain, no blanks at its ends and
 * none doubled: "5′ 6½″" becomes 5' 6½". Two primes in a row are inches. Vulgar fractions and
 * whatever is not known stay as they are.
 */
export function tidyText(text: string): string {
  const ends = text.trim()
  const plain = /[^ -~]/.test(ends) ? Array.from(ends, character => PLAIN.get(character) ?? character).join('') : ends
  return plain.replace(/ {2,}/g, ' ').replace('\'\'', '"')
}
