import type { Grade } from '../catalogue/basis'
import { TENACITY_SPREAD } from '../catalogue/tenacities'
import type { Hanger } from '../hanger/hanger'
import type { MassRange } from '../load/states'
import { newtons, type Newtons } from '../quantity/si'
import { CORD_RUNGS, countedTenacity, isTight, RUNGS, type RungCode, type RungGap } from './cordRungs'
import { cordWeighing } from './cordWeighing'
import type { Capacity } from './linkResult'
import { pullTestSummary, type PullTestSet } from './pullTests'

/** One way to know the cord's breaking force, as it stands for this hanger. */
export interface StrengthRung {
  readonly code: RungCode
  /** Breaking force of one new strand, dry, with how it is known; null where the way is not open. */
  readonly strength: Capacity | null
  readonly grade: Grade | null
  /** The tests it rests on; as tied, its force holds the knots' share already. */
  readonly tests: PullTestSet | null
  /** Why it is not open. */
  readonly gap: RungGap | null
  /** Whether it is the one that counts: the first that is open. */
  readonly counts: boolean
}

/** What weighing a cord says of its breaking force. */
export interface CordEstimate {
  /** Mass per metre, kg/m; 1 g/m is 1000 tex. */
  readonly perMetre: MassRange
  /** Breaking force of one new strand, dry; what counts is near the low end. */
  readonly low: Newtons
  readonly counted: Newtons
  readonly high: Newtons
  /** Where the range of tenacities comes from, and the tenacity counted. */
  readonly spreadSource: string
  readonly countedSource: string
}

/** Every way to know the cord, best first, and what its weighing alone says; null where nothing was weighed or its fibre is not known. */
export interface StrengthLadder {
  readonly rungs: readonly StrengthRung[]
  readonly weighing: CordEstimate | null
}

/** The ladder of a hanger's cord strength: each rung with its force or why it is not open, and which one counts for a dry strand in a leg. */
export function strengthLadder(hanger: Hanger): StrengthLadder {
  const { answers, pullTests } = hanger
  const question = { answers, summary: pullTestSummary(pullTests, answers['cord.fibre']), how: 'tied', wet: false } as const
  const tried = RUNGS.map((code) => ({ code, rung: CORD_RUNGS[code](question) }))
  const first = tried.find(({ rung }) => rung.ok)?.code ?? null
  return {
    rungs: tried.map(({ code, rung }): StrengthRung => (rung.ok
      ? { code, strength: rung.capacity, grade: rung.grade, tests: rung.tests, gap: null, counts: code === first }
      : { code, strength: null, grade: null, tests: null, gap: rung.gap, counts: false })),
    weighing: cordEstimate(hanger),
  }
}

/** What the weighed cord may break at, between the tenacities found for its fibre and make, N; whatever its diameter says. */
export function cordEstimate({ answers }: Hanger): CordEstimate | null {
  const weighed = cordWeighing(answers)
  const spread = TENACITY_SPREAD[answers['cord.fibre']]?.[isTight(answers) ? 'tight' : 'loose']
  const counted = countedTenacity(answers)
  if (weighed === null || spread === undefined || counted === null) return null
  const { perMetre } = weighed
  return {
    perMetre,
    low: newtons(perMetre.low * spread.low),
    counted: newtons(perMetre.low * counted.value),
    high: newtons(perMetre.high * spread.high),
    spreadSource: spread.source,
    countedSource: counted.source,
  }
}
