import { FIBRE_PROPERTIES, type Fibre } from '../catalogue/cords'
import { TEST_TIME } from '../catalogue/duration'
import { CAUTIOUS_SCATTER, GRUBBS_CRITICAL, K_SCATTER_KNOWN, K_SCATTER_UNKNOWN, LEAST_SCATTER, TESTS_THAT_SHOW_SCATTER, UNTIMED_PULL } from '../catalogue/pullTests'
import type { PullTest } from '../hanger/pullTest'
import { newtons, type Newtons } from '../quantity/si'
import { factorForTests } from './factorForTests'

/** One test as it counts. */
export interface CountedPull {
  /** Where it stands in the log, from 0. */
  readonly row: number
  /** As pulled. */
  readonly force: Newtons
  /** Brought to a pull of 10 s. */
  readonly counted: Newtons
}

/** What a maker would gain by going on. */
export interface MorePulls {
  /** Further tests. */
  readonly tests: number
  /** The strength that would then count, if they come out about as these. */
  readonly characteristic: Newtons
}

/** The tests of one way of pulling in one state, all brought to a pull of 10 s. */
export interface PullTestSet {
  readonly how: PullTest['how']
  readonly state: PullTest['state']
  readonly n: number
  readonly pulls: readonly CountedPull[]
  /** Geometric mean. */
  readonly mean: Newtons
  readonly least: Newtons
  readonly greatest: Newtons
  /** Scatter that counts: standard deviation over mean, never below a floor, cautious for one or two tests. */
  readonly scatter: number
  /** Scatter as measured; null of a single test. */
  readonly measuredScatter: number | null
  /** k_n of EN 1990, annex D. */
  readonly k: number
  /** Strength that counts: 19 of 20 strands are stronger. */
  readonly characteristic: Newtons
  /** Rows of tests that chance hardly explains (Grubbs’ test on logarithms, 5 %). They count all the same. */
  readonly outliers: readonly number[]
  /** Tests that did not break, and that were not timed. */
  readonly held: number
  readonly untimed: number
  /** A test whose load was given as a mass; null if none was. */
  readonly inMass: CountedPull | null
  readonly more: readonly MorePulls[]
}

/** The whole log, set by set. */
export interface PullTestSummary {
  readonly sets: readonly PullTestSet[]
}

const MORE = [2, 5, 10] as const

/**
 * A break after t, s, as the pull that would have broken the cord in 10 s: F / (1 - k log10(t / 10 s)),
 * so that a jerk counts less than what it read and a slow pull more (Meredith's relation).
 * @example Number(asTenSeconds(100, 0.088, 1).toFixed(2)) // 91.91
 */
export const asTenSeconds = (force: number, slope: number, time: number): number => force / (1 - slope * Math.log10(time / TEST_TIME.value))

/** Standard deviation of the logarithms of a lognormal strength of this scatter. */
export const logDeviation = (scatter: number): number => Math.sqrt(Math.log(1 + scatter * scatter))
const scatterOf = (deviation: number): number => Math.sqrt(Math.exp(deviation * deviation) - 1)

const average = (xs: readonly number[]): number => xs.reduce((a, b) => a + b, 0) / xs.length

/** Standard deviation with n - 1; null of fewer than two. */
function deviationOf(xs: readonly number[]): number | null {
  if (xs.length < 2) return null
  const mean = average(xs)
  return Math.sqrt(xs.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (xs.length - 1))
}

interface Spread {
  readonly scatter: number
  readonly k: number
}

/** The scatter that counts with its k_n: of three tests and more their own; fewer cannot show theirs, unless it is already large. */
function spreadOf(n: number, measured: number): Spread {
  return n >= TESTS_THAT_SHOW_SCATTER.value
    ? { scatter: Math.max(measured, LEAST_SCATTER.value), k: factorForTests(K_SCATTER_UNKNOWN.points, n) }
    : { scatter: Math.max(measured, CAUTIOUS_SCATTER.value), k: factorForTests(K_SCATTER_KNOWN.points, n) }
}

const below = (mean: number, { scatter, k }: Spread): number => mean * Math.exp(-k * logDeviation(scatter))

/** Rows that Grubbs' test warns of. What lies within the least scatter of the mean is no outlier, however close the others are. */
function outliersOf(pulls: readonly CountedPull[], logs: readonly number[]): readonly number[] {
  const deviation = deviationOf(logs)
  if (deviation === null || logs.length < 3) return []
  const mean = average(logs)
  const limit = Math.max(factorForTests(GRUBBS_CRITICAL.points, logs.length) * deviation, logDeviation(LEAST_SCATTER.value))
  return pulls.flatMap(({ row }, i) => (Math.abs((logs[i] ?? mean) - mean) > limit ? [row] : []))
}

/** As it counts: one that held never for more than it bore, for how much more it would have borne for a moment only a remembered relation says. */
function countedPull({ row, force, time, broke }: PullTest, slope: number): CountedPull {
  const counted = asTenSeconds(force, slope, time ?? UNTIMED_PULL.value)
  return { row, force, counted: newtons(broke ? counted : Math.min(force, counted)) }
}

function setOf(tests: readonly PullTest[], how: PullTest['how'], state: PullTest['state'], slope: number): PullTestSet {
  const pulls = tests.map((test) => countedPull(test, slope))
  const logs = pulls.map(({ counted }) => Math.log(counted))
  const n = pulls.length
  const mean = Math.exp(average(logs))
  const deviation = deviationOf(logs)
  const measured = deviation === null ? 0 : scatterOf(deviation)
  const spread = spreadOf(n, measured)
  const massRow = tests.find((t) => t.asMass)?.row
  return {
    how, state, n, pulls,
    mean: newtons(mean),
    least: newtons(Math.min(...pulls.map((p) => p.counted))),
    greatest: newtons(Math.max(...pulls.map((p) => p.counted))),
    ...spread,
    measuredScatter: deviation === null ? null : measured,
    characteristic: newtons(below(mean, spread)),
    outliers: outliersOf(pulls, logs),
    held: tests.filter((t) => !t.broke).length,
    untimed: tests.filter((t) => t.time === null).length,
    inMass: pulls.find((p) => p.row === massRow) ?? null,
    more: MORE.map((more): MorePulls => ({ tests: more, characteristic: newtons(below(mean, spreadOf(n + more, measured))) })),
  }
}

/**
 * The log of pull tests as sets by how they were pulled and in what state, each with its statistics:
 * strengths lognormal, the characteristic value exp(m - k_n s) of EN 1990, annex D. A test that did not
 * break counts as if it had. Sets without tests are left out.
 */
export function pullTestSummary(tests: readonly PullTest[], fibre: Fibre): PullTestSummary {
  const slope = FIBRE_PROPERTIES[fibre].duration.value
  const kinds = (['tied', 'straight'] as const).flatMap((how) => (['dry', 'soaked'] as const).map((state) => ({ how, state })))
  return {
    sets: kinds.flatMap(({ how, state }) => {
      const some = tests.filter((t) => t.how === how && t.state === state)
      return some.length === 0 ? [] : [setOf(some, how, state, slope)]
    }),
  }
}

/**
 * A set as tied with the straight one of its state that it cannot belong to: what counts of it is more than
 * straight strands bore on average, and no strand is stronger for its knots. Null where there is none.
 */
export function impossiblyTied({ sets }: PullTestSummary): { readonly tied: PullTestSet; readonly straight: PullTestSet } | null {
  for (const tied of sets.filter((s) => s.how === 'tied')) {
    const straight = sets.find((s) => s.how === 'straight' && s.state === tied.state && tied.characteristic > s.mean)
    if (straight !== undefined) return { tied, straight }
  }
  return null
}

/**
 * The set that counts for a cord that is dry or wet: of three tests and more before a smaller one, then
 * pulled in the way that is asked for, then in the matching state. Null of an empty log. Tests as tied
 * are left aside, all of them, where some cannot be of the strand that was pulled straight.
 */
export function choosePullTests(summary: PullTestSummary, how: PullTest['how'], wet: boolean): PullTestSet | null {
  const sets = impossiblyTied(summary) === null ? summary.sets : summary.sets.filter((s) => s.how === 'straight')
  const worth = (s: PullTestSet): number => (s.n >= TESTS_THAT_SHOW_SCATTER.value ? 4 : 0) + (s.how === how ? 2 : 0) + ((s.state === 'soaked') === wet ? 1 : 0)
  return sets.reduce<PullTestSet | null>((best, s) => (best === null || worth(s) > worth(best) ? s : best), null)
}
