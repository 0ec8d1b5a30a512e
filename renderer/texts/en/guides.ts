import { HOW } from './howToMeasure'
import { STEPS } from './guideSteps'

/** The guided pages: measuring, weighing, pull test, test hang. */
export const GUIDES = {
  measureIt: 'Measure it',
  measureField: (label: string) => `Measure it: ${label}`,
  stepByStep: 'Step by step',
  stepsForField: (label: string, guide: string) => `Step by step: ${guide}, for ${label}`,
  measureTitle: 'How to measure it',
  measureBody: 'Where the tape goes',
  others: 'On the same drawing',
  stepsBody: 'What to do',
  stepsOf: (guide: string) => `Steps: ${guide}`,
  stepTitle: (number: number, title: string) => `${number}. ${title}`,
  where: (step: number, steps: number) => `Step ${step} of ${steps}`,
  back: 'Back',
  next: 'Next',
  done: 'Done',
  print: 'Print…',
  list: 'Guides',
  listHelp: 'What you can find out at home, step by step. Each takes its results into the file, and can be printed for the workbench.',
  whatFor: 'What it would settle',
  howTo: { weighing: 'How to weigh it', pullTest: 'How to pull-test cord safely', testHang: 'Test hang, step by step', pullInPlace: 'How to pull the fixing in place' },
  names: { weighing: 'Weighing', pullTest: 'Pull test', testHang: 'Test hang', pullInPlace: 'Pull in place' },
  sums: {
    tenTurns: { label: 'Or: what ten turns measure', help: 'Put in the whole width of the ten turns; it is divided by ten.' },
    tapeRound: { label: 'Or: what a tape laid round it measures', help: 'Put in the way round; it is divided by 3.1416.' },
  },
  how: HOW,
  steps: STEPS,
  changed: {
    nothingYet: 'Nothing is written down yet, so nothing has changed.',
    unreadable: 'One answer cannot be read. Put it right, and this page says what the result changes.',
    noPot: 'There is no pot yet. The heaviest pot the hanger may carry stands beside the verdict, and this result is in it.',
    noVerdict: 'No verdict changes by it.',
    caption: 'What this result changes',
    part: 'Part',
    before: 'Without it',
    now: 'With it',
    hangs: 'All that hangs, just watered',
    whole: 'All together',
    notThere: 'not asked of it',
    stands: (verdict: string, share: string) => `${verdict}, ${share}`,
    findings: 'What it says of them',
  },
} as const

