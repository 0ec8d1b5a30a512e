import { value, type Value } from './basis'

/** A published table with one basis: [number of tests, factor] points. */
interface ByTests extends Omit<Value, 'value' | 'unit'> {
  readonly points: readonly (readonly [tests: number, factor: number])[]
}

const EN_1990 = 'EN 1990:2002, annex D, table D1, 5 % characteristic value, read in three transcriptions that agree; follows from Student’s t'

/** k_n by number of tests where the scatter is not known beforehand. */
export const K_SCATTER_UNKNOWN: ByTests = {
  points: [[3, 3.37], [4, 2.63], [5, 2.33], [6, 2.18], [8, 2], [10, 1.92], [20, 1.76], [30, 1.73]],
  basis: 'published',
  source: `${EN_1990}; row of unknown scatter`,
}

/** k_n by number of tests where an upper value of the scatter is known beforehand. */
export const K_SCATTER_KNOWN: ByTests = {
  points: [[1, 2.31], [2, 2.01], [3, 1.89], [4, 1.83], [5, 1.8], [6, 1.77], [8, 1.74], [10, 1.72], [20, 1.68], [30, 1.67]],
  basis: 'published',
  source: `${EN_1990}; row of known scatter`,
}

/** Least scatter (standard deviation over mean) that is ever counted with, however close the tests lie. */
export const LEAST_SCATTER: Value = value(0.1, '1', 'from memory', 'EN 1990:2002, annex D: a scatter that is not known beforehand is not taken below 0.10')

/** Scatter counted with where one or two tests cannot show any. */
export const CAUTIOUS_SCATTER: Value = value(0.2, '1', 'common practice', 'a cautious upper value: knotted natural cord of one roll pulled by hand')

/** Tests from which their own scatter counts. */
export const TESTS_THAT_SHOW_SCATTER: Value = value(3, '1', 'published', `${EN_1990}: the row of unknown scatter begins at three`)

/** Tests worth making: from here on each further one adds little. */
export const TESTS_WORTH_MAKING: Value = value(5, '1', 'common practice', 'from three to five tests k_n falls from 3.37 to 2.33, from five to ten only to 1.92')

/** Time to break of a pull that was not timed, s. */
export const UNTIMED_PULL: Value = value(5, 's', 'common practice', 'a quick pull by hand')

/** Strength soaked over dry, high: dry strength is taken no higher than a soaked test over this. */
export const SOAKED_OVER_DRY: Value = value(1.2, '1', 'from memory', 'cotton and flax 1.0 to 1.2 wet over dry; the high end')

/** Largest distance of one test from the mean, in standard deviations, that chance explains in 19 of 20 sets (two-sided 5 %). */
export const GRUBBS_CRITICAL: ByTests = {
  points: [
    [3, 1.155], [4, 1.481], [5, 1.715], [6, 1.887], [7, 2.02], [8, 2.126], [9, 2.215], [10, 2.29], [11, 2.355], [12, 2.412], [13, 2.462], [14, 2.507], [15, 2.549],
    [16, 2.585], [17, 2.62], [18, 2.651], [19, 2.681], [20, 2.709], [25, 2.822], [30, 2.908],
  ],
  basis: 'published',
  source: 'ASTM E178, critical values of one outlying test, upper 2.5 % on either side; up to 15 read in a chemistry reference table (one misprint, 7, set right by Student’s t), beyond recomputed from Student’s t',
}
