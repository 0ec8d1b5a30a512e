/** Counts between rising edges, one edge more than counts; all draws lie between the first and the last. */
export interface Distribution {
  readonly unit: '1' | 'kg'
  /** Whether the edges rise by a ratio rather than by a difference. */
  readonly logarithmic: boolean
  readonly edges: readonly number[]
  readonly counts: readonly number[]
  readonly quantiles: Readonly<Record<Quantile, number>>
  readonly least: number
  readonly most: number
}

const QUANTILES = { p05: 0.05, p25: 0.25, p50: 0.5, p75: 0.75, p95: 0.95, p99: 0.99, p999: 0.999 } as const
type Quantile = keyof typeof QUANTILES

/** Bins of a scale that rises by differences. */
const BINS = 24
/** Bins to a tenfold on a scale that rises by ratios; 1 is always an edge. */
const BINS_PER_TENFOLD = 10

/** Between neighbours in rank, the middle value at one half (R. J. Hyndman and Y. Fan, Am. Stat. 50, 1996, definition 7). */
function quantileOf(sorted: Float64Array, share: number): number {
  const at = share * (sorted.length - 1)
  const below = sorted[Math.floor(at)]!
  return below + (at - Math.floor(at)) * (sorted[Math.ceil(at)]! - below)
}

function evenEdges(least: number, most: number): readonly number[] {
  // What never varies still has a bin to lie in.
  const [from, to] = most - least > 1e-9 * Math.max(1, most) ? [least, most] : [least * 0.995, most * 1.005]
  return Array.from({ length: BINS + 1 }, (_, i) => (i === BINS ? to : from + (i * (to - from)) / BINS))
}

function tenfoldEdges(least: number, most: number): readonly number[] {
  const first = Math.floor(Math.log10(least) * BINS_PER_TENFOLD)
  const last = Math.max(first + 1, Math.ceil(Math.log10(most) * BINS_PER_TENFOLD))
  return Array.from({ length: last - first + 1 }, (_, i) => 10 ** ((first + i) / BINS_PER_TENFOLD))
}

/** How numbers are spread; null of none. On a scale that rises by ratios they must be above nought. */
export function distributionOf(values: readonly number[], unit: Distribution['unit'], logarithmic: boolean): Distribution | null {
  const sorted = Float64Array.from(values).sort()
  const [least, most] = [sorted[0], sorted[sorted.length - 1]]
  if (least === undefined || most === undefined) return null
  const edges = logarithmic ? tenfoldEdges(least, most) : evenEdges(least, most)
  const counts = new Array<number>(edges.length - 1).fill(0)
  let bin = 0
  for (const value of sorted) {
    while (bin < counts.length - 1 && value >= edges[bin + 1]!) bin += 1
    counts[bin]! += 1
  }
  const quantiles = Object.fromEntries(Object.entries(QUANTILES).map(([name, share]) => [name, quantileOf(sorted, share)])) as Record<Quantile, number>
  return { unit, logarithmic, edges, counts, quantiles, least, most }
}
