import type { Spread } from '../catalogue/scatter'

/**
 * Standard deviation of the logarithm of a lognormal of this scatter (standard deviation over mean).
 * @example logDeviation(0.2) // 0.19804
 */
export const logDeviation = (scatter: number): number => Math.sqrt(Math.log(1 + scatter * scatter))

/** What is drawn over what is counted, of a lognormal, from a standard normal number. */
export function overCounted({ scatter, counted }: Spread): (z: number) => number {
  const [deviation, median] = [logDeviation(scatter.value), 1 / counted.value]
  return (z) => median * Math.exp(deviation * z)
}
