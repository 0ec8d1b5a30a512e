import type { PullTestSet } from '../check/pullTests'
import { forceText, numberText, percentText } from './amounts'
import { findingText } from './findings'
import { PULL_TEST_WORDS } from './pullTests'

/** What a set of pull tests says, in sentences. */
export interface PullTestSetText {
  /** Which tests: how they were pulled, in what state, how many. */
  readonly title: string
  /** What counts. */
  readonly counts: string
  /** Why so much and no more. */
  readonly why: readonly string[]
  /** What is odd about them. */
  readonly warnings: readonly string[]
  /** What further tests would give, one after the other. */
  readonly more: string
}

const testsText = (count: number): string => (count === 1 ? '1 test' : `${count} tests`)
const beginning = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

function averageText({ n, mean, least, greatest }: PullTestSet): string {
  const brought = 'Each brought to a pull of the same short time'
  return n === 1 ? `Brought to a pull of the usual short time, it bore ${forceText(mean)}.` : `${brought}, they bore ${forceText(mean)} on average, the least ${forceText(least)}, the most ${forceText(greatest)}.`
}

function scatterText({ n, scatter, measuredScatter }: PullTestSet): string {
  if (measuredScatter === null) return `One test cannot show how much the cord varies, so a large scatter is taken: ${percentText(scatter)}.`
  const measured = `They scatter by ${percentText(measuredScatter)}`
  if (scatter <= measuredScatter) return `${measured}.`
  return n === 2
    ? `${measured}, but two cannot show how much the cord varies: ${percentText(scatter)} is taken.`
    : `${measured}; so close together may be luck, and ${percentText(scatter)} is taken.`
}

/** A quick pull shows more than a slow one; what was not timed is taken as quick. */
function timeSentence({ untimed, n }: PullTestSet): string {
  if (untimed === 0) return 'A quick pull shows more than a slow one, so what the scale showed is not quite what counts.'
  if (untimed === n) return `${n === 1 ? 'It was not' : 'None was'} timed, so ${n === 1 ? 'it counts' : 'all count'} as quick, and a quick pull shows more than a slow one.`
  return `${untimed} of them ${untimed === 1 ? 'was not timed and counts' : 'were not timed and count'} as quick: a quick pull shows more than a slow one, and all are brought to the same length of time.`
}

/** The sentences of one set of pull tests: average, scatter, what counts and why, what is odd, what more tests would give. */
export function pullTestSetText(set: PullTestSet): PullTestSetText {
  const { n, how, state, k, characteristic, outliers, held, more } = set
  return {
    title: `${beginning(PULL_TEST_WORDS.how.choices[how] ?? how)}, ${PULL_TEST_WORDS.state.choices[state] ?? state}: ${testsText(n)}`,
    counts: `Of these ${forceText(characteristic)} counts: 19 of 20 strands bear more.`,
    why: [
      averageText(set),
      scatterText(set),
      `That is ${numberText(k)} times the scatter below the average; the fewer the tests, the further below.`,
      timeSentence(set),
    ],
    warnings: [
      ...outliers.map((row) => findingText({ code: 'PULL_TEST_OUTLIER', row })),
      ...(held > 0 ? [findingText({ code: 'PULL_TEST_HELD', tests: held })] : []),
    ],
    more: `If more come out like these, what counts becomes ${more.map(({ tests, characteristic: then }) => `${forceText(then)} with ${tests} more`).join(', ')}.`,
  }
}
