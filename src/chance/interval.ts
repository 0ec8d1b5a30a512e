/** Interval of a chance at 95 %. */
export interface ChanceInterval {
  readonly low: number
  readonly high: number
  /** Wilson's of 1927 or, where none or all of the draws are hits, the rule of three. */
  readonly method: 'wilson' | 'ruleOfThree'
}

/** Standard normal quantile of 97.5 %. */
const Z = 1.959963984540054

/**
 * Where a chance lies at 95 %, from so many hits in so many draws: Wilson's score interval (E. B. Wilson, J. Am. Stat. Assoc. 22,
 * 1927). Of none, or of all, only the rule of three can be told: less than 3 / n (Hanley and Lippman-Hand, J. Am. Med. Assoc. 249, 1983).
 * @example chanceInterval(0, 10000).high // 0.0003
 */
export function chanceInterval(hits: number, draws: number): ChanceInterval {
  if (draws === 0) return { low: 0, high: 1, method: 'ruleOfThree' }
  const three = Math.min(1, 3 / draws)
  if (hits === 0) return { low: 0, high: three, method: 'ruleOfThree' }
  if (hits === draws) return { low: 1 - three, high: 1, method: 'ruleOfThree' }
  const share = hits / draws
  const scale = 1 + (Z * Z) / draws
  const middle = share + (Z * Z) / (2 * draws)
  const reach = Z * Math.sqrt((share * (1 - share)) / draws + (Z * Z) / (4 * draws * draws))
  return { low: (middle - reach) / scale, high: (middle + reach) / scale, method: 'wilson' }
}
