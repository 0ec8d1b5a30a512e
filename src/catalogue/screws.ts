import { INCH } from '../quantity/si'
import { value, type Value } from './basis'

/** One gauge of wood screw. */
export interface GaugeRow {
  /** As on the packet: "No. 8". */
  readonly id: string
  /** Outside the thread, m: the D of the withdrawal formulas. */
  readonly outside: Value
  /** At the root of the thread, m: what steel is left, and what a lead hole is drilled to; null where not carried over. */
  readonly root: Value | null
}

/** Diameter outside the thread over its gauge: 0.060 in + 0.013 in for each number. */
const gaugeRow = (gauge: number, rootInches: number | null): GaugeRow => ({
  id: `No. ${gauge}`,
  outside: value((0.06 + 0.013 * gauge) * INCH, 'm', 'published', 'USDA Wood Handbook FPL-GTR-282 (2021), table 8-9, by 0.060 in + 0.013 in a gauge'),
  root: rootInches === null ? null : value(rootInches * INCH, 'm', 'from memory', 'AWC National Design Specification, appendix L, wood screws: root diameter'),
})

/** Gauges in which wood screws are sold by number. */
export const SCREW_GAUGES: readonly GaugeRow[] = [
  gaugeRow(4, null), gaugeRow(5, null), gaugeRow(6, 0.113), gaugeRow(7, 0.122), gaugeRow(8, 0.131), gaugeRow(9, 0.142), gaugeRow(10, 0.152), gaugeRow(12, 0.171),
  gaugeRow(14, 0.196), gaugeRow(16, 0.209), gaugeRow(18, 0.232), gaugeRow(20, 0.255), gaugeRow(24, 0.298),
]

/** The gauge by its number; null for one that is not sold. */
export const screwGauge = (gauge: number): GaugeRow | null => SCREW_GAUGES.find(({ id }) => id === `No. ${gauge}`) ?? null

/** Thread of a wood screw or lag screw over its length, where the packet does not say. */
export const THREAD_SHARE: Value = value(2 / 3, '1', 'from memory', 'AWC National Design Specification, appendix L: wood screws are threaded over two thirds of their length')

/** Root over outside diameter of a metric screw, where the packet does not say. */
export const METRIC_ROOT_SHARE: Value = value(0.6, '1', 'from memory', 'chipboard and decking screws: core 60 to 65 % of the outside diameter')
